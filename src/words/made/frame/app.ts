/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface AppWords {
  readonly opening: () => string;
  readonly openingShort: () => string;
  readonly pageOpening: () => string;
  readonly station: () => string;
  readonly notHereYet: () => string;
  readonly notHereYetMore: () => string;
  readonly fetching: () => string;
  readonly fetchingMore: () => string;
  readonly keepsNothing: () => string;
  readonly keepsNothingNews: () => string;
  readonly keepsNothingMore: () => string;
  readonly browserSays: () => string;
  readonly noPage: () => string;
  readonly noPageNews: () => string;
  readonly noPageMore: () => string;
  readonly crashed: () => string;
  readonly crashedMore: () => string;
  readonly loadAgain: () => string;
  readonly goToBoard: () => string;
}
