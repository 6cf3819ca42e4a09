/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface MusterWords {
  readonly noPlace: () => string;
  readonly noPlaceNews: () => string;
  readonly board: () => string;
  readonly theKit: () => string;
  readonly title: (d: { readonly place: string | number }) => string;
  readonly goToEach: () => string;
  readonly labelHint: () => string;
  readonly notHere: () => string;
  readonly seenToday: () => string;
  readonly onShelf: (d: { readonly shelf: string | number }) => string;
  readonly examine: () => string;
  readonly iAmAt: (d: { readonly kit: string | number }) => string;
  readonly seeAgain: () => string;
  readonly seenAt: (d: { readonly time: string | number; readonly name: string | number }) => string;
  readonly notMustered: (d: { readonly why: string | number }) => string;
  readonly notSeen: () => string;
  readonly away: (d: { readonly vessel: string | number }) => string;
  readonly openTurnaround: () => string;
  readonly seal: () => string;
  readonly sealHint: () => string;
  readonly container: () => string;
  readonly sound: () => string;
  readonly unsound: () => string;
  readonly note: () => string;
  readonly notWritten: () => string;
  readonly seen: () => string;
  readonly noSeal: () => string;
  readonly leave: () => string;
  readonly notRecord: () => string;
  readonly lookAgain: () => string;
  readonly itReads: (d: { readonly seal: string | number }) => string;
}
