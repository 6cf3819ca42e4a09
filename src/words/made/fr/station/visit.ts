/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { VisitWords } from "#src/words/made/station/visit.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: VisitWords = {
  title: () => "Visite",
  titleTo: (d) => "Visite à " + d.places,
  unknown: () => "Cet appareil ne connaît pas cette visite",
  unknownMore: () => "Elle est peut-être en route depuis un autre appareil.",
  isOn: () =>
    "Une visite est en cours : ce qui a été vu et ce qui a été écrit est comparé ici une fois qu'elle est terminée",
  progress: (d) => d.at + " sur " + d.all,
  allLooked: () => "Toutes les lignes ont été regardées",
  allLines: () => "Toutes les lignes, kit par kit",
  notShown: () =>
    "Les lignes tirées sont montrées à qui les regarde, et à tous une fois la visite terminée. Il reste à regarder :",
  leftOfKit: (d) =>
    d.kit +
    " : " +
    plural(d.left, 0, fr, {
      one: strictNumber("fr", d.left, 0, "left") + " ligne",
      other: strictNumber("fr", d.left, 0, "left") + " lignes",
    }),
  lineAsk: (d) => "Ligne " + d.line + " : " + d.ask,
  sawRight: () => "Vous avez vu : juste.",
  sawWrong: () => "Vous avez vu : faux.",
  notPossible: () => "Pas possible.",
  notYet: () => "Pas encore.",
  line: () => "Ligne",
  seenBefore: () => "Vous avez regardé cette ligne : une réponse maintenant prend la place de la précédente",
  notSaved: () => "Pas enregistré",
  later: () => "La laisser pour plus tard",
  noteWith: () => "Note avec cette réponse",
  note: () => "Note",
  where: (d) => d.stage + ", ligne " + d.line + ". " + d.progress,
  isShut: (d) => "D'après le journal, " + d.kit + " est fermé",
  isShutMore: (d) => "Regardez dedans une fois que son responsable l'a " + d.opened + ", et avant qu'il réponde.",
  opened: () => "ouvert",
  lineReads: (d) => "La ligne dit : " + d.text,
  rightIs: (d) => "Juste veut dire : " + d.expect,
  limit: (d) => "Limite : " + d.limits,
  foundAt: (d) => "Trouvé faux à la ligne " + d.line,
  whatWrong: () => "Qu'est-ce qui ne va pas ?",
  whatWrongWords: () => "Ce qui ne va pas, dans vos mots",
  writeWrong: () => "L'écrire comme faux, et ouvrir le constat",
  goBack: () => "Revenir",
  end: () => "Terminer la visite",
  allDone: () => "Toutes les lignes ont été regardées.",
  leftLines: (d) =>
    plural(d.count, 0, fr, {
      one:
        strictNumber("fr", d.count, 0, "count") +
        " ligne de cette visite n'a pas encore été regardée : dites pourquoi elle est laissée",
      other:
        strictNumber("fr", d.count, 0, "count") +
        " lignes de cette visite n'ont pas encore été regardées : dites pourquoi elles sont laissées",
    }) + " de côté, ou continuez.",
  endMore: () => "Une fois terminée, ce que le responsable a écrit se montre, et aucune ligne n'est plus regardée.",
  whyLeft: () => "Pourquoi des lignes sont laissées de côté",
  notEnded: () => "Pas terminée",
  endAndCompare: () => "Terminer la visite et comparer",
  missedByKeeper: () => "Manqué par le responsable",
  missedMore: () =>
    "Écrit comme juste, et trouvé faux pendant la visite. Quelque chose a pu changer depuis que cela a été écrit.",
  falseAlarms: () => "Fausses alertes",
  falseMore: () =>
    "Noté faux dans le journal, et trouvé juste pendant la visite : prouvez le constat, alors il se ferme.",
  readOtherwise: () => "Juste pour les deux, et lu autrement",
  notCompared: () => "Pas comparé",
  titleCount: (d) => d.title + " : " + d.count,
  kitByKit: () => "Kit par kit",
  report: () => "Rapport de cette visite en PDF",
  nothingCompared: () => "Rien n'a pu être comparé",
  agreement: () => "Accord",
  bothSay: (d) => "Les deux disent la même chose sur " + d.agreed,
  foundWrong: (d) => "Trouvé faux pendant la visite : " + d.wrong + " des lignes regardées.",
  called: () => "Lignes comparées, selon ce que chacun en a dit",
  calledMore: () =>
    "Entre parenthèses, entre quoi et quoi cela peut se trouver, dix-neuf fois sur vingt, si les lignes étaient indépendantes. Les lignes d'un même kit se tiennent, donc c'est un peu plus large.",
  keeper: () => "Responsable",
  keeperRight: () => "Le responsable a écrit juste",
  keeperWrong: () => "Le responsable a écrit faux",
  assessorRight: () => "L'évaluateur a vu juste",
  assessorWrong: () => "L'évaluateur a vu faux",
  notTurned: () => "Inspecté, et jamais ouvert d'après le journal",
  notTurnedMore: (d) =>
    d.kits +
    " : une motopompe inspectée et non remise en état peut lâcher sur le bateau qui en a besoin. Si un scellé a été brisé, ouvrez le kit dans le journal, remettez-le en état et scellez-le.",
  kit: () => "Kit",
  comparedWith: () => "Comparé avec",
  turnaroundOf: (d) => "Remise en état du " + d.day,
  turnaroundBefore: () => "Remise en état d'avant",
  linesCompared: () => "Lignes comparées",
  missed: () => "Manqué",
  keeperWrote: () => "Le responsable a écrit",
  assessorSaw: () => "L'évaluateur a vu",
  howDrawn: () => "Comment le tirage s'est fait",
  begunBy: (d) => "Commencée par " + d.who + ", le " + d.at + ".",
  begunEndedBy: (d) =>
    "Commencée par " + d.who + ", le " + d.at + " ; terminée par " + d.ender + ", le " + d.ended + ".",
  linesLeftOut: (d) => "Des lignes ont été laissées de côté : " + d.reason,
  drawn: (d) =>
    plural(d.kits, 0, fr, {
      one: strictNumber("fr", d.kits, 0, "kits") + " kit",
      other: strictNumber("fr", d.kits, 0, "kits") + " kits",
    }) +
    " sur " +
    d.all +
    " et " +
    plural(d.lines, 0, fr, {
      one: strictNumber("fr", d.lines, 0, "lines") + " ligne",
      other: strictNumber("fr", d.lines, 0, "lines") + " lignes",
    }) +
    " dedans ont été tirés. Il était demandé d'en voir au moins une fausse avec une chance de " +
    d.chance +
    " là où " +
    d.share +
    " le sont.",
  seed: (d) => "Graine " + d.seed + ".",
  drawnSame: () => "Tiré à nouveau de la graine, c'est le même échantillon.",
  drawnOther: () =>
    "Tiré à nouveau de la graine, c'est un autre échantillon : des lignes ont été rayées depuis, ou il n'a pas été tiré par cette règle.",
  drawnNotKnown: () => "Cet appareil n'a pas toutes les lignes pour le tirer à nouveau.",
};
export default words;
