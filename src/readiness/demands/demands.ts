import type { Pattern } from "#kit";
import type { CasualtyState } from "../casualty/casualty-state.ts";
import type { KitState } from "../state.ts";
import { benchDemands } from "./bench-demands.ts";
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
  const called = casualties.flatMap((casualty) => casualtyDemand(kit, casualty));
  return [...benchDemands(kit, pattern), ...called].toSorted((one, other) => Date.parse(one.at) - Date.parse(other.at));
}

/** One demand for each casualty: it did not start, or gave no water, if anybody saw that before it did. */
function casualtyDemand(kit: KitState, casualty: CasualtyState): readonly Demand[] {
  const { pumps, pumpSeen = [] } = casualty;
  const pump = pumps.find((one) => one.kit === kit.id);
  if (!pump) return [];
  const first = pump.runs[0]?.from;
  const refused = pumpSeen.find((seen) => seen.pump === pump.pump && seen.sign === "wont-start");
  const isFirst = refused && (first === undefined || Date.parse(refused.at) <= Date.parse(first));
  if (isFirst) return [{ at: refused.at, on: "casualty", worked: false, failed: "start" }];
  if (first === undefined) return [];
  const isDry = gaveNoWater(casualty, pump.pump);
  return [{ at: first, on: "casualty", worked: !isDry, ...(isDry && { failed: "prime" as const }) }];
}

/** Somebody saw it run without water before anybody saw or timed any. */
function gaveNoWater({ pumpSeen = [], starts = [] }: CasualtyState, pump: string): boolean {
  const dry = pumpSeen.find((seen) => seen.pump === pump && seen.sign === "no-water");
  if (!dry) return false;
  const wet = [
    ...pumpSeen.filter((seen) => seen.pump === pump && (seen.sign === "water" || seen.sign === "weak")),
    ...starts.filter((one) => one.pump === pump && one.primeSeconds !== undefined),
  ];
  return !wet.some(({ at }) => Date.parse(at) <= Date.parse(dry.at));
}
