/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface StartsWords {
  readonly ofTen: (d: { readonly low: string | number }) => string;
  readonly ofTenRange: (d: { readonly low: string | number; readonly high: string | number }) => string;
  readonly neverAsked: () => string;
  readonly everyTime: (d: { readonly count: number; readonly since: string | number }) => string;
  readonly failedSome: (d: {
    readonly count: number;
    readonly since: string | number;
    readonly failures: number;
  }) => string;
  readonly started: () => string;
  readonly noStart: () => string;
  readonly noWater: () => string;
  readonly tooLittle: () => string;
  readonly byRecord: (d: { readonly often: string | number }) => string;
  readonly restsOthers: (d: { readonly count: number; readonly starts: number; readonly others: number }) => string;
  readonly tonightBy: (d: { readonly tonight: string | number; readonly rests: string | number }) => string;
  readonly ownStarts: (d: { readonly count: number; readonly since: string | number }) => string;
  readonly noOwnStart: () => string;
  readonly andOthers: (d: {
    readonly own: string | number;
    readonly count: string | number;
    readonly others: number;
  }) => string;
  readonly restsAlone: (d: { readonly count: number }) => string;
  readonly hiddenUnknown: () => string;
  readonly hiddenOwn: (d: { readonly looks: number; readonly found: number }) => string;
  readonly hiddenRateAll: (d: { readonly count: number; readonly rate: string | number }) => string;
  readonly hiddenRateOwn: (d: { readonly count: number; readonly rate: string | number }) => string;
  readonly hiddenSteady: () => string;
  readonly failedOnce: () => string;
  readonly tonight: (d: { readonly word: string | number; readonly often: string | number }) => string;
  readonly unsure: () => string;
  readonly veryLikely: () => string;
  readonly likely: () => string;
  readonly may: () => string;
  readonly doubtful: () => string;
  readonly tenths: (d: { readonly high: string | number }) => string;
  readonly tenthsRange: (d: { readonly low: string | number; readonly high: string | number }) => string;
  readonly enough: (d: {
    readonly least: string | number;
    readonly of: string | number;
    readonly often: string | number;
  }) => string;
  readonly enoughUnsure: (d: {
    readonly least: string | number;
    readonly of: string | number;
    readonly often: string | number;
  }) => string;
  readonly enoughRests: (d: { readonly count: number; readonly since: string | number }) => string;
  readonly enoughNone: () => string;
  readonly enoughWithout: (d: { readonly kits: string | number }) => string;
  readonly toldOf: (d: {
    readonly count: number;
    readonly first: string | number;
    readonly last: string | number;
  }) => string;
  readonly shareFuel: (d: { readonly kits: string | number }) => string;
  readonly shareLot: (d: { readonly kits: string | number; readonly of: string | number }) => string;
  readonly shareHands: (d: { readonly kits: string | number; readonly of: string | number }) => string;
  readonly willItStart: () => string;
  readonly afterProof: (d: { readonly duration: string | number }) => string;
  readonly restsOn: () => string;
  readonly curveOf: (d: { readonly tonight: string | number; readonly duration: string | number }) => string;
  readonly today: () => string;
  readonly bandIs: () => string;
  readonly curveTable: () => string;
  readonly curveCaption: () => string;
  readonly after: () => string;
  readonly works: () => string;
  readonly onCasualty: () => string;
  readonly inTurnaround: () => string;
  readonly startedAt: (d: { readonly where: string | number; readonly outcome: string | number }) => string;
  readonly wideRange: (d: { readonly count: number; readonly often: string | number }) => string;
  readonly noChance: (d: { readonly why: string | number }) => string;
  readonly restsNone: () => string;
  readonly oneMore: (d: { readonly now: string | number; readonly more: string | number }) => string;
  readonly oneMoreShort: (d: { readonly told: string | number }) => string;
}
