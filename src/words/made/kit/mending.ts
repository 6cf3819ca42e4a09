/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface MendingWords {
  readonly whatDone: () => string;
  readonly mended: () => string;
  readonly mendedMore: () => string;
  readonly replaced: () => string;
  readonly replacedMore: () => string;
  readonly livedWith: () => string;
  readonly livedWithMore: () => string;
  readonly howMended: () => string;
  readonly mendedHint: () => string;
  readonly sayHow: () => string;
  readonly mendedProve: () => string;
  readonly notSaved: () => string;
  readonly who: () => string;
  readonly nameSomebody: () => string;
  readonly limit: () => string;
  readonly limitHint: () => string;
  readonly stateLimit: () => string;
  readonly until: () => string;
  readonly untilHint: () => string;
  readonly chooseDay: () => string;
  readonly liveWith: () => string;
  readonly part: () => string;
  readonly namePart: () => string;
  readonly whatIsNew: () => string;
  readonly itemIsNew: (d: { readonly item: string | number }) => string;
  readonly itemIsNewMore: () => string;
  readonly partIsNew: () => string;
  readonly partIsNewMore: () => string;
  readonly sayWhatIsNew: () => string;
  readonly howMany: () => string;
  readonly howManyOf: (d: { readonly whole: string | number }) => string;
  readonly writeHowMany: () => string;
  readonly printed: () => string;
  readonly readPrinted: () => string;
  readonly sayLot: () => string;
  readonly replacedProve: () => string;
  readonly saidMended: (d: { readonly note: string | number }) => string;
  readonly saidLived: (d: {
    readonly name: string | number;
    readonly day: string | number;
    readonly limit: string | number;
  }) => string;
  readonly saidReplaced: (d: { readonly count: string | number; readonly part: string | number }) => string;
  readonly saidSome: (d: {
    readonly count: string | number;
    readonly whole: string | number;
    readonly part: string | number;
  }) => string;
  readonly saidReplacedPrinted: (d: { readonly replaced: string | number; readonly date: string | number }) => string;
  readonly withNote: (d: { readonly what: string | number; readonly note: string | number }) => string;
  readonly notGrounding: () => string;
  readonly onlyKeeper: () => string;
}
