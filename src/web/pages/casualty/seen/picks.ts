import type { UnitSystem } from "#base";
import type { DeckEdge, Righting } from "#readiness";
import { sayTrim } from "./words.ts";

/* What people can tell of her by eye, as big as a thumb. */

const DEGREE = Math.PI / 180;

/** A list of so much is a sign to leave her by [rad]. */
export const GREAT_LIST = 20 * DEGREE;

export const EDGES: readonly { readonly id: DeckEdge; readonly words: string }[] = [
  { id: "clear", words: "Clear" },
  { id: "awash", words: "Awash" },
  { id: "under", words: "Under" },
];

export const RIGHTINGS: readonly { readonly id: Righting; readonly words: string }[] = [
  { id: "comes-back", words: "Comes back" },
  { id: "slowly", words: "Slowly" },
  { id: "stays", words: "Stays over" },
];

export const LISTS = [-40, -20, -10, -5, 0, 5, 10, 20, 40].map((degrees) => ({
  id: `${degrees}`,
  words: degrees === 0 ? "None" : `${Math.abs(degrees)}° ${degrees < 0 ? "port" : "stbd"}`,
  si: degrees * DEGREE,
}));

/** Trim over her length, by the stern [m]. */
export function trimPicks(
  units: UnitSystem,
): readonly { readonly id: string; readonly words: string; readonly si: number }[] {
  const foot = units === "metric" ? 0.3 : 0.3048;
  return [-2, -1, 0, 1, 2].map((feet) => {
    const si = feet * foot;
    return { id: `${feet}`, words: feet === 0 ? "None" : sayTrim(si, units), si };
  });
}

/** True where the list seen is so great, to either side. */
export function isListAtLeast(list: number | undefined, least: number): boolean {
  return list !== undefined && Math.abs(list) >= least * (1 - 1e-9);
}
