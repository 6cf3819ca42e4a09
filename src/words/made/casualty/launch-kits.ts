/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface LaunchKitsWords {
  readonly kits: (d: { readonly count: number }) => string;
  readonly toFollow: (d: { readonly count: string | number }) => string;
  readonly moreToFollow: () => string;
  readonly takeNone: (d: { readonly more: string | number }) => string;
  readonly takeMoreThan: (d: { readonly count: number }) => string;
  readonly take: (d: { readonly count: number }) => string;
  readonly takeAndPatch: (d: { readonly count: number }) => string;
  readonly takeNow: (d: { readonly count: string | number; readonly more: string | number }) => string;
  readonly takeNowAndPatch: (d: { readonly count: string | number; readonly more: string | number }) => string;
  readonly takeNowPatch: (d: { readonly count: string | number; readonly more: string | number }) => string;
  readonly late: (d: { readonly chance: string | number }) => string;
  readonly lateWarning: (d: { readonly chance: string | number }) => string;
  readonly lateHazard: () => string;
  readonly lateShort: () => string;
  readonly tellMore: () => string;
  readonly firstNone: () => string;
  readonly firstKits: (d: { readonly count: number }) => string;
  readonly thenKits: (d: { readonly kits: string | number }) => string;
  readonly askAll: () => string;
  readonly askFor: (d: { readonly count: string | number }) => string;
  readonly next: (d: { readonly before: string | number; readonly next: string | number }) => string;
  readonly sentence: (d: { readonly clauses: string | number }) => string;
  readonly whyNone: (d: { readonly count: number; readonly chance: string | number }) => string;
  readonly gain: (d: { readonly count: number }) => string;
  readonly gainIfAfloat: (d: { readonly count: number }) => string;
  readonly hold: (d: { readonly count: number }) => string;
  readonly holdIfAfloat: (d: { readonly count: number }) => string;
  readonly alone: (d: { readonly why: string | number }) => string;
  readonly patchNone: (d: { readonly count: number }) => string;
  readonly patchHolds: (d: { readonly count: number; readonly chance: string | number }) => string;
  readonly noCans: () => string;
  readonly cans: (d: { readonly count: number; readonly total: string | number }) => string;
  readonly arrival: (d: { readonly duration: string | number; readonly chance: string | number }) => string;
}
