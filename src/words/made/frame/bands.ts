/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface BandsWords {
  readonly meaning: () => string;
  readonly fewer: () => string;
  readonly today: () => string;
  readonly strength: () => string;
  readonly short: (d: { readonly count: string | number }) => string;
  readonly readyOf: (d: { readonly holds: string | number; readonly must: string | number }) => string;
  readonly enough: () => string;
  readonly enoughReady: () => string;
  readonly piece: (d: { readonly word: string | number; readonly because: string | number }) => string;
  readonly jan: () => string;
  readonly feb: () => string;
  readonly mar: () => string;
  readonly apr: () => string;
  readonly may: () => string;
  readonly jun: () => string;
  readonly jul: () => string;
  readonly aug: () => string;
  readonly sep: () => string;
  readonly oct: () => string;
  readonly nov: () => string;
  readonly dec: () => string;
  readonly janOf: (d: { readonly year: string | number }) => string;
}
