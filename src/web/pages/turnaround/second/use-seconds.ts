import type { SecondSaid, SecondWanted, Turnaround } from "#readiness";
import { secondsAt, secondsSaidAt } from "#station";
import { useMemo } from "react";
import { doingOf } from "#web/device/act.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";

/** What lines ask for beside the person: who is wanted, and who was named already. Each qualification once. */
export interface Seconds {
  readonly wanted: readonly SecondWanted[];
  readonly said: readonly SecondSaid[];
}

/** Who is asked for and who was named at any of these steps. Found anew only when the station or the steps change. */
export function useSecondsAt({ view, turnaround, pattern }: OpenKit, steps: readonly string[]): Seconds {
  const named = [...new Set(steps)].join(" ");
  return useMemo(() => {
    const [doing, at] = [doingOf(view), { turnaround, pattern }];
    const each = named.split(" ");
    return {
      wanted: eachOnce(each.flatMap((step) => secondsAt(doing, at, step))),
      said: eachOnce(each.flatMap((step) => secondsSaidAt(doing, at, step))),
    };
  }, [view, turnaround, pattern, named]);
}

/** Who is asked for and who was named at the sealing. */
export function useSecondsAtSealing({ view, turnaround, pattern }: OpenKit): Seconds {
  return useMemo(() => {
    const [doing, at] = [doingOf(view), { turnaround, pattern }];
    return { wanted: secondsAt(doing, at), said: secondsSaidAt(doing, at) };
  }, [view, turnaround, pattern]);
}

/** Who was named in a turnaround so far: what was refused for want of a second person rests on it. */
export function secondsNamed({ seconds = [] }: Turnaround): string {
  return seconds.map(({ entry }) => entry).join(" ");
}

function eachOnce<One extends SecondWanted | SecondSaid>(all: readonly One[]): readonly One[] {
  return [...new Map(all.map((one) => [one.qualification.id, one])).values()];
}
