import type { Finding } from "#readiness";
import type { KitAtHand } from "../at-hand.ts";
import type { KitActs } from "#web/act/acts.ts";

/** One finding and the kit it is on. */
export interface AboutFinding {
  readonly at: KitAtHand;
  readonly finding: Finding;
}

/** The same, where something can be done about it. */
export interface ActingOnFinding extends AboutFinding {
  readonly acts: KitActs;
}
