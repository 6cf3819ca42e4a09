/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { LockWords } from "#src/words/made/frame/lock.ts";

const words: LockWords = {
  title: () => "Cet appareil est verrouillé",
  locked: () => "Verrouillé.",
  lockedMore: () => "Sans les kits, les bateaux ni les fiches de la station. Gardé ici en clair, non envoyé.",
  takingWater: () => "Bateau qui prend l'eau",
  yourPin: () => "Votre code personnel",
  yourPinHint: () =>
    "Celui de toute personne qui a verrouillé cet appareil ou s'y est connectée. Aucun réseau n'est nécessaire.",
  notOpened: () => "Pas ouvert",
  open: () => "Ouvrir cet appareil",
  openPasskey: () => "Ouvrir avec une clé d'accès",
  wrongPin: () => "Ce code n'ouvre pas cet appareil",
  wrongPinMore: () =>
    "Rien n'est perdu, et vous pouvez essayer autant de fois que vous voulez. Un code changé sur un autre appareil est encore l'ancien ici.",
  wrongPasskey: () => "La clé d'accès n'a pas ouvert cet appareil",
  wrongPasskeyMore: () => "Réessayez, ou entrez un code.",
  whileLocked: () => "Tant qu'il est verrouillé",
  sheetBegun: () =>
    "Une fiche a été commencée ici. Elle continue là où elle en était, et sera reprise une fois l'appareil ouvert.",
  worksBeside: () =>
    "Une nouvelle fiche de détresse et la carte pour inconnus fonctionnent, sans les kits ni les bateaux de la station.",
  refuelCalls: () => "Un rappel de ravitaillement réglé sur cet appareil sonne toujours.",
  dueCalls: () =>
    "Ce qui était attendu sur une fiche ouverte, et les attentes d'une remise en état, sonnent toujours ; leur objet se montre une fois l'appareil ouvert.",
  sendingStands: () => "L'envoi et la réception attendent qu'il soit ouvert.",
  nobody: () => "Personne ne peut l'ouvrir",
  nobodyMore: () =>
    "Le code de toute personne qui l'ouvrait avant l'ouvre toujours. S'il n'en reste aucun, supprimez ce qui est verrouillé, faites-vous inviter par un administrateur et connectez-vous à nouveau : le journal de la station revient.",
  remove: () => "Supprimer ce qui est verrouillé",
  notRemoved: () => "Pas supprimé",
  removeAsk: () => "Supprimer tout ce qui est verrouillé ?",
  removeDo: () => "Supprimer",
  removeLoses: () =>
    "Les lignes et les photos de cet appareil qui n'ont pas été envoyées sont perdues. Personne ne peut dire combien il y en a.",
  removeKeeps: () => "Ce qui a été envoyé est à la station. Une fiche écrite sans ouvrir reste.",
  due: () => "Quelque chose est à faire : déverrouillez pour voir",
  now: () => "maintenant",
  over: (d) => "dépassé de " + d.duration,
  dueMore: () =>
    "Ce que c'est se trouve derrière le verrou. L'appel revient dans une minute, jusqu'à ce que cet appareil soit ouvert.",
  inAMinute: () => "Dans une minute",
  unlock: () => "Déverrouiller pour voir",
  stopAlarm: () => "Arrêter seulement l'alarme",
  alarmSet: () => "Une alarme est réglée sur cet appareil",
  callsAt: (d) => "Elle sonne à " + d.time + ". Son objet se montre une fois l'appareil ouvert.",
  wasDueAt: (d) => "Elle était attendue à " + d.time + ". Son objet se montre une fois l'appareil ouvert.",
  touchOnce: () =>
    "Touchez cet écran une fois : sans cela, le navigateur peut la garder muette. Laissez l'écran allumé.",
};
export default words;
