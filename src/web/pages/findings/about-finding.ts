import type { Finding } from "#readiness";
import type { KitAtHand } from "../turnaround/at-hand.ts";
import type { KitActs } from "../turnaround/acts.ts";

/** One finding and the kit it is on. */
export interface AboutFinding {
  readonly at: KitAtHand;
  readonly finding: Finding;
}

/** The same, where something can be done about it. */
export interface ActingOnFinding extends AboutFinding {
  readonly acts: KitActs;
}
