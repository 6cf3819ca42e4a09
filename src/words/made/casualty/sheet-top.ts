/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface SheetTopWords {
  readonly dueNext: () => string;
  readonly sound: () => string;
  readonly soundSpace: (d: { readonly space: string | number }) => string;
  readonly refuel: () => string;
  readonly refuelPump: (d: { readonly pump: string | number }) => string;
  readonly now: () => string;
  readonly over: (d: { readonly duration: string | number }) => string;
  readonly at: (d: { readonly time: string | number }) => string;
  readonly nowOver: (d: { readonly duration: string | number }) => string;
  readonly atIn: (d: { readonly time: string | number; readonly duration: string | number }) => string;
  readonly gravest: () => string;
  readonly warnings: () => string;
  readonly leaveNow: () => string;
  readonly leaveNowMore: () => string;
  readonly leaveReady: () => string;
  readonly leaveReadyMore: () => string;
  readonly areWeGaining: () => string;
  readonly readOut: (d: { readonly word: string | number; readonly detail: string | number }) => string;
  readonly computingWord: () => string;
  readonly notComputed: () => string;
  readonly chance: (d: { readonly chance: string | number }) => string;
  readonly inCharge: () => string;
  readonly computing: () => string;
  readonly computingAnew: () => string;
  readonly anEstimate: () => string;
  readonly madeAt: (d: { readonly time: string | number }) => string;
  readonly oldOf: (d: { readonly time: string | number }) => string;
  readonly origin: (d: {
    readonly count: number;
    readonly age: string | number;
    readonly state: string | number;
  }) => string;
}
