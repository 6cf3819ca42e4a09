/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface HazardsWords {
  readonly hazards: () => string;
  readonly heavyLift: () => string;
  readonly heavyLiftOf: (d: { readonly count: number; readonly mass: string | number }) => string;
  readonly linePulls: () => string;
  readonly smellBeforeStart: () => string;
  readonly carbonMonoxide: () => string;
  readonly pressurisedHose: () => string;
  readonly turnsByKey: () => string;
  readonly recoilKick: () => string;
  readonly electricShock: () => string;
  readonly notBelowAlone: () => string;
  readonly batteriesUnder: () => string;
  readonly underTow: () => string;
}
