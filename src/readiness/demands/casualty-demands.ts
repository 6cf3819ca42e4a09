import type { CasualtyState } from "../casualty/casualty-state.ts";
import type { KitState } from "../state.ts";
import type { Demand } from "./demand.ts";

/**
 * Casualties that a kit was put to work on, one demand each.
 *
 * @param kit - by its id
 * @param casualties - of the station, open and closed
 * @returns in the order of the casualties
 */
export function casualtyDemands(kit: Pick<KitState, "id">, casualties: readonly CasualtyState[]): readonly Demand[] {
  return casualties.flatMap((casualty) => casualtyDemand(kit, casualty));
}

/** One demand for each casualty: it did not start, or gave no water, if anybody saw that before it did. */
function casualtyDemand(kit: Pick<KitState, "id">, casualty: CasualtyState): readonly Demand[] {
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
