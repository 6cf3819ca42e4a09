import type { SecondWanted } from "#readiness";
import { secondsAt } from "#station";
import { useMemo } from "react";
import { doingOf } from "../../../device/act.ts";
import type { OpenKit } from "../../../kit-view/at-hand.ts";

/** Who is asked for at any of these steps, each qualification once. Found anew only when the station or the steps change. */
export function useSecondsAt(
  { view, turnaround, pattern }: OpenKit,
  steps: readonly string[],
): readonly SecondWanted[] {
  const named = [...new Set(steps)].join(" ");
  return useMemo(() => {
    const doing = doingOf(view);
    const all = named.split(" ").flatMap((step) => secondsAt(doing, { turnaround, pattern }, step));
    return [...new Map(all.map((one) => [one.qualification.id, one])).values()];
  }, [view, turnaround, pattern, named]);
}

/** Who is asked for at the sealing. */
export function useSecondsAtSealing({ view, turnaround, pattern }: OpenKit): readonly SecondWanted[] {
  return useMemo(() => secondsAt(doingOf(view), { turnaround, pattern }), [view, turnaround, pattern]);
}
