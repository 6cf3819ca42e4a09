/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface PrimeWords {
  readonly willNot: (d: { readonly lift: string | number }) => string;
  readonly runsIn: (d: { readonly lift: string | number }) => string;
  readonly expect: (d: {
    readonly strokes: number;
    readonly lift: string | number;
    readonly duration: string | number;
  }) => string;
  readonly doNotCount: () => string;
  readonly stated: (d: { readonly stated: string | number; readonly plain: string | number }) => string;
  readonly unstated: (d: { readonly plain: string | number; readonly most: string | number }) => string;
  readonly physics: (d: { readonly greatest: string | number }) => string;
  readonly tooQuick: (d: { readonly least: string | number }) => string;
  readonly notExpected: () => string;
  readonly asExpected: (d: { readonly expected: string | number }) => string;
  readonly slow: (d: {
    readonly expected: string | number;
    readonly leak: string | number;
    readonly share: string | number;
    readonly greatest: string | number;
  }) => string;
  readonly title: () => string;
  readonly titleTooQuick: () => string;
  readonly titleLeak: () => string;
  readonly lookInOrder: () => string;
}
