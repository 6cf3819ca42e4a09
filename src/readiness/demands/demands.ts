import type { CasualtyState } from "../casualty/casualty-state.ts";
import type { KitState } from "../state.ts";

/** One time that a kit was asked to start and give water. */
export interface Demand {
  readonly at: string;
  /** On the bench, in a turnaround, or on a casualty. */
  readonly on: "turnaround" | "casualty";
  readonly worked: boolean;
  /** What it did not do. */
  readonly failed?: "start" | "prime";
}

/**
 * Every time a kit was asked to start, and what came of it: first starts of its turnarounds, and casualties it was put to
 * work on. A turnaround in which nobody counted pulls asks nothing, nor does one of a drill: faults were planted for it.
 *
 * @param kit - as its entries tell it
 * @param casualties - of the station, open and closed
 * @returns oldest first
 */
export function demandsOf(kit: KitState, casualties: readonly CasualtyState[]): readonly Demand[] {
  const own = kit.runs.flatMap((run): readonly Demand[] => {
    // Runs on casualties are told by their sheets below, which also say what it did before it ran.
    if (run.started === undefined || run.casualty !== undefined || run.drill !== undefined) return [];
    const failed = run.started ? (run.primed === false ? ("prime" as const) : undefined) : ("start" as const);
    return [{ at: run.at, on: "turnaround", worked: failed === undefined, ...(failed ? { failed } : {}) }];
  });
  const called = casualties.flatMap((casualty) => casualtyDemand(kit, casualty));
  return [...own, ...called].toSorted((one, other) => Date.parse(one.at) - Date.parse(other.at));
}

/** One demand for each casualty: it did not start if anybody saw that before it ran. */
function casualtyDemand(kit: KitState, { pumps, pumpSeen = [] }: CasualtyState): readonly Demand[] {
  const pump = pumps.find((one) => one.kit === kit.id);
  if (!pump) return [];
  const first = pump.runs[0]?.from;
  const refused = pumpSeen.find((seen) => seen.pump === pump.pump && seen.sign === "wont-start");
  const isFirst = refused && (first === undefined || Date.parse(refused.at) <= Date.parse(first));
  if (isFirst) return [{ at: refused.at, on: "casualty", worked: false, failed: "start" }];
  return first === undefined ? [] : [{ at: first, on: "casualty", worked: true }];
}
