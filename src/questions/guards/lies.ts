import type { Fault } from "#base";
import { immersionOf, makeHull, type HullForm } from "#flooding";
import { faultOf, metres } from "./guard-fault.ts";

interface Lie {
  readonly draught?: number | undefined;
  readonly heel?: number | undefined;
  readonly trim?: number | undefined;
}

/** QU-161: a hull that at this draught, heel and trim is clear of the water, or wholly under it. */
export function wrongLie(hull: HullForm, { draught, heel = 0, trim = 0 }: Lie, field = "draught"): readonly Fault[] {
  const floats = draught ?? makeHull(hull).draught;
  const immersion = immersionOf(hull, { draught: floats, heel, trim });
  if (immersion === "floating") return [];
  const got = `${metres(floats)} with a trim of ${metres(trim)}`;
  const allowed = immersion === "out" ? "some of her hull in the water" : "some of her sides above the water";
  return [faultOf("QU-161", field, got, allowed, "Check draught, trim and heel against the hull's own size.")];
}
