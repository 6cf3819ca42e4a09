/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { DrillWords } from "#src/words/made/kit/drill.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
import { plural } from "#src/words/cases.ts";
const words: DrillWords = {
  title: (d) => "Exercice sur " + d.kit,
  all: () => "Tous les exercices de la station",
  hasEnded: () => "L'exercice est terminé",
  hasEndedMore: () => "Revoyez les lignes que nomme la pose du scellé, puis scellez le kit. Il n'est pas prêt avant.",
  toSealing: () => "Passer à la pose du scellé",
  aside: (d) => d.kit + " est mis de côté : il ne doit pas partir",
  sinceFor: (d) => "Depuis le " + d.at + ", pour " + d.who + ".",
  nothingPlanted: () => "Rien n'est encore écrit comme posé.",
  planted: () => "Des défauts sont posés.",
  find: () => "Trouver ce qui a été posé",
  findMore: () =>
    "Remettez le kit en état comme toujours, et ouvrez un constat pour tout ce qui ne va pas. Combien il y a de défauts, personne ne le dit.",
  goOn: () => "Continuer la remise en état",
  openIt: () => "L'ouvrir pour la remise en état",
  noneOn: () => "Aucun exercice n'est en cours : un responsable des kits en commence un",
  turnaroundOpen: () => "Une remise en état est ouverte : fermez-la avant un exercice",
  mustFlush: (d) => "Il a rencontré : " + d.what + ", et n'est pas encore rincé : rincez-le avant un exercice",
  mustFlushMore: () =>
    "Faites maintenant son premier rinçage, et écrivez-le sur la page du kit avec Rincé maintenant. Ensuite, il peut être mis de côté.",
  toKit: () => "À la page du kit",
  setAside: () => "Le mettre de côté pour un exercice",
  setAsideMore: () =>
    "Dès lors, le kit ne compte plus comme prêt, jusqu'à ce qu'il ait été remis en état et scellé après l'exercice. Qui pose les défauts ne fait pas l'exercice, et les pose sans être vu.",
  sealRead: () => "Numéro du scellé, lu sur le conteneur",
  noSeal: () => "Il ne porte pas de scellé",
  sealDiffers: () => "Ce n'est pas ce qui est noté",
  sealDiffersMore: () =>
    "Regardez le scellé encore une fois. S'il se lit ainsi, quelqu'un a ouvert le kit depuis : commencez quand même, et le journal le garde tel que lu.",
  notBegun: () => "Pas commencé",
  begin: () => "Briser le scellé et commencer l'exercice",
  whoDrilled: () => "Qui fait l'exercice ?",
  plant: () => "Poser les défauts",
  plantMore: () =>
    "Faites-le sans être vu. Ce que vous posez reste sur cet appareil : le journal de la station reçoit un nombre qui le prouve ensuite, et n'en montre rien avant.",
  canInjure: () => "Un défaut posé peut blesser",
  canInjureMore: () =>
    "Ne posez rien qui puisse blesser qui le cherche ou qui fait tourner la motopompe : pas de carburant qui fuit, pas de protection retirée, pas de détecteur de gaz mis hors service. Dans le doute, abstenez-vous.",
  sealAfter: () => "Scellé posé ensuite, si vous en posez un",
  notWritten: () => "Pas écrit",
  arePlanted: () => "Ils sont posés",
  takeOffNamed: (d) => "Retirer " + d.fault + " de la liste",
  takeOff: () => "Retirer de la liste",
  add: () => "Ajouter ce défaut à la liste",
  onItem: () => "Sur quel élément ?",
  chooseItem: () => "Choisir un élément",
  whichFault: () => "Quel défaut ?",
  chooseFault: () => "Choisir un défaut",
  someKept: () => "Certains de ses défauts ne sont pas proposés : ils pourraient brûler ou électriser qui les cherche.",
  whatDone: () => "Ce qui lui est fait exactement",
  whatDoneHint: () => "Pour que quelqu'un qui ne l'a pas vu puisse le retirer.",
  youPlanted: () => "Ce que vous avez posé",
  youPlantedMore: () =>
    "Personne d'autre ne le voit avant que vous le révéliez. Tournez l'écran à l'écart de qui fait l'exercice.",
  show: () => "Le montrer, pour l'écrire ou pour le retirer",
  lettersWith: (d) => "Lettres qui vont avec la liste : " + d.letters,
  lettersMore: () =>
    "Écrivez les deux sur papier. Si cet appareil est perdu, la liste retapée avec ces lettres prouve encore ce qui a été posé ; sans elles, l'exercice ne peut pas être comparé.",
  notRevealed: () => "Pas révélé",
  haveLooked: () => "Ils ont cherché : révéler ce qui a été posé",
  revealAsk: () => "Révéler ce qui a été posé ?",
  revealDo: () => "Le révéler à tous",
  notYet: () => "Pas encore",
  revealMore: () =>
    "Tout le monde le voit alors, et on ne peut plus le cacher. Ce qui n'est pas trouvé à ce moment compte comme manqué.",
  revealUnopened: () => "Personne n'a encore ouvert le kit",
  revealUnopenedMore: () => "Tout ce qui a été posé compterait comme manqué.",
  fromPaper: () => "Révéler depuis le papier",
  onOtherDevice: () => "Ce qui a été posé est sur l'appareil où cela a été noté",
  onOtherDeviceMore: () =>
    "Le mieux est de le révéler là-bas, par qui l'a posé. Si cet appareil est perdu, tapez la liste et ses lettres depuis le papier : elle n'est prise que si c'est celle qui a été posée.",
  typeList: () => "Taper la liste depuis le papier",
  letters: () => "Lettres qui vont avec la liste",
  revealList: () => "Révéler cette liste",
  whatPlanted: () => "Ce qui a été posé",
  inKit: () => "Des défauts posés sont dans ce kit",
  inKitMore: () =>
    "Une motopompe qui porte un défaut lâche sur le bateau qui en a besoin. Retirez-les un par un, puis nommez-les ici.",
  takenOut: () => "Retiré.",
  takenOutNamed: (d) => "Retiré : " + d.fault,
  isTakenOut: () => "Il est retiré",
  notPlanted: () => "Trouvés, et pas posés",
  nothingWrong: () => "Rien n'était défectueux là.",
  isRealPutRight: () => "C'est réel, et cela se répare comme tout autre.",
  secondSays: () => "La seconde personne dit si c'est réel.",
  isReal: () => "C'est réel",
  isNothing: () => "Rien n'est défectueux là",
  end: () => "Terminer l'exercice",
  leftToDo: (d) =>
    "Reste à faire : " +
    d.planted +
    " " +
    plural(d.planted, 0, fr, { one: "posé à retirer", other: "posés à retirer" }) +
    ", " +
    d.found +
    " " +
    plural(d.found, 0, fr, { one: "trouvé à juger", other: "trouvés à juger" }) +
    ".",
  thenSeal: () => "Ensuite, revoyez les lignes que nomme la remise en état, et scellez.",
  notEnded: () => "Pas terminé",
  listLost: () => "La liste de ce qui a été posé est perdue",
  callOff: () => "Annuler l'exercice",
  listLostMore: () =>
    "L'exercice se termine sans résultat, et le kit reste immobilisé jusqu'à ce qu'il ait été remis en état en entier : cherchez-y ce qui a été posé.",
  callOffMore: () =>
    "Rien n'est écrit comme posé. Le kit reste immobilisé jusqu'à ce qu'il ait été remis en état et scellé.",
  why: () => "Pourquoi",
  endNotCompared: () => "Le terminer comme non comparé",
};
export default words;
