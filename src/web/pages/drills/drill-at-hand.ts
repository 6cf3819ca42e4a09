import type { Comparison, Drill } from "#readiness";
import type { KitAtHand } from "../../kit-view/at-hand.ts";

/** A drill of a kit with what it showed so far. */
export interface DrillAtHand extends KitAtHand {
  readonly drill: Drill;
  readonly comparison: Comparison;
}

/** Name of a person, or the id where the station has none. */
export function nameOfPerson({ view }: Pick<KitAtHand, "view">, id: string): string {
  return view.people.find((one) => one.id === id)?.name ?? id;
}
