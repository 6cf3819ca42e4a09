/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface PartsWords {
  readonly ready: () => string;
  readonly readyWithLimits: () => string;
  readonly grounded: () => string;
  readonly open: () => string;
  readonly away: () => string;
}
