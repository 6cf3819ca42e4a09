/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { AppWords } from "#src/words/made/frame/app.ts";

const words: AppWords = {
  opening: () => "Lecture de ce que contient cet appareil.",
  openingShort: () => "Drykeel s'ouvre",
  pageOpening: () => "La page s'ouvre",
  station: () => "La station",
  notHereYet: () => "Le journal de la station n'est pas encore sur cet appareil",
  notHereYetMore: () => "Il faut le chercher une fois, avec un réseau. Cet appareil continue d'essayer.",
  fetching: () => "Le journal de la station arrive",
  fetchingMore: () => "Une fois ici, tout fonctionne sans réseau.",
  keepsNothing: () => "Cet appareil ne peut rien garder",
  keepsNothingNews: () => "Rien ne peut être gardé ici, donc rien ne peut être écrit",
  keepsNothingMore: () =>
    "Fermez les autres fenêtres de cette application et rechargez la page. Une fenêtre privée ne peut rien garder.",
  browserSays: () => "Ce que dit le navigateur",
  noPage: () => "Page inconnue",
  noPageNews: () => "Il n'y a rien à cette adresse",
  noPageMore: () => "Revenez au tableau.",
  crashed: () => "Cette page a échoué",
  crashedMore: () =>
    "Toutes les lignes écrites jusqu'ici sont gardées sur cet appareil. Rechargez la page et continuez.",
  loadAgain: () => "Recharger",
  goToBoard: () => "Aller au tableau",
};
export default words;
