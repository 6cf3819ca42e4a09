import type { CautionId } from "#base";
import { adviceFor, type Advice } from "./advice.ts";
import { prepareCase, type DeliveryCase, type PreparedCase } from "./delivery-case.ts";
import { STANDARD_FORMULAE, type Formulae } from "./formulae.ts";
import { pumpingOfPrepared, suctionMargin, type Pumping } from "./pumping.ts";
import { PRACTICE_LIFT } from "./suction.ts";
import { BAND_ASSUMPTION, flowBand, type FlowBand } from "./uncertainty.ts";

/** Something taken for granted, and how much that matters. */
export interface Assumption {
  readonly what: string;
  readonly effect: string;
}

/** What a rigged pump delivers, how sure that is, and what was taken for granted. */
export interface Delivery extends Pumping {
  readonly band: FlowBand;
  readonly assumptions: readonly Assumption[];
  readonly cautions: readonly CautionId[];
}

/** NPSH required [m] tried where the maker states nothing, to say how much it matters. */
const TRIED_NPSH = 3;

/**
 * What a rigged pump delivers, with its uncertainty and every assumption.
 *
 * @param given - the rig
 * @param formulae - constants and friction law; default this program's
 * @returns flow, heads, what binds, band, assumptions, cautions
 * @range steady flow, hoses full, clean strainer
 * @source docs/methods/pump.md
 * @throws InputError with every fault in the case
 * @example deliveryOf(rig).kind // "delivers"
 */
export function deliveryOf(given: DeliveryCase, formulae: Formulae = STANDARD_FORMULAE): Delivery {
  const rig = prepareCase(given, formulae);
  const found = pumpingOfPrepared(rig);
  return {
    kind: found.kind,
    limit: found.limit,
    flow: found.flow,
    flowPerPump: found.flowPerPump,
    head: found.head,
    suctionLoss: found.suctionLoss,
    dischargeLoss: found.dischargeLoss,
    npshAvailable: found.npshAvailable,
    npshRequired: found.npshRequired,
    residual: found.residual,
    iterations: found.iterations,
    because: found.because,
    points: found.points,
    band: flowBand(rig, found),
    assumptions: assumptionsOf(given, rig, found),
    cautions: cautionsOf(given),
  };
}

/** What to change about a rig, the change that gains most first; see {@link adviceFor}. */
export function deliveryAdvice(given: DeliveryCase, formulae: Formulae = STANDARD_FORMULAE): readonly Advice[] {
  return adviceFor(given, pumpingOfPrepared(prepareCase(given, formulae)), formulae);
}

function assumptionsOf(given: DeliveryCase, rig: PreparedCase, found: Pumping): readonly Assumption[] {
  const assumptions: Assumption[] = [BAND];
  if (rig.hasSuction) assumptions.push(...suctionAssumptions(given, rig, found));
  if (found.kind !== "cannot-lift") assumptions.push(...curveAssumptions(rig, found.flowPerPump));
  return assumptions;
}

const BAND: Assumption = { what: BAND_ASSUMPTION, effect: "They make the band; a worn pump may lie below it." };

function suctionAssumptions(given: DeliveryCase, rig: PreparedCase, found: Pumping): readonly Assumption[] {
  if (given.pump.npshRequired?.length) return [];
  if (given.pump.greatestLift !== undefined) return [FROM_GREATEST_LIFT];
  const margin = rig.surfaceHead - found.suctionLoss - TRIED_NPSH;
  const effect =
    margin >= 0
      ? `With ${TRIED_NPSH} m required the answer would be the same.`
      : `With ${TRIED_NPSH} m required the suction would bind: ${(-margin).toFixed(1)} m is missing at this flow.`;
  return [{ what: "Nothing is known of the pump's suction: only boiling of the water was checked.", effect }];
}

const FROM_GREATEST_LIFT: Assumption = {
  what: "No NPSH curve: the stated greatest lift is taken as the most that lift and suction losses may come to, at sea level and 20 °C.",
  effect: "Near that lift the flow is careful rather than exact.",
};

function curveAssumptions({ curve }: PreparedCase, flow: number): readonly Assumption[] {
  if (flow > curve.lastFlow) return [BEYOND_CURVE];
  return flow < curve.firstFlow ? [BEFORE_CURVE] : NONE;
}

