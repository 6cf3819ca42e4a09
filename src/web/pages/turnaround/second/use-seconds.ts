import type { SecondWanted } from "#readiness";
import { secondsAt } from "#station";
import { useMemo } from "react";
import { doingOf } from "../../../device/act.ts";
import type { OpenKit } from "../../../kit-view/at-hand.ts";

/** Who is asked for at any of these steps, each qualification once. */
export function secondsAtSteps(
  { view, turnaround, pattern }: OpenKit,
  steps: readonly string[],
): readonly SecondWanted[] {
  const all = [...new Set(steps)].flatMap((step) => secondsAt(doingOf(view), { turnaround, pattern }, step));
  return [...new Map(all.map((one) => [one.qualification.id, one])).values()];
}

/** Who is asked for at a step, or without one at the sealing, because the person does not hold what it needs. */
export function useSeconds(open: OpenKit, step?: string): readonly SecondWanted[] {
  const { view, turnaround, pattern } = open;
  return useMemo(() => secondsAt(doingOf(view), { turnaround, pattern }, step), [view, turnaround, pattern, step]);
}
