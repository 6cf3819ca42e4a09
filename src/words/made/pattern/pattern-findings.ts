/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface PatternFindingsWords {
  readonly title: () => string;
  readonly tooFew: (d: { readonly more: number }) => string;
  readonly counted: (d: { readonly count: number }) => string;
  readonly countedOnce: (d: { readonly count: number }) => string;
  readonly basisOnce: (d: { readonly count: string | number }) => string;
  readonly rising: (d: { readonly findings: string | number; readonly chance: string | number }) => string;
  readonly falling: (d: { readonly findings: string | number; readonly chance: string | number }) => string;
  readonly noTrend: () => string;
  readonly rateNow: (d: { readonly low: string | number; readonly high: string | number }) => string;
  readonly basis: (d: { readonly count: number; readonly years: string | number }) => string;
  readonly law: (d: {
    readonly shape: string | number;
    readonly p: string | number;
    readonly z: string | number;
    readonly testP: string | number;
  }) => string;
  readonly rarely: () => string;
  readonly inThousand: (d: { readonly count: string | number }) => string;
  readonly asTable: () => string;
  readonly chart: (d: { readonly said: string | number }) => string;
  readonly reading: () => string;
  readonly across: () => string;
  readonly year: () => string;
  readonly findings: () => string;
  readonly countedHead: () => string;
  readonly kitsOnCharge: () => string;
}
