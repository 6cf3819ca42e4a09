/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { AppWords } from "#src/words/made/frame/app.ts";

const words: AppWords = {
  opening: () => "Reading what this device holds.",
  openingShort: () => "Drykeel is opening",
  pageOpening: () => "Opening the page",
  station: () => "The station",
  notHereYet: () => "The station's log is not on this device yet",
  notHereYetMore: () => "It has to be fetched once, with a network. This device keeps trying.",
  fetching: () => "Fetching the station's log",
  fetchingMore: () => "Once it is here, everything works without a network.",
  keepsNothing: () => "This device cannot keep anything",
  keepsNothingNews: () => "Nothing can be kept here, so nothing can be written",
  keepsNothingMore: () =>
    "Close other windows of this app and load the page again. A private window cannot keep anything.",
  browserSays: () => "What the browser says",
  noPage: () => "No such page",
  noPageNews: () => "There is nothing at this address",
  noPageMore: () => "Go back to the board.",
  crashed: () => "This page failed",
  crashedMore: () => "Every line written so far is kept on this device. Load the page again and go on.",
  loadAgain: () => "Load again",
  goToBoard: () => "Go to the board",
};
export default words;
