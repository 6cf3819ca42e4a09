import type { Comparison, Drill } from "#readiness";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";

/** A drill of a kit with what it showed so far. */
export interface DrillAtHand extends KitAtHand {
  readonly drill: Drill;
  readonly comparison: Comparison;
}
