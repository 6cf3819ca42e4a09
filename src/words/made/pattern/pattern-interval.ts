/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface PatternIntervalWords {
  readonly title: (d: { readonly pattern: string | number }) => string;
  readonly counting: () => string;
  readonly yearPlanned: () => string;
  readonly reportCard: () => string;
  readonly early: () => string;
  readonly earlyMore: () => string;
  readonly nothing: () => string;
  readonly nothingMore: () => string;
  readonly logSays: () => string;
  readonly weight: () => string;
  readonly weightHint: () => string;
  readonly weightOther: () => string;
  readonly rounded: () => string;
  readonly weightHours: (d: { readonly hours: string | number }) => string;
  readonly correctCosts: () => string;
  readonly notWritten: () => string;
  readonly accept: (d: { readonly every: string | number }) => string;
  readonly restsOn: () => string;
  readonly proposalOnly: () => string;
  readonly accepted: () => string;
  readonly acceptedMore: (d: {
    readonly every: string | number;
    readonly who: string | number;
    readonly day: string | number;
  }) => string;
  readonly backToManual: () => string;
  readonly costs: (d: { readonly count: string | number; readonly all: string | number }) => string;
  readonly costsNone: () => string;
  readonly costsMore: () => string;
  readonly costParts: () => string;
  readonly costWear: () => string;
  readonly costDay: () => string;
  readonly costHarmed: () => string;
  readonly standingNone: () => string;
  readonly standing: (d: { readonly every: string | number }) => string;
  readonly standingManual: (d: { readonly every: string | number }) => string;
  readonly standingBeside: (d: { readonly every: string | number; readonly manual: string | number }) => string;
  readonly everyDays: (d: { readonly count: number }) => string;
  readonly everyWeeks: (d: { readonly count: string | number }) => string;
  readonly everyMonths: (d: { readonly count: number }) => string;
  readonly everyYears: (d: { readonly count: number }) => string;
  readonly whatIsDone: () => string;
  readonly cannotTell: (d: { readonly now: string | number; readonly more: string | number }) => string;
  readonly keepTo: (d: { readonly now: string | number }) => string;
  readonly shorter: (d: { readonly every: string | number; readonly now: string | number }) => string;
  readonly longer: (d: { readonly every: string | number; readonly now: string | number }) => string;
  readonly manualStands: (d: { readonly now: string | number; readonly more: string | number }) => string;
  readonly notSeen: (d: { readonly now: string | number }) => string;
  readonly moreThan: (d: { readonly count: string | number }) => string;
  readonly moreAbout: (d: { readonly count: number }) => string;
  readonly best: (d: { readonly shortest: string | number; readonly longest: string | number }) => string;
  readonly beyondSeen: (d: { readonly seen: string | number; readonly bound: string | number }) => string;
  readonly flat: (d: {
    readonly middle: string | number;
    readonly from: string | number;
    readonly to: string | number;
  }) => string;
  readonly yearCosts: (d: { readonly costs: string | number; readonly last: string | number }) => string;
  readonly hours: (d: { readonly hours: string | number }) => string;
  readonly costOpening: (d: { readonly hours: string | number }) => string;
  readonly costInParts: (d: { readonly hours: string | number }) => string;
  readonly costInWear: (d: { readonly hours: string | number }) => string;
  readonly costNotReady: (d: { readonly hours: string | number }) => string;
  readonly costNights: (d: { readonly hours: string | number }) => string;
  readonly tenYears: () => string;
  readonly evidenceLooks: (d: {
    readonly looks: number;
    readonly kits: number;
    readonly years: string | number;
    readonly found: number;
  }) => string;
  readonly evidenceRate: (d: { readonly low: string | number; readonly high: string | number }) => string;
  readonly startsNotCounted: () => string;
  readonly startsFail: (d: {
    readonly times: string | number;
    readonly low: string | number;
    readonly high: string | number;
  }) => string;
  readonly calls: (d: {
    readonly times: string | number;
    readonly low: string | number;
    readonly high: string | number;
    readonly mean: string | number;
  }) => string;
  readonly started: (d: { readonly times: string | number }) => string;
  readonly times: (d: { readonly count: number }) => string;
  readonly allStated: () => string;
  readonly notCounted: (d: { readonly costs: string | number }) => string;
  readonly ofParts: () => string;
  readonly ofWear: () => string;
  readonly ofDays: () => string;
  readonly ofHarmed: () => string;
  readonly noDrill: () => string;
  readonly drillsFew: (d: {
    readonly planted: number;
    readonly found: string | number;
    readonly least: string | number;
  }) => string;
  readonly drills: (d: {
    readonly planted: number;
    readonly found: string | number;
    readonly low: string | number;
    readonly high: string | number;
    readonly mean: string | number;
  }) => string;
  readonly workOut: (d: { readonly hours: string | number; readonly out: string | number }) => string;
  readonly workTimed: (d: {
    readonly hours: string | number;
    readonly out: string | number;
    readonly count: string | number;
  }) => string;
  readonly reallyOpened: (d: {
    readonly median: string | number;
    readonly count: number;
    readonly from: string | number;
    readonly to: string | number;
  }) => string;
  readonly neverTwice: () => string;
}