const NONE: readonly Assumption[] = [];
const BEYOND_CURVE: Assumption = {
  what: "The flow lies beyond the pump's last point; its curve was drawn on.",
  effect: "The pump may give less than said; the last point is what it is known to do.",
};
const BEFORE_CURVE: Assumption = {
  what: "The flow lies before the pump's first point; its curve was drawn back to no flow.",
  effect: "The head there is a guess, and with it the flow.",
};

const CAUTIONS: readonly CautionId[] = [
  "never-pump-fuel",
  "strainer-suction",
  "pressurised-hose",
  "estimate",
  "unit-manual-first",
];
const HIGH_LIFT_CAUTIONS: readonly CautionId[] = [...CAUTIONS, "never-run-dry"];

function cautionsOf(given: DeliveryCase): readonly CautionId[] {
  return given.suction && given.lift > PRACTICE_LIFT.plainLossAbove ? HIGH_LIFT_CAUTIONS : CAUTIONS;
}

/** One row of a table for paper. */
export interface DeliveryRow {
  readonly lift: number;
  readonly kind: Pumping["kind"];
  readonly flow: number;
  readonly band: FlowBand;
}

/**
 * Delivery of the same rig at one lift after another.
 *
 * @param given - the rig; its own lift is not used
 * @param lifts - [m]; default 1 to 7
 * @param formulae - default this program's
 * @returns a row for each lift
 * @range as {@link deliveryOf}
 * @source {@link deliveryOf}
 */
export function deliveryTable(
  given: DeliveryCase,
  lifts: readonly number[] = [1, 2, 3, 4, 5, 6, 7],
  formulae: Formulae = STANDARD_FORMULAE,
): readonly DeliveryRow[] {
  return lifts.map((lift) => {
    const rig = prepareCase({ ...given, lift }, formulae);
    const found = pumpingOfPrepared(rig);
    return { lift, kind: found.kind, flow: found.flow, band: flowBand(rig, found) };
  });
}

/** One point of the picture: flows of all pumps [m³/s], heads [m]. */
export interface CurvePoint {
  readonly flow: number;
  readonly pumpHead: number;
  readonly rigHead: number;
  readonly npshAvailable: number;
  readonly npshRequired: number;
}

/** Everything a picture of the delivery needs. */
export interface DeliveryPicture {
  readonly points: readonly CurvePoint[];
  readonly delivery: Pumping;
  readonly band: FlowBand;
  /** Flow the suction can feed at most, of all pumps [m³/s]; absent where it lies beyond the picture. */
  readonly suctionLimit?: number;
}

/**
 * Pump curve, rig curve and suction limit as points for a picture.
 *
 * @param given - the rig
 * @param count - points from no flow to the picture's end, at least 2; default 60
 * @param formulae - default this program's
 * @returns points evenly spaced in flow up to a tenth beyond the curve's end or the operating point, the answer and its
 *   band, and the flow at the suction limit
 * @range as {@link deliveryOf}
 * @source {@link deliveryOf}
 */
export function deliveryCurve(
  given: DeliveryCase,
  count = 60,
  formulae: Formulae = STANDARD_FORMULAE,
): DeliveryPicture {
  const rig = prepareCase(given, formulae);
  const delivery = pumpingOfPrepared(rig);
  const end = 1.1 * Math.max(rig.curve.lastFlow, delivery.flowPerPump);
  const points = Array.from({ length: count }, (_, i) => curvePoint(rig, (end * i) / (count - 1)));
  const band = flowBand(rig, delivery);
  const limit = rig.hasSuction ? suctionLimit(rig, end) : undefined;
  return { points, delivery, band, ...(limit === undefined ? {} : { suctionLimit: limit }) };
}

function curvePoint(rig: PreparedCase, flow: number): CurvePoint {
  return {
    flow: flow * rig.pumps,
    pumpHead: rig.curve.head(flow),
    rigHead: rig.staticHead + rig.suctionLoss(flow) + rig.dischargeLoss(flow),
    npshAvailable: rig.surfaceHead - rig.suctionLoss(flow),
    npshRequired: rig.hasSuction ? rig.npshRequired(flow) : 0,
  };
}

/** Greatest flow the suction feeds, of all pumps, by halving; undefined where it lies beyond `end`. */
function suctionLimit(rig: PreparedCase, end: number): number | undefined {
  if (suctionMargin(rig, end) >= 0) return undefined;
  if (suctionMargin(rig, 0) <= 0) return 0;
  let [low, high] = [0, end];
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (suctionMargin(rig, middle) >= 0) low = middle;
    else high = middle;
  }
  return low * rig.pumps;
}
