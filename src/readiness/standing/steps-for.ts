import { stepsOfStages, type Lookup } from "../lookup.ts";
import type { Restoring } from "./condition.ts";

/** Steps that put these things right, each once; opening, restowing and sealing too where the container is opened. */
export function stepsFor(lookup: Lookup, needed: readonly Restoring[]): ReadonlySet<string> {
  const opening = needed.some((one) => one.opens) ? stepsOfStages(lookup, ["open", "restow", "seal"]) : [];
  return new Set([...opening, ...needed.flatMap((one) => one.steps)]);
}
