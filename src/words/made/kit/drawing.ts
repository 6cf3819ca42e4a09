/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface DrawingWords {
  readonly head: (d: { readonly unit: string | number }) => string;
  readonly flow: (d: { readonly unit: string | number }) => string;
  readonly pumpGives: () => string;
  readonly rigNeeds: () => string;
  readonly worksHere: () => string;
  readonly likelyFlow: () => string;
  readonly suctionEnds: () => string;
  readonly curveAlone: () => string;
  readonly notStable: () => string;
  readonly startTimes: () => string;
  readonly sinceProved: () => string;
  readonly axisBegins: (d: { readonly at: string | number }) => string;
  readonly shareOfAll: (d: { readonly all: string | number; readonly what: string | number }) => string;
  readonly runningShare: () => string;
  readonly yearsOf: (d: { readonly across: string | number }) => string;
  readonly monthsOf: (d: { readonly across: string | number }) => string;
}
