import type { PlanAnswer } from "./use-plan.ts";

/** What speaks against accepting a plan: it opens nothing, or is worse than each thing on its last day. */
export type Doubt = "opens-nothing" | "shorter" | "more-openings";

/** What must be said before a plan is accepted; undefined where nothing speaks against it. */
export function doubtOf({ openings, short, naive }: PlanAnswer): Doubt | undefined {
  if (openings.length === 0) return naive.openings === 0 ? undefined : "opens-nothing";
  if (short.length > naive.shortWeeks) return "shorter";
  return short.length === naive.shortWeeks && openings.length > naive.openings ? "more-openings" : undefined;
}
