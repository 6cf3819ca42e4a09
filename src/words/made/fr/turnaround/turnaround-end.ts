/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { TurnaroundEndWords } from "#src/words/made/turnaround/turnaround-end.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: TurnaroundEndWords = {
  whoSees: (d) => d.qualification + " : qui le voit fait",
  secondPerson: (d) => "Seconde personne : " + d.person + " (" + d.qualification + ")",
  nobodySees: (d) => "Personne ne le voit fait : " + d.note + " (" + d.qualification + ")",
  namedSecond: (d) => d.qualification + ", " + d.person,
  namedAlone: (d) => d.qualification + ", seul",
  undo: () => "Annuler",
  undoWhat: (d) => "Annuler : " + d.what,
  takenBackAtLine: () => "Repris à la ligne",
  notTakenBack: () => "Pas repris",
  aSecond: (d) => d.qualification + " : une seconde personne",
  whoSeesAsk: (d) => d.qualification + " : qui le voit fait ?",
  notDoneYet: () => "Vous ne l'avez pas encore fait.",
  yoursLapsed: (d) => "La vôtre a expiré le " + d.day + ".",
  withOneOfThese: () => "Faites-le avec l'une de ces personnes à vos côtés : cela compte alors pour vous.",
  nobodyLeft: () => "Il ne reste personne à la station qui puisse le voir fait.",
  seesItDone: (d) => d.person + " le voit fait",
  notWritten: () => "Pas inscrit",
  nobodyAlone: () =>
    "Personne ne continue seul ici. Si aucune de ces personnes ne peut venir, clorez le kit comme immobilisé.",
  nobodyCanCome: () => "Personne ne peut venir",
  whyNobody: () => "Pourquoi personne ne le voit fait",
  whyNobodyHint: () => "Cela ne compte alors pas pour vous.",
  goOnWithNote: () => "Continuer avec cette note",
  confirmedByPin: (d) => d.person + " l'a confirmé par son propre code, " + d.at + ".",
  confirmedOnOwn: (d) => d.person + " l'a confirmé sur un appareil à soi, " + d.at + ".",
  notConfirmedYet: (d) => "Pas encore confirmé par " + d.person,
  confirmHow: (d) =>
    d.person + " le confirme sous À faire sur un appareil à soi, ou ici par son code. Le travail continue.",
  confirmed: (d) => d.person + " l'a confirmé par son code",
  pinForLine: (d) =>
    d.person +
    " le tape, et personne d'autre. Il dit que " +
    d.person +
    " a vu " +
    d.doer +
    " faire la ligne " +
    d.line +
    " (" +
    d.what +
    ").",
  pinFor: (d) =>
    d.person +
    " le tape, et personne d'autre. Il dit que " +
    d.person +
    " a vu " +
    d.doer +
    " faire ceci : " +
    d.what +
    ".",
  confirmAfter: (d) => "Cela se confirme une fois la ligne finie. " + d.why,
  pinOf: (d) => "Code de " + d.person,
  notConfirmed: () => "Pas confirmé",
  sawItDone: () => "Je l'ai vu fait",
  confirmLater: () => "Confirmez-le sur un appareil à vous, ou plus tard.",
  notReached: () => "La station n'a pas pu être jointe",
  inTheWay: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " chose empêche de poser un scellé",
      other: strictNumber("fr", d.count, 0, "count") + " choses empêchent de poser un scellé",
    }),
  showOthers: (d) => "Montrer les " + d.count + " autres",
  goToDrill: () => "Aller à l'exercice",
  goToFinding: () => "Aller au constat",
  goToLine: (d) => "Aller à la ligne " + d.line,
  closeAndSeal: (d) => "Fermer et sceller " + d.kit,
  newSeal: () => "Nouveau scellé",
  asGrounded: () => "Le clore comme immobilisé",
  orAsGrounded: () => "Ou le clore comme immobilisé",
  asGroundedMore: () =>
    "Le conteneur est fermé et le kit ne peut pas partir, jusqu'à ce qu'une autre remise en état le remette en ordre.",
  closeAsGrounded: () => "Clore comme immobilisé",
  leftOut: () => "Laissées de côté, comme il est permis",
  leftOutLines: (d) => "Lignes " + d.lines,
  sealNumber: () => "Numéro du nouveau scellé",
  sealNumberHint: () => "Lisez-le sur le nouveau scellé.",
  sealAgain: () => "Numéro du scellé, encore une fois",
  sealAgainHint: () => "Après la pose, lisez-le sur le conteneur fermé.",
  witness: () => "Qui d'autre l'a vu fermé, le cas échéant",
  notSealed: () => "Pas scellé",
  sealed: () => "Scellé",
  sealedWith: (d) => "Scellé avec " + d.seal,
  sealRefused: () => "Ce scellé est refusé",
  sealRefusedMore: () => "Prenez un autre scellé, et cherchez comment ce numéro est arrivé ici.",
  whyGrounded: () => "Pourquoi est-il immobilisé ?",
  sayWhy: () => "Dites pourquoi, en quelques mots.",
  sealIfAny: () => "Scellé posé, le cas échéant",
  notClosed: () => "Pas clos",
  goBack: () => "Revenir",
  isClosed: (d) => d.kit + " est clos",
  limitName: () => "Limite :",
  until: (d) => "Jusqu'au " + d.day + " : " + d.what,
  toBoard: () => "Vers le tableau",
};
export default words;
