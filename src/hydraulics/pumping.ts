import { assert, nth } from "#base";
import { findRoot } from "#numerics";
import { STANDARD_FORMULAE, type Formulae } from "./formulae.ts";
import { prepareCase, type DeliveryCase, type PreparedCase } from "./delivery-case.ts";
import { findOperation, RESIDUAL_TOLERANCE, type OperatingPoint } from "./operating-point.ts";

/** What binds: the pump's curve against the hoses, the suction side, or the height itself. */
export type Limit = "curve" | "suction" | "height";

/** What a rigged pump does; flow is that of all pumps together, the rest that of each. */
export interface Pumping {
  readonly kind: "delivers" | "cannot-lift" | "suction-limited";
  readonly limit: Limit;
  /** Of all pumps together [m³/s]. */
  readonly flow: number;
  readonly flowPerPump: number;
  /** Head each pump gives [m]; at no flow, its shut-off head. */
  readonly head: number;
  readonly suctionLoss: number;
  readonly dischargeLoss: number;
  readonly npshAvailable: number;
  readonly npshRequired: number;
  /** What is left of the equation that binds [m]. */
  readonly residual: number;
  readonly iterations: number;
  readonly because: string;
  /** Every operating point of a drooping curve, greatest flow first; one for others, none where it cannot lift. */
  readonly points: readonly OperatingPoint[];
}

/**
 * What a rigged pump moves: the operating point, or less where the suction cannot feed it.
 *
 * Where NPSH available at the operating point is below NPSH required, the pump cavitates and settles at the flow at
 * which the two are equal.
 *
 * @param given - the rig
 * @param formulae - constants and friction law; default this program's
 * @returns flow, heads, what binds and why
 * @range steady flow, hoses full
 * @source energy balance and NPSH: docs/methods/pump.md
 * @throws InputError with every fault in the case
 */
export function pumpingOf(given: DeliveryCase, formulae: Formulae = STANDARD_FORMULAE): Pumping {
  return pumpingOfPrepared(prepareCase(given, formulae));
}

/**
 * The same for a case already prepared; for those who ask many times.
 *
 * @param rig - as `prepareCase` makes it
 * @returns flow, heads, what binds and why
 * @source energy balance and NPSH: docs/methods/pump.md
 */
export function pumpingOfPrepared(rig: PreparedCase): Pumping {
  const operation = findOperation(rig);
  if (operation.kind === "no-operating-point") return cannotLift(rig, operation.because, "height", []);
  const point = operation.points[0];
  const suctionLoss = rig.suctionLoss(point.flow);
  const short = rig.hasSuction && rig.surfaceHead - suctionLoss < rig.npshRequired(point.flow);
  return short ? limitedBySuction(rig, point, operation.points) : delivers(rig, point, operation.points, suctionLoss);
}

/** NPSH available less NPSH required [m]. */
export function suctionMargin(rig: PreparedCase, flow: number): number {
  return rig.surfaceHead - rig.suctionLoss(flow) - rig.npshRequired(flow);
}

function limitedBySuction(rig: PreparedCase, point: OperatingPoint, points: readonly OperatingPoint[]): Pumping {
  const atRest = suctionMargin(rig, 0);
  if (!(atRest > 0)) return cannotLift(rig, suctionShort(-atRest), "suction", points);
  const root = findRoot((flow) => suctionMargin(rig, flow), 0, point.flow, {
    residualTolerance: RESIDUAL_TOLERANCE,
    maxIterations: 200,
  });
  assert(root.kind === "found", "the flow at the suction limit is found");
  const { root: flow, residual } = root;
  const suctionLoss = rig.suctionLoss(flow);
  const dischargeLoss = rig.dischargeLoss(flow);
  const head = rig.staticHead + suctionLoss + dischargeLoss;
  const full = (point.flow * rig.pumps * 60_000).toFixed(0);
  const because = `the suction side feeds no more; the pump's curve alone would give ${full} L/min`;
  const iterations = root.iterations + point.iterations;
  const losses = { suctionLoss, dischargeLoss };
  const kind = "suction-limited";
  return pumping(rig, { kind, limit: "suction", flow, head, ...losses, residual, iterations, because, points });
}

function suctionShort(shortfall: number): string {
  return `the water would have to be ${shortfall.toFixed(1)} m nearer for the suction to feed the pump at all`;
}

function delivers(
  rig: PreparedCase,
  { flow, residual, iterations }: OperatingPoint,
  points: readonly OperatingPoint[],
  suctionLoss: number,
): Pumping {
  const because = points.length < 2 ? "pump curve and hoses agree at this flow" : droopBecause(rig, nth(points, 1));
  const dischargeLoss = rig.dischargeLoss(flow);
  const head = rig.staticHead + suctionLoss + dischargeLoss + residual;
  return pumping(rig, {
    kind: "delivers",
    limit: "curve",
    flow,
    head,
    suctionLoss,
    dischargeLoss,
    residual,
    iterations,
    because,
    points,
  });
}

function droopBecause(rig: PreparedCase, lower: OperatingPoint): string {
  const flow = (lower.flow * rig.pumps * 60_000).toFixed(0);
  return (
    `the curve droops, so there are two operating points: this one is stable; the one at ${flow} L/min is not, ` +
    "and a pump that has not passed it gives nothing"
  );
}

function cannotLift(rig: PreparedCase, because: string, limit: Limit, points: readonly OperatingPoint[]): Pumping {
  const atRest = { flow: 0, head: rig.curve.shutOff, suctionLoss: 0, dischargeLoss: 0, residual: 0, iterations: 0 };
  return pumping(rig, { kind: "cannot-lift", limit, ...atRest, because, points });
}

interface Found {
  readonly kind: Pumping["kind"];
  readonly limit: Limit;
  /** Of one pump [m³/s]. */
  readonly flow: number;
  readonly head: number;
  readonly suctionLoss: number;
  readonly dischargeLoss: number;
  readonly residual: number;
  readonly iterations: number;
  readonly because: string;
  readonly points: readonly OperatingPoint[];
}

function pumping(rig: PreparedCase, found: Found): Pumping {
  const { flow } = found;
  return {
    kind: found.kind,
    limit: found.limit,
    flow: flow * rig.pumps,
    flowPerPump: flow,
    head: found.head,
    suctionLoss: found.suctionLoss,
    dischargeLoss: found.dischargeLoss,
    npshAvailable: rig.surfaceHead - found.suctionLoss,
    npshRequired: rig.hasSuction ? rig.npshRequired(flow) : 0,
    residual: found.residual,
    iterations: found.iterations,
    because: found.because,
    points: found.points,
  };
}
