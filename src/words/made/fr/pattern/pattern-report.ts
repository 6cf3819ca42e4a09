/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { PatternReportWords } from "#src/words/made/pattern/pattern-report.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: PatternReportWords = {
  title: (d) => "Bulletin : " + d.pattern,
  counting: () => "Décompte de ce que dit le journal.",
  yearPlanned: () => "L'année planifiée",
  wouldChange: () => "Ce que le journal changerait",
  nothingByItself: () =>
    "Rien ne change tout seul : qui répond du modèle décide, et un modèle changé est une nouvelle version. Le manuel de l'appareil passe d'abord.",
  howOften: () => "À quel rythme l'ouvrir",
  howLong: () => "Combien durent les choses",
  restated: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " ligne dont les minutes pourraient être redites",
      other: strictNumber("fr", d.count, 0, "count") + " lignes dont les minutes pourraient être redites",
    }),
  askedLess: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " contrôle qui pourrait être demandé moins souvent",
      other: strictNumber("fr", d.count, 0, "count") + " contrôles qui pourraient être demandés moins souvent",
    }),
  kept: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " contrôle qui n'a encore rien trouvé et reste",
      other: strictNumber("fr", d.count, 0, "count") + " contrôles qui n'ont encore rien trouvé et restent",
    }),
  basis: (d) =>
    "D'après " +
    plural(d.openings, 0, fr, { one: d.openings + " ouverture", other: d.openings + " ouvertures" }) +
    " de " +
    plural(d.kits, 0, fr, { one: d.kits + " kit", other: d.kits + " kits" }) +
    ", quelle que soit la version du modèle pour laquelle ils sont faits.",
  nothingYet: () => "Le journal ne changerait encore rien.",
  wanted: (d) =>
    "Dire d'un contrôle qu'il trouve quelque chose au plus " +
    d.share +
    " demande " +
    d.all +
    " ouvertures sans rien trouver : environ " +
    plural(d.more, 0, fr, { one: d.more + " ouverture", other: d.more + " ouvertures" }) +
    " de plus.",
  oneIn: (d) => plural(d.count, 0, fr, { "1": "à chaque fois", other: "une fois sur " + d.count }),
  askLess: (d) => "Le demander moins souvent : " + d.ask,
  keepIt: (d) => "Le garder, bien qu'il n'ait jamais rien trouvé : " + d.ask,
  onlyOne: (d) => "Rien d'autre n'est là pour trouver ce qui immobilise le kit : " + d.modes + ".",
  neverFound: (d) =>
    "N'a jamais rien trouvé en " +
    plural(d.looks, 0, fr, { one: d.looks + " ouverture", other: d.looks + " ouvertures" }) +
    " : il peut trouver quelque chose jusqu'à " +
    d.share +
    ".",
  addCheck: (d) => "Ajouter un contrôle qui le trouve : " + d.mode,
  findSooner: (d) => "Le trouver plus tôt, ou par un autre contrôle : " + d.mode,
  byAccidentNoCheck: (d) => "Trouvé par hasard " + d.times + ". Aucun contrôle n'est là pour le trouver.",
  byAccidentOwn: (d) => "Trouvé par hasard " + d.times + ". Trouvé par ses propres contrôles " + d.own + ".",
  reword: (d) => "Reformuler la ligne " + d.line + ", ou l'enlever : " + d.text,
  notPossibleIn: (d) =>
    "Pas possible dans " + d.count + " ouvertures sur " + plural(d.asked, 0, fr, { other: d.asked + "." }),
  reportedTimes: (d) => "Signalée " + d.times + " : " + d.reports + ".",
  restate: (d) => "Indiquer " + d.median + " à la ligne " + d.line + ", non " + d.stated + " : " + d.text,
  halfTook: (d) => "La moitié des " + d.count + " a pris de " + d.from + " à " + d.to + ".",
  wrongTimes: (d) => "fausse " + d.times,
  impossibleTimes: (d) => "impossible " + d.times,
  unclearTimes: (d) => "peu claire " + d.times,
  times: (d) => plural(d.count, 0, fr, { "0": "jamais", "1": "une fois", other: d.count + " fois" }),
  minutesFromTo: (d) => d.from + " à " + d.to,
  checksFound: () => "Ce que les contrôles ont trouvé",
  noneFound: () => "Aucun contrôle n'a encore rien trouvé",
  foundTable: () => "Contrôles qui ont trouvé quelque chose",
  neverCount: (d) => d.count + " qui " + plural(d.count, 0, fr, { one: "n'a", other: "n'ont" }) + " jamais rien trouvé",
  neverMore: () =>
    "Aucun en n examens ne veut pas dire jamais : il peut encore trouver quelque chose jusqu'à environ 3 fois sur n. Une telle limite vaut dix-neuf fois sur vingt.",
  neverTable: () => "Contrôles qui n'ont jamais rien trouvé",
  check: () => "Contrôle",
  foundSomething: () => "A trouvé quelque chose",
  openings: () => "Ouvertures",
  mayFind: () => "Peut trouver jusqu'à",
  wrong: () => "Ce qui n'allait pas, et comment cela s'est su",
  nothingWrong: () => "Rien n'a jamais été trouvé défectueux",
  modesTable: () => "Modes trouvés",
  mode: () => "Mode",
  byOwnCheck: () => "Par son propre contrôle",
  byAccident: () => "Par hasard",
  whileDoing: () => "En faisant quoi",
  noneByAccident: () => "aucun par hasard",
  whatTimes: (d) => d.what + " " + d.times,
  between: () => " ; ",
  linesHard: () => "Lignes impossibles, ou signalées",
  noneHard: () => "Chaque ligne était possible, et aucune n'a été signalée",
  noneOpened: () => "Rien n'a encore été ouvert",
  lineTooFew: (d) =>
    d.count +
    " sur " +
    d.all +
    " ; trop peu pour le dire : il faut " +
    plural(d.more, 0, fr, { one: d.more + " ouverture", other: d.more + " ouvertures" }) +
    " de plus",
  lines: () => "Lignes",
  line: () => "Ligne",
  notPossible: () => "Pas possible",
  countOf: (d) => d.count + " sur " + d.all,
  reported: () => "Signalée",
  picturesTold: () => "Images de la fiche pour inconnus qui ont été signalées",
  picture: () => "Image",
  told: (d) => d.what + ", " + d.person + ", " + d.at,
  toldAfter: (d) => "après " + d.casualty,
  toldWrong: () => "Fausse",
  toldImpossible: () => "Ne peut pas être faite",
  toldUnclear: () => "Pas claire",
  never: () => "jamais",
  minutesTaken: () => "Minutes prises",
  minutesMore: (d) =>
    "D'après les heures des entrées, depuis la réponse d'avant. Laissés de côté : les attentes, les essais en marche et les amorçages ; ce qui a été recopié d'une carte ; les lignes après une autre personne ou un autre appareil ; et les pauses, où plus de 20 minutes et quatre fois ce qui est indiqué ont passé (" +
    d.times +
    ").",
  noneTimed: () => "Aucune ligne n'a encore été chronométrée",
  furthestFirst: () => "Les plus éloignées d'abord",
  otherLines: (d) => d.count + " " + plural(d.count, 0, fr, { one: "autre ligne", other: "autres lignes" }),
  otherLinesTable: () => "Autres lignes",
  stated: () => "Indiqué",
  halfLess: () => "La moitié a pris moins de",
  middleHalf: () => "Moitié du milieu",
  timed: () => "Chronométrée",
  noneMade: () => "Aucun contrôle n'a encore été fait",
  noMode: () => "Ce que le modèle ne nomme pas",
  findingsInAll: (d) =>
    plural(d.count, 0, fr, { one: d.count + " constat", other: d.count + " constats" }) +
    " en tout ; exercices exclus.",
  together: (d) =>
    "Parmi eux, " +
    plural(d.findings, 0, fr, { one: d.findings + " constat vient", other: d.findings + " constats viennent" }) +
    " de " +
    plural(d.starts, 0, fr, {
      one: d.starts + " démarrage manqué, compté",
      other: d.starts + " démarrages manqués, comptés chacun",
    }) +
    " une fois.",
};
export default words;
