import { assert, nth } from "#base";
import { findRoot } from "#numerics";
import type { PreparedCase } from "./delivery-case.ts";

/** Where pump curve and hoses agree; flow is that of one pump [m³/s]. */
export interface OperatingPoint {
  readonly flow: number;
  /** What is left of the energy balance [m]. */
  readonly residual: number;
  readonly iterations: number;
  /** True where a little more flow makes the pump give less than the hoses need. */
  readonly stable: boolean;
}

/** What the search for operating points came to, greatest flow first. */
export type Operation =
  | { readonly kind: "operates"; readonly points: readonly [OperatingPoint, ...OperatingPoint[]] }
  | { readonly kind: "no-operating-point"; readonly because: string; readonly shortfall: number };

/** Residual every operating point is found to [m]. */
export const RESIDUAL_TOLERANCE = 1e-10;

/**
 * Where the head a pump gives equals the head the rig needs.
 *
 * H_pump(Q) = z_lift + z_rise + h_suction(Q) + h_discharge(n·Q), by Brent's method in a bracket
 *
 * A falling curve has one such point or none. A drooping one may have two: the greater flow is the stable one, the
 * lower is only passed through.
 *
 * @param rig - prepared case
 * @returns operating points with residuals, greatest flow first, or why there is none
 * @range any prepared case
 * @source energy balance; R. P. Brent 1973 for the root
 */
export function findOperation(rig: PreparedCase): Operation {
  return rig.curve.drooping ? operationOnDroop(rig) : operationOnFall(rig);
}

function operationOnFall(rig: PreparedCase): Operation {
  const atRest = rig.curve.shutOff - rig.staticHead;
  if (!(atRest > 0)) return nothing(rig, -atRest);
  let low = { flow: 0, excess: atRest };
  let high = excessAt(rig, rig.curve.lastFlow);
  while (high.excess > 0) {
    low = high;
    high = excessAt(rig, 1.5 * high.flow);
  }
  return { kind: "operates", points: [pointBetween(rig, low, high)] };
}

interface Excess {
  readonly flow: number;
  /** Head the pump gives beyond what the rig needs [m]. */
  readonly excess: number;
}

function excessAt(rig: PreparedCase, flow: number): Excess {
  assert(Number.isFinite(flow), "a pump curve that falls at its end meets the hoses somewhere");
  return { flow, excess: rig.excess(flow) };
}

function operationOnDroop(rig: PreparedCase): Operation {
  const tried = searchFlows(rig).map((flow) => excessAt(rig, flow));
  const points: OperatingPoint[] = [];
  for (let i = tried.length - 1; i > 0; i -= 1) {
    const [low, high] = [nth(tried, i - 1), nth(tried, i)];
    if (low.excess > 0 !== high.excess > 0) points.push(pointBetween(rig, low, high));
  }
  const [first, ...rest] = points;
  if (first) return { kind: "operates", points: [first, ...rest] };
  return nothing(rig, -Math.max(...tried.map((one) => one.excess)));
}

/** Flows to look between: the curve's knots, each piece cut in sixteen and at its summit, and a flow beyond its end. */
function searchFlows(rig: PreparedCase): number[] {
  const knots = [...rig.curve.knots, flowBeyond(rig)];
  const cut = knots.flatMap((flow, i) => {
    const next = knots[i + 1];
    return next === undefined ? [flow] : Array.from({ length: 16 }, (_, k) => flow + ((next - flow) * k) / 16);
  });
  return [...cut, summitBy(rig, cut)].sort((one, other) => one - other);
}

/** A flow beyond the curve's end at which the hoses need more than the pump gives. */
function flowBeyond(rig: PreparedCase): number {
  let beyond = excessAt(rig, 1.5 * rig.curve.lastFlow);
  while (beyond.excess > 0) beyond = excessAt(rig, 1.5 * beyond.flow);
  return beyond.flow;
}

/** Flow of the greatest excess near the best of these, so that two points close together are both seen. */
function summitBy(rig: PreparedCase, flows: readonly number[]): number {
  const values = flows.map((flow) => rig.excess(flow));
  const best = values.indexOf(Math.max(...values));
  let low = nth(flows, Math.max(0, best - 1));
  let high = nth(flows, Math.min(flows.length - 1, best + 1));
  for (let step = 0; step < 80; step += 1) {
    const [one, other] = [low + (high - low) / 3, high - (high - low) / 3];
    if (rig.excess(one) < rig.excess(other)) low = one;
    else high = other;
  }
  return (low + high) / 2;
}

/** Searched in the square of flow: against that, pump and hoses are both nearly straight, and few steps are needed. */
function pointBetween(rig: PreparedCase, low: Excess, high: Excess): OperatingPoint {
  const root = findRoot((square) => rig.excess(Math.sqrt(square)), low.flow ** 2, high.flow ** 2, {
    residualTolerance: RESIDUAL_TOLERANCE,
    maxIterations: 300,
    ends: [low.excess, high.excess],
  });
  assert(root.kind === "found", "an operating point between two flows is found");
  const { root: square, residual, iterations } = root;
  return { flow: Math.sqrt(square), residual, iterations, stable: low.excess > 0 };
}

function nothing(rig: PreparedCase, shortfall: number): Operation {
  const because = `the pump gives ${rig.curve.shutOff.toFixed(1)} m at no flow and the rig needs ${rig.staticHead.toFixed(1)} m`;
  return { kind: "no-operating-point", because, shortfall };
}
