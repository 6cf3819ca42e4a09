import type { KitState, Run } from "../state.ts";

/** A series of one reading over a kit's runs, oldest first. */
export interface Trend {
  readonly what: "pulls" | "prime" | "delivery";
  readonly points: readonly ({ readonly at: string; readonly value: number } & Pick<Run, "turnaround" | "casualty">)[];
}

/**
 * How a kit's starts, primes and deliveries have gone: pulls to the first start, seconds from first stroke to water,
 * measured over expected flow. Runs of a drill are left out. A run that did not start or prime gives no point: it is a finding, not a slow reading.
 */
export function trendsOf(kit: KitState): readonly Trend[] {
  const runs = kit.runs
    .filter(({ drill }) => drill === undefined)
    .toSorted((one, other) => Date.parse(one.at) - Date.parse(other.at));
  return [
    { what: "pulls", points: points(runs, (run) => (run.started === false ? undefined : run.pulls)) },
    { what: "prime", points: points(runs, (run) => (run.primed === false ? undefined : run.primeSeconds)) },
    { what: "delivery", points: points(runs, (run) => run.ratio) },
  ];
}

function points(runs: readonly Run[], read: (run: Run) => number | undefined): Trend["points"] {
  return runs.flatMap((run) => {
    const value = read(run);
    if (value === undefined) return [];
    const { at, turnaround, casualty } = run;
    return [{ at, value, ...(turnaround !== undefined && { turnaround }), ...(casualty && { casualty }) }];
  });
}
