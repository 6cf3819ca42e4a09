/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { StandingWords } from "#src/words/made/kit/standing.ts";
import { plural, select, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: StandingWords = {
  day: (d) =>
    plural(d.day, 0, fr, { "1": "1er", other: strictNumber("fr", d.day, 0, "day") }) +
    " " +
    select(d.month, {
      "1": "janvier",
      "2": "février",
      "3": "mars",
      "4": "avril",
      "5": "mai",
      "6": "juin",
      "7": "juillet",
      "8": "août",
      "9": "septembre",
      "10": "octobre",
      "11": "novembre",
      other: "décembre",
    }) +
    " " +
    d.year,
  days: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " jour",
      other: strictNumber("fr", d.count, 0, "count") + " jours",
    }),
  months: (d) => plural(d.count, 0, fr, { other: strictNumber("fr", d.count, 0, "count") + " mois" }),
  years: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " an",
      other: strictNumber("fr", d.count, 0, "count") + " ans",
    }),
  both: (d) => d.one + " et " + d.other,
  listed: (d) => d.some + ", " + d.next,
  met: (d) => select(d.what, { salt: "eau salée", oil: "huile", sewage: "eaux usées", other: "carburant" }),
  noReason: () => "aucune raison donnée",
  line: (d) => "ligne " + d.line + ", " + d.asks,
  step: (d) => "étape " + d.step,
  lowDelivery: (d) => d.line + " : débite " + d.share + " % de ce qu'il devrait",
  lineWhy: (d) => d.line + " (" + d.why + ")",
  sound: () => "Scellé, à jour et prouvé.",
  retired: (d) => "Réformé : " + d.reason,
  notEnrolled: () => "Pas encore inscrit.",
  enrol: () => "Inscrire le kit.",
  handedOver: (d) => "Remis à " + d.to + ".",
  handedOverUntil: (d) => "Remis à " + d.to + ", retour attendu avant le " + d.back + ".",
  getBack: () => "Le récupérer, puis faire une remise en état.",
  returned: () => "Revenu, et pas encore remis en état.",
  returnedMet: (d) => "Revenu, et pas encore remis en état. Il a rencontré : " + d.met + ".",
  doTurnaround: () => "Faire une remise en état.",
  lentNotBack: (d) => "Prêté à " + d.to + ", pas revenu : " + d.thing,
  lentNotCounted: (d) => "Prêté à " + d.to + ", pas compté : " + d.thing,
  stillLent: (d) => d.lent + ".",
  fetchLent: (d) => "Aller chercher ce qui a été prêté : " + d.thing + ".",
  closedGrounded: (d) => "Clos comme immobilisé : " + d.reason,
  closedNoReason: () => "Clos comme immobilisé : aucune raison donnée.",
  isNew: () => "Nouveau, première remise en état à faire.",
  doFirst: () => "Faire la première remise en état.",
  open: () => "Ouvert : une remise en état est en cours.",
  finish: (d) =>
    "Terminer la remise en état : " +
    plural(d.count, 0, fr, {
      one: "reste " + strictNumber("fr", d.count, 0, "count") + " ligne",
      other: "restent " + strictNumber("fr", d.count, 0, "count") + " lignes",
    }) +
    ".",
  notExamined: (d) => "Pas examiné : " + d.line,
  examineLine: (d) => "Examiner ce qui n'était pas possible : " + d.line,
  sealSeen: (d) => "Scellé lu " + d.seen + ", enregistré " + d.expected + ".",
  sealMissing: (d) => "Scellé absent, enregistré " + d.expected + ".",
  noSeal: () => "Aucun scellé enregistré.",
  sealTwin: (d) => "Le scellé " + d.seal + " est aussi enregistré pour " + d.kit + ".",
  openAndSeal: () => "L'ouvrir, tout compter et examiner, et le sceller à nouveau.",
  unsound: () => "Conteneur pas sain à un inventaire.",
  unsoundNote: (d) => "Conteneur pas sain à un inventaire : " + d.note,
  examineContainer: () => "Examiner le conteneur et ce qu'il contient.",
  oldVersion: (d) =>
    "Construit selon la version " + d.version + " de son modèle ; la version " + d.newest + " est en vigueur.",
  rebuild: (d) => "Le mettre à la version " + d.newest + ".",
  owed: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " contrôle",
      other: strictNumber("fr", d.count, 0, "count") + " contrôles",
    }) +
    " de la version " +
    d.version +
    " pas encore " +
    plural(d.count, 0, fr, { one: "fait", other: "faits" }) +
    " : dernière remise en état selon la version " +
    d.under +
    ".",
  makeNew: (d) => "Faire ce qui est nouveau dans la version " + d.version + ".",
  toSettle: (d) => "À trancher : " + d.about,
  settle: (d) => "Trancher : " + d.about,
  noPattern: (d) => "Le modèle " + d.pattern + " n'est pas ici, donc rien ne peut être dit de ce kit.",
  connectDevice: () => "Sur un appareil : le connecter, pour qu'il aille chercher le modèle.",
  putPattern: (d) =>
    "Sur l'ordinateur de la station : mettre le fichier du modèle " +
    d.pattern +
    " dans le dossier des modèles et redémarrer.",
  drillOn: (d) => "Mis de côté pour un exercice depuis le " + d.day + ".",
  endDrill: () => "Nommer chaque défaut posé comme retiré, terminer l'exercice, puis le sceller.",
  stillPlanted: (d) => "Posé pour un exercice, et pas nommé comme retiré : " + d.name + ".",
  neverShown: () =>
    "Des défauts ont été posés pour un exercice, et personne n'a montré lesquels : pas remis en état en entier depuis.",
  openedForDrill: () => "Ouvert pour un exercice, et pas scellé depuis.",
  doWhole: () => "Faire une remise en état entière.",
  outOfDateSince: (d) => d.item + " : périmé depuis le " + d.day + ".",
  outOfDate: (d) => d.item + " : périmé",
  goesOutOfDate: (d) => d.item + " : arrive à péremption",
  noDate: (d) => "Aucune date enregistrée pour " + d.item + ".",
  readDate: (d) => "Lire la date, ou renouveler : " + d.item + ".",
  unreadable: (d) => "La date ne peut pas être lue : " + d.item + ".",
  notRenewed: (d) => d.item + " : pas renouvelé au dernier rangement.",
  renew: (d) => "Renouveler : " + d.item + ".",
  proofRunOld: (d) => "Essai de bon fonctionnement de plus de " + d.span + " : le dernier date du " + d.day + ".",
  proofRunNone: () => "Aucun essai de bon fonctionnement enregistré.",
  proofRunDue: () => "essai de bon fonctionnement à faire",
  doProofRun: () => "Faire un essai de bon fonctionnement.",
  turnaroundOld: (d) => "Remise en état de plus de " + d.span + " : la dernière date du " + d.day + ".",
  turnaroundNone: () => "Aucune remise en état enregistrée.",
  turnaroundDue: () => "remise en état à faire",
  musterOld: (d) => "Inventaire de plus de " + d.span + " : le dernier date du " + d.day + ".",
  musterNone: () => "Aucun inventaire enregistré.",
  musterDue: () => "inventaire à faire",
  muster: () => "L'inventorier : lire son scellé.",
  finding: (d) => d.name + ".",
  findingUnproved: (d) => d.name + " (remède pas encore prouvé).",
  livedWith: (d) => "Toléré jusqu'au " + d.day + " par " + d.by + " : " + d.name + ".",
  livedWithOnly: (d) => "Toléré seulement jusqu'au " + d.day + " : " + d.name + ".",
  livingEnds: (d) => "fin de tolérance : " + d.name,
  mend: (d) => "Réparer et prouver : " + d.name + ".",
  fitBack: (d) => "Remettre " + d.item + ", ou un autre, et le prouver.",
  remedy: (d) => d.name + " : " + d.advice,
  prove: (d) => d.name + " : le prouver.",
  proveAt: (d) => d.name + " : le prouver à " + d.places + ".",
  placeLine: (d) => "la ligne " + d.line,
  placeRun: (d) => "la marche de la ligne " + d.line,
  foundWrong: (d) => "Trouvé défectueux, et aucun constat relevé : " + d.line,
  raiseOrAnswer: (d) => "Relever un constat, ou répondre à nouveau : " + d.line,
  changeFew: () => "Trop peu d'essais pour dire une tendance.",
  changeNone: (d) => "Aucune tendance nette sur " + d.runs + " essais.",
  changePulls: (d) =>
    "Tirages : " +
    select(d.way, { rising: "plus", other: "moins" }) +
    ", d'environ " +
    d.by +
    ", sur " +
    d.runs +
    " essais.",
  changePrime: (d) =>
    select(d.way, { rising: "Plus lent", other: "Plus rapide" }) + " de " + d.seconds + " s sur " + d.runs + " essais.",
  changeVolume: (d) =>
    select(d.way, { rising: "Plus", other: "Moins" }) + ", de " + d.volume + " sur " + d.runs + " essais.",
  changeDelivery: (d) =>
    select(d.way, { rising: "Plus", other: "Moins" }) +
    ", de " +
    d.share +
    " % du débit attendu sur " +
    d.runs +
    " essais.",
  watch: (d) =>
    select(d.what, {
      pulls: "Tirages",
      prime: "Amorçage",
      fuel: "Carburant brûlé",
      water: "Eau trouvée",
      other: "Débit",
    }) +
    " : " +
    d.change +
    " Dernier : " +
    d.last +
    " ; " +
    d.limit +
    " au plus.",
  watchShare: (d) => "Débit : " + d.change + " Dernier : " + d.last + " % ; noté au-dessous de " + d.limit + " %.",
};
export default words;
