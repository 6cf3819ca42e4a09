/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { FindingsWords } from "#src/words/made/kit/findings.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: FindingsWords = {
  title: () => "Constats en cours",
  titleOn: (d) => "Constats en cours sur " + d.kit,
  none: () => "Aucun constat en cours",
  noneMore: () => "Tout ce qui a été trouvé défectueux a été réparé, et prouvé par le contrôle qui l'avait trouvé.",
  byAge: () => "Les plus anciens d'abord",
  byKit: () => "Par kit",
  noSuch: () => "Constat inconnu",
  noSuchNews: () => "Cet appareil ne connaît pas ce constat",
  turnaround: () => "Remise en état",
  kit: () => "Kit",
  means: () => "Conséquence",
  raised: () => "Relevé",
  raisedBy: (d) => d.at + " par " + d.name,
  raisedAtLine: (d) => d.at + " par " + d.name + ", à la ligne " + d.line,
  note: () => "Note",
  firstRemedy: () => "Premier remède",
  finding: () => "Constat",
  done: () => "Ce qui a été fait",
  closed: () => "Clos",
  proved: (d) => "Prouvé " + d.at + " par " + d.name + ".",
  livedWith: (d) => "Toléré jusqu'au " + d.day,
  proveIt: () => "Le prouver",
  orMore: () => "Ou autre chose a été fait",
  putRight: () => "Y remédier",
  goToKit: (d) => "Aller à " + d.kit,
  backToTurnaround: (d) => "Retour à la remise en état de " + d.kit,
  isClosed: (d) => d.kit + " est fermé",
  it: () => "l'article",
  openFirst: (d) =>
    "Si " + d.item + " est à l'intérieur, ouvrez d'abord le kit pour une remise en état : le travail rompt son scellé.",
  openKit: () => "Ouvrir le kit",
  check: () => "Contrôle",
  rightIs: (d) => "Ce qui est juste : " + d.expect,
  limit: (d) => "Limite : " + d.limits,
  timeTaken: () => "Temps mis",
  noCheck: () => "Le modèle n'a pas de contrôle pour cela. Faites-en ajouter un par son auteur.",
  repeat: (d) =>
    plural(d.count, 0, fr, {
      one: "Un contrôle le prouve. Le constat n'est clos que s'il est trouvé juste.",
      other:
        strictNumber("fr", d.count, 0, "count") +
        " contrôles le prouvent. Le constat n'est clos que si tous sont trouvés justes.",
    }),
  notProved: () => "Pas prouvé",
  notProvedMore: () => "Enregistrez tel quel : le constat reste en cours, et il reste à faire.",
  notSaved: () => "Pas enregistré",
  allRight: () => "Tout est juste : clore le constat",
  notYet: () => "Enregistrer : pas encore réparé",
  seen: () => "Trouvé juste",
  toDo: () => "Encore à faire",
  toDoAt: (d) => "Encore à faire ; dans une remise en état, à la ligne " + d.line,
  wrong: () => "Toujours défectueux",
  notPossible: () => "Impossible",
  again: () => "Refaire",
  againOf: (d) => "Refaire : " + d.check,
};
export default words;
