/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface NoticesWords {
  readonly haveRead: () => string;
  readonly emptied: () => string;
  readonly emptiedMore: (d: { readonly at: string | number }) => string;
  readonly emptiedDo: () => string;
  readonly insecure: () => string;
  readonly insecureMore: () => string;
  readonly putBack: () => string;
  readonly putBackFound: (d: { readonly at: string | number }) => string;
  readonly putBackNone: () => string;
  readonly putBackCame: (d: { readonly count: number }) => string;
  readonly putBackOthers: () => string;
  readonly putBackLacks: (d: { readonly count: number }) => string;
  readonly putBackAllMove: () => string;
  readonly putBackSomeMove: (d: { readonly count: number }) => string;
  readonly putBackKeepOpen: () => string;
  readonly putBackAllStuck: () => string;
  readonly putBackSomeStuck: (d: { readonly count: number }) => string;
  readonly putBackLink: () => string;
  readonly flaw: () => string;
  readonly flawMore: () => string;
  readonly otherHistory: () => string;
  readonly otherHistoryMore: () => string;
  readonly otherHistorySave: () => string;
  readonly otherHistoryKnow: () => string;
  readonly falseSummary: () => string;
  readonly falseSummaryMore: (d: { readonly at: string | number }) => string;
  readonly stationClockMore: () => string;
  readonly stationAhead: (d: { readonly span: string | number }) => string;
  readonly stationBehind: (d: { readonly span: string | number }) => string;
}
