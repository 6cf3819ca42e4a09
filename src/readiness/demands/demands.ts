import type { Pattern } from "#kit";
import type { CasualtyState } from "../casualty/casualty-state.ts";
import type { KitState } from "../state.ts";
import { benchDemands } from "./bench-demands.ts";
import { casualtyDemands } from "./casualty-demands.ts";
import type { Demand } from "./demand.ts";

/**
 * Every time a kit was asked to start, and what came of it: first starts of its turnarounds, by cord, key or plug, and
 * casualties it was put to work on. A turnaround in which nobody told of a start or of water asks nothing, nor does one
 * of a drill: faults were planted for it.
 *
 * @param kit - as its entries tell it
 * @param casualties - of the station, open and closed
 * @param pattern - it is built to, where it is here
 * @returns oldest first
 */
export function demandsOf(
  kit: KitState,
  casualties: readonly CasualtyState[],
  pattern: Pattern | undefined,
): readonly Demand[] {
  // Runs on casualties are told by their sheets, which also say what it did before it ran.
  const called = casualtyDemands(kit, casualties);
  return [...benchDemands(kit, pattern), ...called].toSorted((one, other) => Date.parse(one.at) - Date.parse(other.at));
}
