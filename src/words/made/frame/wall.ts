/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface WallWords {
  readonly title: () => string;
  readonly short: () => string;
  readonly asking: () => string;
  readonly noLink: () => string;
  readonly withdrawn: () => string;
  readonly wasSo: (d: { readonly time: string | number }) => string;
  readonly notReached: () => string;
  readonly order: () => string;
  readonly not: (d: { readonly kits: string | number }) => string;
  readonly kitIs: (d: { readonly kit: string | number; readonly standing: string | number }) => string;
  readonly week: () => string;
  readonly none: () => string;
  readonly foot: (d: { readonly station: string | number; readonly day: string | number }) => string;
  readonly work: (d: { readonly what: string | number; readonly when: string | number }) => string;
  readonly takers: (d: { readonly names: string | number }) => string;
  readonly flushBy: (d: { readonly time: string | number }) => string;
  readonly now: () => string;
  readonly by: (d: { readonly day: string | number }) => string;
  readonly more: (d: { readonly count: string | number }) => string;
}
