/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface DatesWords {
  readonly printed: (d: { readonly day: string | number }) => string;
  readonly fitted: (d: { readonly day: string | number }) => string;
  readonly made: (d: { readonly day: string | number }) => string;
  readonly whenPrinted: () => string;
  readonly whenFitted: () => string;
  readonly whenMade: () => string;
  readonly leaveDay: () => string;
  readonly bySheet: (d: { readonly dates: string | number }) => string;
  readonly lookedNone: () => string;
  readonly noDate: () => string;
  readonly wasGood: (d: { readonly day: string | number }) => string;
  readonly goodUntil: (d: { readonly day: string | number }) => string;
  readonly tooSoon: (d: { readonly day: string | number; readonly due: string | number }) => string;
  readonly whatSays: () => string;
  readonly lastGood: () => string;
  readonly fittedOn: () => string;
  readonly madeOn: () => string;
  readonly keep: () => string;
  readonly cannotRead: () => string;
  readonly notSaved: () => string;
}
