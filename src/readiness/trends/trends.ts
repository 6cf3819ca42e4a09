import type { Check, Pattern } from "#kit";
import type { KitState, Run, Turnaround } from "../state.ts";

/** A series of one reading over a kit's runs, oldest first. */
export interface Trend {
  readonly what: "pulls" | "prime" | "delivery" | "fuel" | "water";
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

type Measure = Extract<Check, { kind: "measure" }>;

const MEASURED: Readonly<Record<"fuel" | "water", readonly Measure["trend"][]>> = {
  fuel: ["fuel-burnt", "fuel-left"],
  water: ["water-found"],
};

/**
 * Fuel burnt in a run and water found in the case, by the measurements that the pattern says tell of them; a reading in
 * each turnaround that took one, right or wrong. Drills are left out. Where what is left of a full tank is measured, burnt
 * is the tank less that; more than the tank holds tells of no run and is left out.
 *
 * @param kit - as its entries tell it
 * @param pattern - it is built to
 * @returns volumes [m³], oldest first; nothing of what the pattern has no measurement for
 */
export function measuredTrends(kit: Pick<KitState, "turnarounds">, pattern: Pattern): readonly Trend[] {
  return (["fuel", "water"] as const).flatMap((what) => {
    const measures = checksTelling(pattern, what);
    if (measures.size === 0) return [];
    const counted = kit.turnarounds.filter(({ drill, closed }) => drill === undefined && closed?.how !== "set-aside");
    const read = counted.flatMap((turnaround) => readingsIn(turnaround, measures, pattern.engine?.tank));
    return [{ what, points: read.toSorted((one, other) => Date.parse(one.at) - Date.parse(other.at)) }];
  });
}

/** The pattern's measurements that tell of fuel burnt or of water found, by id. */
export function checksTelling(pattern: Pattern, of: "fuel" | "water"): ReadonlyMap<string, Measure> {
  const tells = MEASURED[of];
  return new Map(
    pattern.checks.flatMap((check) =>
      check.kind === "measure" && check.trend && tells.includes(check.trend) ? [[check.id, check]] : [],
    ),
  );
}

function readingsIn(
  { id, answers }: Turnaround,
  measures: ReadonlyMap<string, Measure>,
  tank: number | undefined,
): Trend["points"] {
  return Object.values(answers).flatMap(({ check = "", value, mark }) => {
    const measure = measures.get(check);
    if (!measure || value?.kind !== "quantity" || value.dimension !== "volume") return [];
    const told = measure.trend === "fuel-left" ? (tank ?? NaN) - value.si : value.si;
    return told >= 0 ? [{ at: mark.at, value: told, turnaround: id }] : [];
  });
}
