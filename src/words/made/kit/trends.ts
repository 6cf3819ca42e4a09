/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface TrendsWords {
  readonly pulls: () => string;
  readonly pullsAxis: () => string;
  readonly sayPulls: (d: { readonly count: number }) => string;
  readonly somePulls: (d: { readonly count: string | number }) => string;
  readonly prime: () => string;
  readonly primeAxis: () => string;
  readonly fuel: () => string;
  readonly fuelAxis: () => string;
  readonly fuelAxisUs: () => string;
  readonly water: () => string;
  readonly waterAxis: () => string;
  readonly waterAxisUs: () => string;
  readonly delivery: () => string;
  readonly deliveryAxis: () => string;
  readonly atMost: (d: { readonly value: string | number }) => string;
  readonly notedBelow: (d: { readonly value: string | number }) => string;
  readonly groundedBelow: (d: { readonly value: string | number }) => string;
  readonly noneMeasured: () => string;
  readonly onlyOne: (d: { readonly value: string | number; readonly day: string | number }) => string;
  readonly always: (d: {
    readonly value: string | number;
    readonly day: string | number;
    readonly count: string | number;
    readonly first: string | number;
    readonly least: string | number;
    readonly change: string | number;
  }) => string;
  readonly between: (d: {
    readonly value: string | number;
    readonly day: string | number;
    readonly count: string | number;
    readonly first: string | number;
    readonly least: string | number;
    readonly most: string | number;
    readonly change: string | number;
  }) => string;
  readonly since: (d: {
    readonly day: string | number;
    readonly after: string | number;
    readonly before: string | number;
  }) => string;
  readonly cause: (d: { readonly mode: string | number; readonly tenths: string | number }) => string;
  readonly basisNone: () => string;
  readonly basis: (d: { readonly count: number }) => string;
  readonly onCasualties: () => string;
  readonly onCasualtiesMore: () => string;
  readonly casualtyRuns: () => string;
  readonly casualty: () => string;
  readonly start: () => string;
  readonly ran: () => string;
  readonly notTold: () => string;
  readonly deliverySeen: () => string;
  readonly notSeen: () => string;
  readonly wouldNotStart: () => string;
  readonly started: () => string;
  readonly seen: (d: {
    readonly middle: string | number;
    readonly low: string | number;
    readonly high: string | number;
  }) => string;
}
