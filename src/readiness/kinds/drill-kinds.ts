/** One fault planted for a drill: a mode of the kit's pattern, and what exactly was done to the item. */
export interface PlantedFault {
  readonly item: string;
  readonly mode: string;
  readonly how: string;
}

/** What an entry with subject "kit:..." may say of a drill: faults planted by one person for others to find. */
export interface DrillBodies {
  /** The kit is set aside and opened for it. `trainees`: ids of the people who are to find what is planted. */
  "drill-begun": {
    readonly drill: string;
    readonly sealSeen: string;
    readonly trainees: readonly string[];
    readonly note?: string;
  };
  /**
   * Faults were planted, unseen: only the hash of what was planted is written, so that nobody can read it here and nobody
   * can change it afterwards. `commitment`: lower-case hex, as `commitmentOf` makes it. `seal`: put on afterwards.
   */
  "faults-planted": {
    readonly drill: string;
    readonly plant: string;
    readonly commitment: string;
    readonly seal?: string;
  };
  /** What was planted, in the open. It counts only where it gives the hash that was written when it was planted. */
  "drill-revealed": {
    readonly drill: string;
    readonly plant: string;
    readonly nonce: string;
    readonly faults: readonly PlantedFault[];
  };
  /** One planted fault was taken out. `fault`: its number from 1 in the list in the order in which it is hashed. */
  "planted-removed": { readonly drill: string; readonly plant: string; readonly fault: number };
  /** Something raised in a drill that was not planted: `real` where it is wrong all the same, and stays open. */
  "drill-finding-judged": {
    readonly drill: string;
    readonly finding: string;
    readonly real: boolean;
    readonly note?: string;
  };
  /** `not-compared`: what was planted cannot be shown any more, or nothing was; the reason says why. */
  "drill-ended": { readonly drill: string; readonly how: "compared" | "not-compared"; readonly reason?: string };
}
