/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { TurnaroundRecordWords } from "#src/words/made/turnaround/turnaround-record.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: TurnaroundRecordWords = {
  title: (d) => "Remise en état de " + d.kit,
  renewed: () => "Renouvelé, et dates lues",
  runs: () => "Chronomètres, coups de lanceur, amorçages et débit",
  noTurnaround: () => "Remise en état inconnue",
  noTurnaroundNews: () => "Cet appareil ne connaît pas cette remise en état de ce kit",
  pdf: () => "Procès-verbal en PDF",
  exceptions: () => "Exceptions",
  findings: () => "Constats",
  finding: (d) => "Constat : " + d.finding,
  amiss: () => "Lignes pas conformes du premier coup",
  leftOut: () => "Laissée de côté, comme il est permis",
  partOf: (d) => d.title + " : " + d.count,
  allRight: (d) =>
    d.stage +
    " : " +
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " ligne",
      other: strictNumber("fr", d.count, 0, "count") + " lignes",
    }) +
    ", tout trouvé bon" +
    plural(d.left, 0, fr, { "0": "", one: " ; " + d.left + " omise", other: " ; " + d.left + " omises" }),
  allDone: (d) =>
    d.stage +
    " : " +
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " ligne",
      other: strictNumber("fr", d.count, 0, "count") + " lignes",
    }) +
    ", tout fait" +
    plural(d.left, 0, fr, { "0": "", one: " ; " + d.left + " omise", other: " ; " + d.left + " omises" }),
  othersRight: (d) =>
    d.stage +
    " : " +
    plural(d.count, 0, fr, {
      one: "l’autre ligne, trouvée bonne",
      other: "les " + strictNumber("fr", d.count, 0, "count") + " autres lignes, trouvées bonnes",
    }) +
    plural(d.left, 0, fr, { "0": "", one: " ; " + d.left + " omise", other: " ; " + d.left + " omises" }),
  stageLeftOut: (d) =>
    d.stage +
    " : " +
    plural(d.left, 0, fr, {
      one: strictNumber("fr", d.left, 0, "left") + " ligne, omise comme permis",
      other: strictNumber("fr", d.left, 0, "left") + " lignes, omises comme permis",
    }),
  line: (d) => "Ligne " + d.line,
  cardFor: (d) => "Saisir une carte pour " + d.kit,
  topOfCard: () => "D'abord, le haut de la carte",
  dayOnCard: () => "Jour sur la carte",
  timeOnCard: () => "Heure sur la carte",
  whenFilled: () => "Saisissez d'abord quand la carte a été remplie",
  howToType: (d) =>
    "Dans chaque case, tapez ce que dit la carte : " +
    d.s +
    " vu, " +
    d.w +
    " non conforme, " +
    d.n +
    " et pourquoi c'est impossible, ou la valeur lue. Entrée enregistre la case et passe à la suivante.",
  boxesEntered: () => "Cases saisies",
  othersSeen: (d) => "La carte montre les " + d.count + " autres sans valeur comme vues",
  notAllEntered: () => "Tout n'est pas saisi",
  stoppedHere: (d) => "Arrêté ici : " + d.why,
  enterAgain: (d) => "Saisir " + d.box + " à nouveau",
  again: () => "À nouveau",
  newItem: (d) => d.item + " neuf",
  boxPulls: (d) => "Coups de lanceur : " + d.text,
  boxTime: (d) => "Durée : " + d.text,
  fittedNew: () => "Monté neuf",
  entered: () => "Saisi",
  hintNumber: () => "nombre",
  hintTime: () => "2 min 5 s",
  hintPrinted: () => "date imprimée",
  hintSeen: () => "s",
  hintLook: () => "s, w, n pourquoi",
  hintAsRead: () => "tel que lu, w, n pourquoi",
  hintReading: () => "valeur lue, w, n pourquoi",
  hintTimed: () => "durée, w, n pourquoi",
  hintCount: () => "nombre, w, n pourquoi",
  hintMatch: () => "l'un / l'autre, w, n pourquoi",
  hintDate: () => "date, w, n pourquoi",
  notSaved: () => "Pas enregistré",
  typeLook: () => "Tapez s, w, ou n et pourquoi.",
  typeWhy: () => "Après n, tapez pourquoi c'était impossible.",
  typeReading: (d) => "Tapez la valeur lue en " + d.unit + ". Ou w, ou n et pourquoi.",
  typeTime: () => "Tapez la durée, par exemple 45 s. Ou w, ou n et pourquoi.",
  typeCount: (d) => "Tapez le nombre : " + d.things + ". Ou w, ou n et pourquoi.",
  typeAsRead: (d) => "Tapez ce qui a été lu : " + d.what + ". Ou w, ou n et pourquoi.",
  typeDate: () => "Tapez la date, 2027-03-14 ou 2027-03. Ou w, ou n et pourquoi.",
  typeBoth: () => "Tapez les deux, avec / entre eux. Ou w, ou n et pourquoi.",
  typeQuarters: () =>
    "Écrivez les deux comme 1/2 / 3/4, avec des blancs autour du / qui les sépare : 0, 1/4, 1/2, 3/4, 4/4, vide, plein ou pourcentage. Ou w, ou n et la raison.",
  typePulls: () => "Tapez combien de coups de lanceur.",
  typeHowLong: () => "Tapez combien de temps, par exemple 2 min 5 s.",
  atLeast: (d) => "Au moins " + d.time + " est demandé ici.",
  typePrinted: () => "Tapez la date imprimée dessus, 2027-03-14 ou 2027-03.",
  typeFitted: () => "Tapez s pour monté neuf.",
  clockFirst: () => "Tapez d'abord ce que dit la carte du chronomètre de cette ligne. Ou n et pourquoi.",
  findingRaised: () => "Constat ouvert.",
  noFindingYet: () => "Aucun constat n'en a encore été ouvert",
  raise: () => "Ouvrir le constat",
  patterns: () => "Modèles",
  dryRun: () => "Essai à blanc : rien n'est écrit au journal.",
  dryRunMore: () => "Ne démarrez aucun moteur et n'ouvrez aucun carburant pour cela.",
  endIt: () => "L'arrêter",
  dryOver: () => "L'essai à blanc est fini",
  dryOverNews: () => "Rien n'en a été écrit",
  dryOverMore: () => "Le brouillon est tel qu'il était. Revenez-y, ou parcourez-le encore.",
  backToDrafts: () => "Retour aux brouillons",
  dryOfDraft: () => "Essai à blanc d'un brouillon",
  dryOfDraftMore: () =>
    "Chaque ligne, chronomètre et mise en garde comme dans une remise en état, sur un kit qui n'est nulle part. Rien n'est écrit au journal, rien n'est envoyé, et tout disparaît quand on quitte la page.",
  notWalked: () => "Il ne peut pas encore être parcouru",
  whichDraft: () => "Quel brouillon ?",
  onThisDevice: (d) => "Sur cet appareil : " + d.draft,
  laidOutBy: (d) => "Déposé par " + d.person + " : " + d.draft,
  fromFile: () => "D'un fichier de modèle",
  draftVersion: (d) => d.pattern + ", version " + d.version,
  afterwards: (d) => "Ensuite : " + d.words,
};
export default words;
