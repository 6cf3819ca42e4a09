/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface DrillsWords {
  readonly title: () => string;
  readonly what: () => string;
  readonly now: () => string;
  readonly noneOn: () => string;
  readonly past: () => string;
  readonly noneYet: () => string;
  readonly asideSince: (d: { readonly kit: string | number; readonly at: string | number }) => string;
  readonly goTo: () => string;
  readonly pastLine: (d: {
    readonly day: string | number;
    readonly kit: string | number;
    readonly who: string | number;
    readonly result: string | number;
  }) => string;
  readonly notCompared: () => string;
  readonly result: (d: {
    readonly found: string | number;
    readonly planted: string | number;
    readonly wrong: number;
    readonly real: number;
  }) => string;
  readonly pageOf: (d: { readonly kit: string | number }) => string;
  readonly checks: () => string;
  readonly checksMore: () => string;
  readonly foundByCheck: () => string;
  readonly check: () => string;
  readonly line: () => string;
  readonly found: () => string;
  readonly findsIt: () => string;
  readonly lineOf: (d: { readonly pattern: string | number; readonly line: string | number }) => string;
  readonly foundOf: (d: { readonly found: string | number; readonly planted: string | number }) => string;
  readonly between: (d: { readonly low: string | number; readonly high: string | number }) => string;
  readonly missedLines: () => string;
  readonly missedLinesMore: () => string;
  readonly missedOf: (d: {
    readonly line: string | number;
    readonly missed: string | number;
    readonly planted: string | number;
  }) => string;
  readonly reported: () => string;
  readonly reportLine: (d: { readonly line: string | number; readonly pattern: string | number }) => string;
  readonly lineWrong: () => string;
  readonly lineImpossible: () => string;
  readonly lineUnclear: () => string;
  readonly notReported: () => string;
  readonly foundBy: (d: { readonly who: string | number }) => string;
  readonly missed: () => string;
  readonly faultOf: (d: { readonly item: string | number; readonly fault: string | number }) => string;
}
