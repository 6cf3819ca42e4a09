/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface BoardWords {
  readonly title: () => string;
  readonly find: () => string;
  readonly foundNone: () => string;
  readonly year: () => string;
  readonly readLabel: () => string;
  readonly enrol: () => string;
  readonly place: (d: {
    readonly place: string | number;
    readonly notReady: string | number;
    readonly ready: string | number;
  }) => string;
  readonly retired: (d: { readonly count: number }) => string;
  readonly noKits: () => string;
  readonly placesSoFar: (d: { readonly places: string | number }) => string;
  readonly keeperTakes: () => string;
  readonly places: () => string;
  readonly strengths: () => string;
  readonly endsFirst: () => string;
  readonly endsAfter: (d: { readonly day: string | number; readonly what: string | number }) => string;
  readonly strengthHolds: (d: { readonly day: string | number }) => string;
  readonly fallsShort: () => string;
  readonly moreChanges: (d: { readonly count: number }) => string;
  readonly placesShown: () => string;
  readonly allPlaces: () => string;
  readonly noKitsHere: () => string;
  readonly notReady: (d: { readonly count: string | number }) => string;
  readonly ready: (d: { readonly count: string | number }) => string;
  readonly musterPlace: (d: { readonly place: string | number }) => string;
  readonly showMore: (d: { readonly count: number }) => string;
  readonly drawMore: (d: { readonly count: number }) => string;
  readonly reasonsMore: (d: { readonly count: string | number }) => string;
  readonly nothingEnds: () => string;
  readonly toRestore: (d: { readonly what: string | number }) => string;
  readonly toWatch: (d: { readonly what: string | number }) => string;
  readonly yearOf: (d: {
    readonly place: string | number;
    readonly from: string | number;
    readonly to: string | number;
  }) => string;
  readonly asTable: (d: { readonly place: string | number }) => string;
  readonly yearAt: (d: { readonly place: string | number }) => string;
  readonly kit: () => string;
  readonly from: () => string;
  readonly to: () => string;
  readonly standing: () => string;
  readonly because: () => string;
  readonly ofReady: (d: { readonly enough: string | number }) => string;
  readonly shareNothing: () => string;
  readonly sharedStrikes: () => string;
}
