/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { SettingsWords } from "#src/words/made/station/settings.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: SettingsWords = {
  meAs: (d) => d.person + ", " + d.role,
  patterns: () => "Modèles",
  patternsMore: () =>
    "Ce que contient chaque sorte de kit, et sa remise en état ligne par ligne : à lire, à réécrire, à parcourir et à publier.",
  looks: () => "Apparence et unités",
  units: () => "Unités",
  unitsHint: () => "Ce que vous saisissez peut porter n'importe quelle unité.",
  metric: () => "Métriques",
  metricNote: () => "L/min, m, kPa, kg",
  us: () => "Américaines",
  usNote: () => "US gpm, ft, psi, lb",
  colours: () => "Couleurs",
  day: () => "Jour",
  dayNote: () => "Sombre sur clair, pour le soleil",
  night: () => "Nuit",
  nightNote: () => "Faible et chaud, pour garder les yeux habitués au noir",
  brightness: (d) => "Luminosité de nuit : " + d.percent,
  percent: (d) => d.percent + " %",
  brightnessHint: () => "Visible quand les couleurs sont sur nuit. Baissez aussi l'écran lui-même.",
  dimmer: () => "Plus sombre",
  brighter: () => "Plus clair",
  place: () => "Lieu",
  placeHere: () => "Où vous travaillez sur cet appareil",
  signingIn: () => "Connexion",
  pinNow: () => "Votre code actuel",
  newPin: () => "Nouveau code",
  newPinHint: (d) =>
    "De " + d.least + " à " + d.most + " chiffres, pas tous les mêmes et pas à la suite comme 123456 ou 987654.",
  changePin: () => "Changer le code",
  pinChanged: () => "Le code est changé.",
  elsewhere: () => "Sur les autres appareils",
  elsewhereEnd: () => "M'y déconnecter",
  elsewhereKeep: () => "Y rester connecté",
  signedOutOn: (d) => "Déconnecté sur : " + d.devices + ".",
  notReached: () => "La station ne peut pas être jointe.",
  wrongPins: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " code faux essayé à votre nom",
      other: strictNumber("fr", d.count, 0, "count") + " codes faux essayés à votre nom",
    }),
  wrongPinsMore: () =>
    "Sur des appareils où vous ne vous êtes jamais connecté. Si ce n'était pas vous, prévenez un administrateur.",
  wrongPinsLast: (d) =>
    "Sur des appareils où vous ne vous êtes jamais connecté, le dernier " +
    d.at +
    ". Si ce n'était pas vous, prévenez un administrateur.",
  wrongPinsClosed: () =>
    "Un nouvel appareil à vous demande maintenant une invitation ; les appareils que vous utilisez déjà ne sont pas touchés.",
  passkeys: () => "Vos clés d'accès",
  passkeyAdded: (d) => "Clé d'accès ajoutée, " + d.at,
  addPasskey: () => "Ajouter une clé d'accès sur cet appareil",
  addedPasskey: () => "La clé d'accès est ajoutée.",
  removePasskey: () => "Supprimer cette clé d'accès",
  removePasskeyAsk: () => "Supprimer cette clé d'accès ?",
  removeDo: () => "La supprimer",
  removePasskeyMore: () =>
    "Elle ne vous connecte plus, quel que soit l'appareil où elle est gardée. Votre code le fait toujours.",
  removePasskeyElsewhere: () => "Vous êtes déconnecté sur vos autres appareils.",
  removedPasskey: () => "La clé d'accès est supprimée.",
  calendar: () => "Votre calendrier",
  calendarMore: () =>
    "Le travail à faire, le plan, les inventaires et ce qui arrive à échéance, dans le calendrier que vous utilisez. Qui a l'adresse lit cela et rien d'autre : ne la donnez à personne, et retirez-la quand un appareil qui la contient est perdu.",
  makeAddress: () => "Créer une adresse pour votre calendrier",
  addressMade: () => "Ajoutez cette adresse comme calendrier auquel on s'abonne. Elle n'est montrée ici qu'une fois.",
  addressesUnknown: () => "Les adresses sont indiquées une fois la station jointe.",
  addressAt: (d) => "Une adresse, créée " + d.at,
  withdraw: () => "Retirer",
  withdrawAddress: () => "Retirer cette adresse",
  wall: () => "Écran mural d'un lieu",
  wallMore: () =>
    "Un écran à la station montre l'effectif, l'ordre dans lequel prendre les kits et le travail de la semaine, sans connexion. Qui a le lien voit cela et rien d'autre.",
  makeLink: (d) => "Créer un lien pour " + d.place,
  linkMade: () => "Ouvrez cette adresse sur l'écran. Elle n'est montrée ici qu'une fois.",
  linksUnknown: () => "Les liens sont indiqués une fois la station jointe.",
  aPlace: () => "un lieu",
  linkAt: (d) => d.place + ", créé " + d.at,
  withdrawLink: (d) => "Retirer le lien pour " + d.place,
  notAnswered: () => "La station n'a pas pu être jointe. Réessayez avec un réseau.",
};
export default words;
