/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface DevicesWords {
  readonly listTitle: () => string;
  readonly shutOut: () => string;
  readonly areShutOut: () => string;
  readonly device: () => string;
  readonly thisDevice: (d: { readonly device: string | number }) => string;
  readonly joined: () => string;
  readonly lastLine: () => string;
  readonly lost: () => string;
  readonly notKnown: () => string;
  readonly writtenBy: (d: { readonly at: string | number; readonly who: string | number }) => string;
  readonly signOutInstead: () => string;
  readonly shutOutNamed: (d: { readonly device: string | number }) => string;
  readonly shutOutAsk: (d: { readonly device: string | number }) => string;
  readonly shutOutDo: () => string;
  readonly joinedLine: (d: { readonly line: string | number }) => string;
  readonly joinedNotKnown: () => string;
  readonly shutOutMore: () => string;
  readonly why: () => string;
  readonly whyHint: () => string;
  readonly notShutOut: () => string;
}
