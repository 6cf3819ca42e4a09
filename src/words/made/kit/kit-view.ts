/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface KitViewWords {
  readonly firstFlush: () => string;
  readonly nowBefore: () => string;
  readonly nowFor: (d: { readonly what: string | number }) => string;
  readonly firstAid: (d: { readonly what: string | number }) => string;
  readonly notWritten: () => string;
  readonly flushed: () => string;
  readonly flushFromStop: (d: {
    readonly what: string | number;
    readonly within: string | number;
    readonly time: string | number;
    readonly source: string | number;
  }) => string;
  readonly flushFromReturn: (d: {
    readonly what: string | number;
    readonly within: string | number;
    readonly time: string | number;
    readonly source: string | number;
  }) => string;
  readonly differ: () => string;
  readonly stands: () => string;
  readonly letStand: () => string;
  readonly whySettle: () => string;
  readonly settle: () => string;
  readonly notSettled: () => string;
  readonly notReceived: () => string;
  readonly lineSaid: (d: { readonly line: string | number; readonly answer: string | number }) => string;
  readonly openedNoSeal: () => string;
  readonly openedSeal: (d: { readonly seal: string | number }) => string;
  readonly sealedWith: (d: { readonly seal: string | number }) => string;
  readonly closedGrounded: (d: { readonly reason: string | number }) => string;
  readonly timed: (d: { readonly duration: string | number }) => string;
  readonly primed: (d: { readonly duration: string | number }) => string;
  readonly pulls: (d: { readonly count: number }) => string;
  readonly handedTo: (d: { readonly vessel: string | number }) => string;
  readonly fitted: (d: { readonly day: string | number }) => string;
  readonly dateRead: (d: { readonly date: string | number }) => string;
  readonly dateUnread: () => string;
  readonly shelfAsked: () => string;
  readonly chooseLot: () => string;
  readonly notLabel: () => string;
  readonly shelfLabel: () => string;
  readonly unknownLabel: () => string;
  readonly notFound: () => string;
  readonly noneFound: () => string;
  readonly typeAny: () => string;
  readonly readLabel: () => string;
  readonly typeIt: () => string;
  readonly find: () => string;
  readonly leave: () => string;
  readonly camera: () => string;
  readonly strike: (d: { readonly what: string | number }) => string;
  readonly strikeDo: () => string;
  readonly strikeMore: () => string;
  readonly why: () => string;
  readonly notStruck: () => string;
  readonly noShelf: () => string;
  readonly offShelf: (d: {
    readonly part: string | number;
    readonly place: string | number;
    readonly there: string | number;
  }) => string;
  readonly offShelfLot: (d: {
    readonly lot: string | number;
    readonly count: string | number;
    readonly part: string | number;
    readonly place: string | number;
  }) => string;
  readonly offShelfUnread: (d: { readonly part: string | number; readonly place: string | number }) => string;
  readonly there: (d: { readonly count: string | number }) => string;
  readonly thereNone: () => string;
  readonly thereLess: (d: { readonly count: string | number; readonly more: string | number }) => string;
}
