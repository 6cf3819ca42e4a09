import { scaleLinear } from "d3-scale";
import type { Tick } from "./trend-scales.ts";

/** A pumping rig as it is drawn: flows [m³/s] and heads [m]. */
export interface DeliveryDrawn {
  readonly points: readonly { readonly flow: number; readonly pumpHead: number; readonly rigHead: number }[];
  /** Where pump curve and rig curve meet, greatest flow first. */
  readonly operating: readonly { readonly flow: number; readonly head: number; readonly stable: boolean }[];
  /** What is really moved; 0 where nothing comes. */
  readonly flow: number;
  readonly head: number;
  readonly band: { readonly low: number; readonly high: number };
  /** Flow the suction can feed at most, where it lies in the picture. */
  readonly suctionLimit?: number | undefined;
}

/** A quantity as an axis shows it: its unit, and an SI value in that unit. */
export interface AxisUnit {
  readonly symbol: string;
  readonly of: (si: number) => number;
}

/** Edges of the field the curves are drawn in [px]. */
export interface DeliveryFrame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

interface ScreenPoint {
  readonly x: number;
  readonly y: number;
}

/** Everything at its place [px]. */
export interface DeliveryPlaces {
  readonly pump: readonly ScreenPoint[];
  readonly rig: readonly ScreenPoint[];
  /** Where the pump works; absent where nothing comes. */
  readonly point?: ScreenPoint;
  /** Other meetings of the curves: an unstable one, or the one the suction does not let it reach. */
  readonly others: readonly (ScreenPoint & { readonly why: "unstable" | "not-fed" })[];
  readonly band?: { readonly from: number; readonly to: number };
  /** Flow beyond which the suction feeds nothing. */
  readonly limit?: number;
  readonly across: readonly Tick[];
  readonly up: readonly Tick[];
}

/** Room above the highest point of the pump curve [1]. */
const HEADROOM = 1.12;

/**
 * Places pump curve, rig curve, operating points, band and suction limit.
 *
 * @param drawn - the answer to `delivery-curve`
 * @param units - of the axes, as the person reads them
 * @param frame - edges of the field [px]
 */
export function placeDelivery(
  drawn: DeliveryDrawn,
  units: { readonly flow: AxisUnit; readonly head: AxisUnit },
  frame: DeliveryFrame,
): DeliveryPlaces {
  const across = scaleLinear([0, units.flow.of(drawn.points.at(-1)!.flow)], [frame.left, frame.right]);
  const up = scaleLinear([0, units.head.of(topHead(drawn))], [frame.bottom, frame.top]);
  const at = (flow: number, head: number): ScreenPoint => ({
    x: across(units.flow.of(flow)),
    y: up(units.head.of(head)),
  });
  const edge = (flow: number): number => Math.min(frame.right, across(units.flow.of(flow)));
  return {
    pump: drawn.points.map(({ flow, pumpHead }) => at(flow, pumpHead)),
    rig: drawn.points.map(({ flow, rigHead }) => at(flow, rigHead)),
    ...(drawn.flow > 0 && {
      point: at(drawn.flow, drawn.head),
      band: { from: edge(drawn.band.low), to: edge(drawn.band.high) },
    }),
    others: otherPoints(drawn).map(({ flow, head, why }) => ({ ...at(flow, head), why })),
    ...(drawn.suctionLimit !== undefined && { limit: edge(drawn.suctionLimit) }),
    across: ticksOf(across, Math.max(3, Math.floor((frame.right - frame.left) / 80))),
    up: ticksOf(up, 5),
  };
}

/** The pump curve whole, and of the rig curve at least what it needs at no flow. */
function topHead({ points }: DeliveryDrawn): number {
  return HEADROOM * Math.max(...points.map(({ pumpHead }) => pumpHead), points[0]!.rigHead);
}

function otherPoints({ operating, flow }: DeliveryDrawn) {
  return operating
    .filter((one) => Math.abs(one.flow - flow) > 1e-6 * one.flow)
    .map((one) => ({ ...one, why: one.stable ? ("not-fed" as const) : ("unstable" as const) }));
}

function ticksOf(scale: ReturnType<typeof scaleLinear<number>>, count: number): readonly Tick[] {
  const format = scale.tickFormat(count);
  return scale.ticks(count).map((value) => ({ place: scale(value), label: format(value) }));
}
