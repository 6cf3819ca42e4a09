/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { VisitsWords } from "#src/words/made/station/visits.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
import { plural, strictNumber } from "#src/words/cases.ts";
const words: VisitsWords = {
  title: () => "Visites",
  what: () =>
    "Un évaluateur revoit des lignes tirées au sort, sans voir ce que le responsable a écrit. Puis les deux sont comparés.",
  begin: () => "Commencer une visite",
  whereFall: () => "Où tombent les constats",
  now: () => "Maintenant",
  noneOn: () => "Aucune visite n'est en cours",
  past: () => "Visites passées",
  noneYet: () => "Aucune encore",
  nowLine: (d) =>
    d.places +
    ", commencée le " +
    d.at +
    " par " +
    d.who +
    " : reste " +
    d.left +
    " " +
    plural(d.left, 0, fr, { one: "ligne", other: "lignes" }) +
    " sur " +
    d.lines,
  goOn: () => "Continuer cette visite",
  dayPlaces: (d) => d.day + ", " + d.places,
  overLine: (d) =>
    d.visit +
    ", " +
    d.who +
    " : les deux disent la même chose sur " +
    d.agreed +
    " ; " +
    d.missed +
    " " +
    plural(d.missed, 0, fr, { one: "manquée", other: "manquées" }),
  overNothing: (d) => d.visit + ", " + d.who + " : rien à comparer",
  whoBegins: () => "Une visite est commencée par un évaluateur ou un responsable des kits",
  early: () => "Le journal est encore en route : un échantillon est tiré une fois qu'il est ici",
  notBegun: () => "Pas commencée",
  beginAndDraw: () => "Commencer la visite et tirer",
  choosePlaces: () => "Choisissez d'abord les lieux.",
  writeRule: () => "Écrivez la chance et la part : plus de 0 et moins de 100.",
  writeKits: () => "Écrivez le nombre de kits comme son champ le permet, ou laissez vide.",
  whichPlaces: () => "Quels lieux sont visités ?",
  placeKits: (d) =>
    d.place +
    ", " +
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " kit",
      other: strictNumber("fr", d.count, 0, "count") + " kits",
    }),
  rule: () => "La règle",
  chance: () => "Chance d'en voir au moins une fausse, en pour cent",
  chanceHint: () => "90 est courant. 100 voudrait dire regarder presque toutes les lignes.",
  share: () => "Si tant étaient fausses, en pour cent du tout",
  shareHint: () => "10 est courant : un dixième, arrondi vers le haut. Moins veut dire un échantillon plus grand.",
  kits: () => "Kits à ouvrir, si le nombre de la règle ne convient pas",
  kitsHint: () => "Vide : la même règle sert pour les kits.",
  sample: () => "L'échantillon",
  nothingToCompare: () => "Rien à comparer",
  noneClosed: () => "Aucun kit ici n'est fermé avec des réponses de son responsable.",
  size: (d) =>
    plural(d.kits, 0, fr, {
      one: strictNumber("fr", d.kits, 0, "kits") + " kit",
      other: strictNumber("fr", d.kits, 0, "kits") + " kits",
    }) +
    " sur " +
    d.all +
    ", et " +
    d.lines +
    " dedans",
  linesExact: (d) =>
    plural(d.lines, 0, fr, {
      one: strictNumber("fr", d.lines, 0, "lines") + " ligne",
      other: strictNumber("fr", d.lines, 0, "lines") + " lignes",
    }),
  linesBetween: (d) =>
    "de " +
    d.least +
    " à " +
    plural(d.most, 0, fr, {
      one: strictNumber("fr", d.most, 0, "most") + " ligne",
      other: strictNumber("fr", d.most, 0, "most") + " lignes",
    }),
  whyKits: (d) =>
    "Kits : si " +
    d.wrong +
    " sur les " +
    d.all +
    " (" +
    d.share +
    ", arrondi vers le haut) avaient quelque chose de faux, au moins un de ceux-là est tiré avec une chance de " +
    d.chance +
    ".",
  wouldTake: (d) =>
    "Pour " + d.chance + ", il en faudrait " + d.kits + " : ce que montre la visite vaut pour les kits tirés.",
  whyLines: (d) =>
    "Lignes : si " +
    d.share +
    " de celles des kits tirés (arrondi vers le haut) étaient fausses, au moins une de celles-là est tirée avec une chance de " +
    d.chance +
    " ou plus. Combien il en faut dépend des kits.",
  areOpened: () => "Les kits tirés sont ouverts",
  areOpenedMore: (d) =>
    d.ready +
    " " +
    plural(d.ready, 0, fr, { one: "peut", other: "peuvent" }) +
    " partir maintenant sur " +
    plural(d.all, 0, fr, {
      one: strictNumber("fr", d.all, 0, "all") + " kit",
      other: "les " + strictNumber("fr", d.all, 0, "all") + " kits",
    }) +
    " du tirage, et " +
    plural(d.kits, 0, fr, { "1": "un sera tiré", other: d.kits + " seront tirés" }) +
    ". Un kit ouvert ne peut pas partir avant d'avoir été remis en état et scellé. Ouvrez-les l'un après l'autre, et gardez-en assez qui puissent partir.",
  drawnFrom: () =>
    "Sont tirés les examens et les relevés des étapes avant le montage. Les essais en marche, les amorçages, les attentes, le scellé noté et ce qui n'était pas possible au responsable sont laissés de côté.",
  seedMore: () =>
    "La graine est écrite dans le journal avant que quiconque voie ce qu'elle tire, donc personne ne peut tirer jusqu'à ce qu'un échantillon convienne. N'importe qui peut en tirer le même. Une visite commencée et abandonnée reste dans le journal.",
  notDrawnFrom: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " kit hors du tirage",
      other: strictNumber("fr", d.count, 0, "count") + " kits hors du tirage",
    }),
  notDrawn: (d) => d.kit + " : " + d.because,
  countedBy: () => "Compté par",
  byItem: () => "Élément",
  byMode: () => "Ce qui n'allait pas",
  byPlace: () => "Lieu",
  byPattern: () => "Modèle",
  from: () => "Du",
  fromHint: () => "Le premier jour qui compte.",
  to: () => "Au",
  toHint: () => "Le dernier jour qui compte.",
  writeDays: () => "Écrivez un premier jour et un dernier jour qui ne le précède pas.",
  nothingFound: () => "Rien n'a été trouvé ces jours-là",
  chart: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " constat",
      other: strictNumber("fr", d.count, 0, "count") + " constats",
    }) +
    " ; le plus souvent " +
    d.label +
    ", " +
    d.most +
    " d'entre eux.",
  findings: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " constat",
      other: strictNumber("fr", d.count, 0, "count") + " constats",
    }),
  findingsUnit: () => "constats",
  mostDrawn: (d) => "Sont dessinés les " + d.count + " les plus fréquents ; le tableau a tout.",
  table: () => "Constats, les plus fréquents d'abord",
  leftOut: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " constat est laissé de côté",
      other: strictNumber("fr", d.count, 0, "count") + " constats sont laissés de côté",
    }) + ", car personne n'a trouvé de défaut :",
  outRobbed: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " vient",
      other: strictNumber("fr", d.count, 0, "count") + " viennent",
    }) + " d'une pièce prise pour un autre kit.",
  outRecalled: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " vient",
      other: strictNumber("fr", d.count, 0, "count") + " viennent",
    }) + " du rappel d'un lot.",
  outDrill: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " a été posé",
      other: strictNumber("fr", d.count, 0, "count") + " ont été posés",
    }) + " dans un exercice.",
  tableMore: () =>
    "Les constats d'un exercice sont laissés de côté, sauf s'ils étaient réels. Un lieu est celui où le kit est maintenant. Peu de constats disent peu : l'ordre peut être dû au hasard.",
  whatHead: () => "Quoi",
  findingsHead: () => "Constats",
  shareHead: () => "Part",
  upToHead: () => "Jusqu'ici",
  never: () => "Lignes qui n'ont jamais rien trouvé",
  neverLeast: () => "Regardées tant de fois ou plus",
  neverMore: () =>
    "Jamais jusqu'ici ne veut pas dire jamais : dix-neuf fois sur vingt, une telle ligne trouve quelque chose dans moins d'examens que ne dit la dernière colonne. Là où rien d'autre ne trouve ce qui immobilise un kit, elle reste.",
  noSuchLine: () => "Aucune ligne de ce genre",
  neverLines: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " ligne",
      other: strictNumber("fr", d.count, 0, "count") + " lignes",
    }),
  line: () => "Ligne",
  lineAsk: (d) => "Ligne " + d.line + " : " + d.ask,
  looks: () => "Examens",
  below: () => "Trouve quelque chose dans moins de",
  belowShare: (d) => d.share + " des examens",
  on: () => "Une visite est en cours",
  onToOpen: (d) =>
    "À ouvrir pour elle, l’un après l’autre : " + d.kits + ". L’inspecteur regarde d’abord aux lignes tirées.",
  onAllSeen: () => "Toutes les lignes tirées ont été regardées. La visite peut être terminée.",
  drawn: () => "Ce kit a été tiré pour une visite",
  drawnMore: (d) =>
    "Ouvrez-le avec l’inspecteur à côté de vous. À " +
    plural(d.lines, 0, fr, {
      one: strictNumber("fr", d.lines, 0, "lines") + " ligne",
      other: strictNumber("fr", d.lines, 0, "lines") + " lignes",
    }) +
    ", il regarde avant que vous répondiez ; chacune le dit.",
  looksFirst: () => "L’inspecteur regarde d’abord",
  looksFirstMore: () =>
    "Cette ligne a été tirée pour une visite. Laissez-le regarder et l’écrire avant de répondre. S’il est parti, continuez.",
};
export default words;
