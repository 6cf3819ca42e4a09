/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface CasualtyWords {
  readonly howMany: () => string;
  readonly card: () => string;
  readonly readSheet: () => string;
  readonly open: () => string;
  readonly noneOpen: () => string;
  readonly closed: () => string;
  readonly forecasts: () => string;
  readonly line: (d: { readonly boat: string | number; readonly at: string | number }) => string;
  readonly lineClosed: (d: {
    readonly boat: string | number;
    readonly at: string | number;
    readonly outcome: string | number;
  }) => string;
  readonly noCasualty: () => string;
  readonly noCasualtyNews: () => string;
  readonly noCasualtyMore: () => string;
  readonly cardTitle: () => string;
  readonly kit: () => string;
  readonly noCard: () => string;
  readonly language: () => string;
  readonly secondLanguage: () => string;
  readonly noSecond: () => string;
  readonly channel: () => string;
  readonly cardPdf: () => string;
  readonly tellPicture: () => string;
  readonly whichPicture: () => string;
  readonly choosePicture: () => string;
  readonly pictureOf: (d: { readonly number: string | number; readonly words: string | number }) => string;
  readonly whatOfPicture: () => string;
  readonly pictureWrong: () => string;
  readonly pictureImpossible: () => string;
  readonly pictureUnclear: () => string;
  readonly pictureNote: () => string;
  readonly tellOwner: () => string;
  readonly pictureTold: () => string;
  readonly pictureNotTold: () => string;
  readonly close: () => string;
  readonly howEnded: () => string;
  readonly noteIfAny: () => string;
  readonly stillToSay: () => string;
  readonly runsByLog: (d: { readonly name: string | number }) => string;
  readonly leftRunning: () => string;
  readonly stopped: () => string;
  readonly isAboard: (d: { readonly name: string | number }) => string;
  readonly staysAboard: () => string;
  readonly comesWithUs: () => string;
  readonly wroteStopped: (d: { readonly pump: string | number }) => string;
  readonly wroteClosed: () => string;
  readonly closedBy: (d: {
    readonly at: string | number;
    readonly person: string | number;
    readonly outcome: string | number;
  }) => string;
  readonly leftRunningAre: (d: { readonly pumps: string | number }) => string;
  readonly stillAboard: (d: { readonly kits: string | number }) => string;
  readonly takeBack: (d: { readonly kit: string | number }) => string;
}
