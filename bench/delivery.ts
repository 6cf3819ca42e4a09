import { InitHydOption } from "epanet-js";
import { deliveryAdvice, deliveryOf, pumpingOf, type DeliveryCase, type Hose, type PumpPoint } from "#hydraulics";
import { ask } from "#questions";
import { dutyOf, judge, openNetwork, startJudge } from "../test/judges/epanet.ts";

/**
 * What a delivery costs, against the open EPA network model (epanet-js) on the same network in the same run.
 * Measures take turns in short rounds and the best round of each counts: what else the machine does only adds.
 */

export interface Measured {
  readonly name: string;
  /** Of the best round [µs]. */
  readonly micros: number;
}

export interface DeliveryBench {
  readonly measured: readonly Measured[];
  /** Open, solve and close over one delivery; at least 20 is wanted. */
  readonly overOpenSolveClose: number;
  /** One bare re-solve over one delivery; at least 1 is wanted. */
  readonly overResolve: number;
  /** Difference of the two flows, relative: they answer the same question. */
  readonly difference: number;
  /** Cost of one delivery against the number of points of the curve. */
  readonly byPoints: readonly Measured[];
}

const ROUNDS = 200;
/** About how long a round of one measure lasts [µs]. */
const ROUND = 1500;
const hose = (bore: number, length: number, fittings: number): Hose => ({
  bore,
  length,
  fittings,
  resistance: { kind: "roughness", roughness: 1e-4 },
});
const POINTS: readonly PumpPoint[] = [
  { flow: 0, head: 32 },
  { flow: 0.008, head: 26 },
  { flow: 0.015, head: 12 },
];
const RIG: DeliveryCase = {
  water: { density: 998.2, viscosity: 1.0015e-3, vapourPressure: 2339 },
  airPressure: 101_325,
  pump: { curve: POINTS },
  speedRatio: 1,
  lift: 2,
  suction: hose(0.0762, 6, 1.5),
  rise: 6,
  discharge: hose(0.0635, 30, 2),
  exitLoss: true,
  pumps: 1,
};
const QUESTION = {
  water: { temperature: 293.15, salinity: 0 },
  air: { pressure: 101_325 },
  pump: { curve: POINTS },
  suction: { lift: 2, bore: 0.0762, length: 6, roughness: 1e-4, fittings: 1.5 },
  discharge: { rise: 6, bore: 0.0635, length: 30, roughness: 1e-4, fittings: 2 },
  advise: false,
};

/** Runs the whole comparison; about ten seconds. */
export async function benchDelivery(): Promise<DeliveryBench> {
  const workspace = await startJudge();
  const project = openNetwork(workspace, RIG);
  project.openH();
  project.initH(InitHydOption.InitFlow);
  project.runH();
  const difference = pumpingOf(RIG).flow / dutyOf(project, 1).flow - 1;
  const resolve = (): void => {
    project.initH(InitHydOption.InitFlow);
    project.runH();
  };
  const again = takeTurns([
    { name: "bare operating point (pumpingOf)", run: () => pumpingOf(RIG) },
    { name: "delivery: band, limit, assumptions (deliveryOf)", run: () => deliveryOf(RIG) },
    { name: "delivery question through its door (ask)", run: () => ask("delivery", QUESTION) },
    { name: "advice: every change solved again (deliveryAdvice)", run: () => deliveryAdvice(RIG) },
    { name: "judge: bare re-solve from first flows (initH, runH)", run: resolve },
  ]);
  project.close();
  const once = takeTurns([
    { name: "delivery: band, limit, assumptions (deliveryOf)", run: () => deliveryOf(RIG) },
    { name: "judge: open, solve, close", run: () => judge(workspace, RIG) },
  ]);
  const [, delivery, , , bare] = again;
  return {
    measured: [...again, once[1]!],
    overOpenSolveClose: once[1]!.micros / once[0]!.micros,
    overResolve: bare!.micros / delivery!.micros,
    difference,
    byPoints: costByPoints(),
  };
}

interface Measure {
  readonly name: string;
  readonly run: () => unknown;
}

function takeTurns(measures: readonly Measure[]): Measured[] {
  const times = measures.map(warmUp);
  const best = measures.map(() => Infinity);
  for (let round = 0; round < ROUNDS; round += 1) {
    for (const [i, measure] of measures.entries()) best[i] = Math.min(best[i]!, microsOf(measure, times[i]!));
  }
  return measures.map(({ name }, i) => ({ name, micros: best[i]! }));
}

/** Calls in a round, found while the compiler warms up. */
function warmUp(measure: Measure): number {
  const rough = Math.min(...Array.from({ length: 20 }, () => microsOf(measure, 200)));
  return Math.max(1, Math.round(ROUND / rough));
}

function microsOf({ run }: Measure, times: number): number {
  const start = performance.now();
  for (let i = 0; i < times; i += 1) run();
  return ((performance.now() - start) * 1000) / times;
}

function costByPoints(): Measured[] {
  return takeTurns(
    [1, 2, 3, 5, 10, 20, 50, 100].map((count) => {
      const rig = { ...RIG, pump: { curve: pointsOf(count) } };
      return { name: `${count}`, run: () => deliveryOf(rig) };
    }),
  );
}

function pointsOf(count: number): readonly PumpPoint[] {
  if (count === 1) return [{ flow: 0.01, head: 24 }];
  return Array.from({ length: count }, (_, i) => i / (count - 1)).map((share) => ({
    flow: 0.016 * share,
    head: 32 - 22 * share ** 2,
  }));
}

/** The comparison as lines for a terminal. */
export function benchLines(bench: DeliveryBench): readonly string[] {
  return [
    "One delivery against the open EPA network model, same network, same run (best of rounds taken in turn):",
    ...bench.measured.map(measuredLine),
    `  flows differ by ${(100 * bench.difference).toFixed(3)} %`,
    `  delivery is ${bench.overOpenSolveClose.toFixed(0)} times as fast as open-solve-close (wanted: at least 20): ${passed(bench.overOpenSolveClose >= 20)}`,
    `  delivery is ${bench.overResolve.toFixed(1)} times as fast as a bare re-solve (wanted: at least 1): ${passed(bench.overResolve >= 1)}`,
    "Cost of one delivery against the number of curve points:",
    ...bench.byPoints.map(measuredLine),
  ];
}

function measuredLine({ name, micros }: Measured): string {
  return `  ${micros.toFixed(2).padStart(9)} µs  ${name}`;
}

function passed(yes: boolean): string {
  return yes ? "met" : "NOT MET";
}

if (process.argv[1]?.endsWith("delivery.ts")) {
  for (const text of benchLines(await benchDelivery())) console.log(text);
}
