/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface PatternLawWords {
  readonly weibull: () => string;
  readonly lognormal: () => string;
  readonly exponential: () => string;
  readonly noneBad: () => string;
  readonly tooFew: () => string;
  readonly halfEnded: (d: {
    readonly law: string | number;
    readonly age: string | number;
    readonly low: string | number;
    readonly high: string | number;
  }) => string;
  readonly twoThirdsEnded: (d: {
    readonly law: string | number;
    readonly age: string | number;
    readonly low: string | number;
    readonly high: string | number;
  }) => string;
  readonly shape: (d: {
    readonly shape: string | number;
    readonly low: string | number;
    readonly high: string | number;
  }) => string;
  readonly shapeWears: (d: {
    readonly shape: string | number;
    readonly low: string | number;
    readonly high: string | number;
  }) => string;
  readonly shapeFirst: (d: {
    readonly shape: string | number;
    readonly low: string | number;
    readonly high: string | number;
  }) => string;
  readonly shapeUnknown: (d: {
    readonly shape: string | number;
    readonly low: string | number;
    readonly high: string | number;
  }) => string;
  readonly fewEnded: () => string;
  readonly weighed: () => string;
  readonly otherLaw: (d: { readonly law: string | number; readonly less: string | number }) => string;
  readonly others: (d: { readonly laws: string | number }) => string;
  readonly inFigures: () => string;
  readonly agesBad: (d: { readonly tenth: string | number; readonly half: string | number }) => string;
  readonly ageRange: (d: {
    readonly age: string | number;
    readonly low: string | number;
    readonly high: string | number;
  }) => string;
  readonly noSooner: (d: {
    readonly lives: number;
    readonly tenth: string | number;
    readonly half: string | number;
  }) => string;
  readonly itWears: () => string;
  readonly firstLasts: () => string;
  readonly wearUnknown: () => string;
  readonly beyondSeen: (d: { readonly oldest: string | number }) => string;
  readonly lacking: (d: {
    readonly ended: number;
    readonly lives: string | number;
    readonly wanted: string | number;
    readonly more: string | number;
  }) => string;
}
