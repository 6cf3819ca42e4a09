import { prepareCase, type DeliveryCase, type PreparedCase } from "./delivery-case.ts";
import { STANDARD_FORMULAE, type Formulae } from "./formulae.ts";
import { pumpingOfPrepared, suctionMargin, type Pumping } from "./pumping.ts";
import { flowBand, type FlowBand } from "./uncertainty.ts";

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
