import type { Comparison, Drill, KitState } from "#readiness";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";

/** A drill of a kit with what it showed so far. */
export interface DrillAtHand extends KitAtHand {
  readonly drill: Drill;
  readonly comparison: Comparison;
}

/** True while nobody has opened the kit in this drill: whoever is drilled has not looked. */
export function isUnopened({ turnaround, turnarounds }: KitState, { id }: Pick<Drill, "id">): boolean {
  return turnaround === undefined && !turnarounds.some(({ drill }) => drill === id);
}
