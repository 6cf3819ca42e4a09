/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface KitLineWords {
  readonly today: () => string;
  readonly days: (d: { readonly count: number }) => string;
  readonly finish: () => string;
  readonly turnaround: () => string;
  readonly fetch: () => string;
  readonly lent: () => string;
  readonly settle: () => string;
  readonly other: () => string;
  readonly proofRun: () => string;
  readonly mend: () => string;
  readonly prove: (d: { readonly count: number; readonly lines: string | number }) => string;
  readonly renew: () => string;
  readonly muster: () => string;
  readonly flush: () => string;
  readonly plannedOpening: () => string;
  readonly severalOf: (d: { readonly what: string | number; readonly count: string | number }) => string;
  readonly andAlso: (d: { readonly first: string | number; readonly next: string | number }) => string;
  readonly nowGrounds: () => string;
  readonly nowOverdue: () => string;
  readonly wasDueBy: (d: { readonly days: number; readonly day: string | number }) => string;
  readonly dueBy: (d: { readonly days: number; readonly day: string | number }) => string;
  readonly effort: (d: { readonly people: number; readonly duration: string | number }) => string;
  readonly part: (d: { readonly name: string | number; readonly count: string | number }) => string;
  readonly partOnShelf: (d: { readonly name: string | number; readonly count: string | number }) => string;
  readonly partSomeOnShelf: (d: {
    readonly name: string | number;
    readonly count: string | number;
    readonly there: string | number;
  }) => string;
  readonly countWet: (d: { readonly count: number }) => string;
  readonly countOverdue: (d: { readonly count: string | number }) => string;
  readonly countWeek: (d: { readonly count: string | number }) => string;
  readonly countMonth: (d: { readonly count: string | number }) => string;
  readonly nothingDue: () => string;
  readonly flushLeft: (d: { readonly duration: string | number; readonly time: string | number }) => string;
  readonly flushOverdue: (d: { readonly duration: string | number; readonly time: string | number }) => string;
  readonly hangingUntil: (d: { readonly until: string | number }) => string;
  readonly hungEnough: () => string;
  readonly grounds: () => string;
  readonly limits: () => string;
  readonly limitsTo: (d: { readonly limit: string | number }) => string;
  readonly notes: () => string;
  readonly somethingElse: () => string;
  readonly needsRemedy: () => string;
  readonly needsProof: () => string;
  readonly livedWith: () => string;
  readonly closed: () => string;
  readonly workDue: () => string;
  readonly allWorkDue: () => string;
  readonly timeToday: (d: { readonly time: string | number }) => string;
  readonly timeTomorrow: (d: { readonly time: string | number }) => string;
  readonly timeOn: (d: { readonly time: string | number; readonly day: string | number }) => string;
  readonly ready: (d: { readonly count: number }) => string;
  readonly readyLimited: (d: { readonly count: number; readonly limited: string | number }) => string;
  readonly noneWanted: (d: { readonly ready: string | number }) => string;
  readonly ofWanted: (d: { readonly ready: string | number; readonly must: string | number }) => string;
  readonly ofWantedShort: (d: {
    readonly ready: string | number;
    readonly must: string | number;
    readonly short: string | number;
  }) => string;
  readonly until: (d: { readonly day: string | number; readonly what: string | number }) => string;
  readonly dayAhead: (d: { readonly days: number; readonly day: string | number }) => string;
  readonly moreThings: (d: { readonly count: number }) => string;
  readonly about: (d: { readonly duration: string | number }) => string;
  readonly shortNow: (d: { readonly holds: string | number; readonly must: string | number }) => string;
  readonly shortNowUntil: (d: {
    readonly until: string | number;
    readonly holds: string | number;
    readonly must: string | number;
  }) => string;
  readonly shortFrom: (d: {
    readonly from: string | number;
    readonly holds: string | number;
    readonly must: string | number;
  }) => string;
  readonly shortFromTo: (d: {
    readonly from: string | number;
    readonly until: string | number;
    readonly holds: string | number;
    readonly must: string | number;
  }) => string;
  readonly goOnOpen: () => string;
  readonly goOn: (d: { readonly kit: string | number; readonly where: string | number }) => string;
  readonly goOnClock: (d: {
    readonly kit: string | number;
    readonly where: string | number;
    readonly clock: string | number;
  }) => string;
  readonly everyLine: () => string;
  readonly line: (d: { readonly line: string | number }) => string;
  readonly over: (d: { readonly time: string | number }) => string;
  readonly gone: (d: { readonly time: string | number }) => string;
  readonly left: (d: { readonly time: string | number }) => string;
  readonly otherMode: () => string;
}
