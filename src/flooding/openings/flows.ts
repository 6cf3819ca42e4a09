import { flowWith, LINEAR_BELOW, strengthOf, type Opening } from "./opening.ts";
import type { Body } from "../hull/body.ts";
import type { Resting } from "../hull/equilibrium.ts";
import type { PlacedOpening, PlacedPump, PumpDelivery } from "../hull/vessel.ts";

type Afloat = Extract<Resting, { kind: "afloat" }>;

/** The sea, where a compartment's number is meant. */
export const SEA = -1;

/** Openings and pumps by number, and what they pass now. One per run. */
export interface Piping {
  readonly openings: readonly Passage[];
  readonly pumps: readonly Suction[];
  /** Signed flow into `into` of each opening, then what each pump takes out [m³/s]. */
  readonly flows: Float64Array;
  /** Fills `flows` for a boat lying so with so much water in each compartment. */
  refresh(resting: Afloat, water: ArrayLike<number>): void;
  /** Writes the change of each compartment's water, then the sea's inflow and the pumps' total, from `flows`. */
  gather(
    flows: ArrayLike<number>,
    stride: number,
    at: number,
    out: Float64Array,
    outStride: number,
    outAt: number,
  ): void;
}

export interface Passage {
  readonly name: string;
  readonly opening: Opening;
  /** See `strengthOf`. */
  readonly strength: number;
  readonly into: number;
  readonly from: number;
  readonly x: number;
  readonly y: number;
  /** Share still open: 1, less when patched. */
  share: number;
}

export interface Suction {
  readonly name: string;
  readonly compartment: number;
  readonly delivery: PumpDelivery;
  readonly height: number;
  readonly x: number;
  readonly y: number;
  /** Share of its delivery: 0 stopped, 1 full, more than 1 at more throttle. */
  share: number;
  /** Laid where the water runs to, no place being told: never above it. */
  readonly followsWater: boolean;
  intake: Intake;
}

/**
 * How a strainer stands to the water: under it; at its surface, where it takes no more than flows in; or above it, where
 * it takes nothing.
 */
export type Intake = "under" | "skimming" | "above";

/** Finds each opening's and pump's compartment and readies the flows. */
export function makePiping(
  body: Body,
  openings: readonly PlacedOpening[],
  pumps: readonly PlacedPump[],
  linearBelow: number | undefined,
): Piping {
  const passages = openings.map((placed) => passageOf(body, placed));
  const suctions = pumps.map((pump) => suctionOf(body, pump));
  const flows = new Float64Array(passages.length + suctions.length);
  const inflows = new Float64Array(body.names.length);
  const straightBelow = linearBelow ?? LINEAR_BELOW;
  return {
    openings: passages,
    pumps: suctions,
    flows,
    refresh(resting, water) {
      inflows.fill(0);
      for (let j = 0; j < passages.length; j += 1) {
        const { into, from } = passages[j]!;
        const flow = passageFlow(passages[j]!, resting, water, body.capacities, straightBelow);
        flows[j] = flow;
        inflows[into]! += flow;
        if (from !== SEA) inflows[from]! -= flow;
      }
      for (const intake of INTAKES) {
        for (let k = 0; k < suctions.length; k += 1) {
          if (suctions[k]!.intake !== intake) continue;
          const { compartment } = suctions[k]!;
          const taken = pumpFlow(suctions[k]!, resting, inflows[compartment]!);
          flows[passages.length + k] = taken;
          inflows[compartment]! -= taken;
        }
      }
    },
    gather: (given, stride, at, out, outStride, outAt) =>
      gather({ passages, suctions, size: body.names.length }, given, stride, at, out, outStride, outAt),
  };
}

/** Those under water take theirs first; one at the surface has what they leave. */
const INTAKES: readonly Intake[] = ["under", "skimming", "above"];

function passageOf(body: Body, placed: PlacedOpening): Passage {
  const into = body.names.indexOf(placed.into);
  const middle = body.middles[into]!;
  return {
    name: placed.name,
    opening: placed.opening,
    strength: strengthOf(placed.opening),
    into,
    from: placed.from === undefined ? SEA : body.names.indexOf(placed.from),
    x: placed.x ?? middle.x,
    y: placed.y ?? middle.y,
    share: 1,
  };
}

function suctionOf(body: Body, pump: PlacedPump): Suction {
  const compartment = body.names.indexOf(pump.compartment);
  const middle = body.middles[compartment]!;
  return {
    name: pump.name,
    compartment,
    delivery: pump.delivery,
    height: pump.suctionHeight ?? middle.floor,
    x: pump.x ?? middle.x,
    y: pump.y ?? middle.y,
    share: (pump.from ?? 0) > 0 ? 0 : 1,
    followsWater: pump.suctionHeight === undefined && pump.x === undefined && pump.y === undefined,
    intake: "under",
  };
}

/** Height of a water surface above the keel at a place in the boat [m]. */
export function surfaceAt(resting: Afloat, compartment: number, x: number, y: number): number {
  const height = compartment === SEA ? resting.plane.height : resting.levels[compartment]!;
  return height + resting.plane.slopeX * x + resting.plane.slopeY * y;
}

function passageFlow(
  passage: Passage,
  resting: Afloat,
  water: ArrayLike<number>,
  capacities: readonly number[],
  linearBelow: number,
): number {
  const { slopeX, slopeY } = resting.plane;
  const outside = surfaceAt(resting, passage.from, passage.x, passage.y);
  const inside = surfaceAt(resting, passage.into, passage.x, passage.y);
  const upright = 1 / Math.sqrt(1 + slopeX * slopeX + slopeY * slopeY);
  const flow = passage.share * flowWith(passage.opening, passage.strength, { outside, inside, upright, linearBelow });
  const giver = flow > 0 ? passage.from : passage.into;
  return giver === SEA ? flow : flow * emptiness(water[giver]!, capacities[giver]!);
}

/** 1, falling to 0 over the last millionth of a space: nothing flows out of an empty one. */
function emptiness(water: number, capacity: number): number {
  const thin = 1e-6 * Math.min(capacity, 10);
  return water >= thin ? 1 : Math.max(0, water / thin);
}

function pumpFlow(pump: Suction, resting: Afloat, inflow: number): number {
  if (pump.share === 0 || pump.intake === "above") return 0;
  const level = surfaceAt(resting, pump.compartment, pump.x, pump.y);
  const able = pump.share * deliveryAt(pump.delivery, level);
  return pump.intake === "skimming" ? Math.min(able, Math.max(0, inflow)) : able;
}

/**
 * What a pump moves out of water standing at a level.
 *
 * @param delivery - the pump's delivery
 * @param level - water level above the keel where it draws [m]
 * @returns flow [m³/s], never negative
 * @source DERIVED: lift is discharge height less level; docs/methods/flooding.md, "Pumps"
 * @example deliveryAt({ kind: "steady", flow: 0.01 }, 0.5) // 0.01
 */
export function deliveryAt(delivery: PumpDelivery, level: number): number {
  if (delivery.kind === "steady") return delivery.flow;
  const lift = delivery.dischargeHeight - level;
  if (delivery.kind === "parabola") return Math.sqrt(Math.max(0, delivery.shutOffHead - lift) / delivery.bend);
  return tableFlow(delivery.points, lift);
}

function tableFlow(points: readonly { readonly lift: number; readonly flow: number }[], lift: number): number {
  const last = points.length - 1;
  if (lift <= points[0]!.lift) return points[0]!.flow;
  for (let k = 1; k <= last; k += 1) {
    const [a, b] = [points[k - 1]!, points[k]!];
    if (lift <= b.lift) return a.flow + ((b.flow - a.flow) * (lift - a.lift)) / (b.lift - a.lift);
  }
  return 0;
}

function gather(
  piping: { readonly passages: readonly Passage[]; readonly suctions: readonly Suction[]; readonly size: number },
  flows: ArrayLike<number>,
  stride: number,
  at: number,
  out: Float64Array,
  outStride: number,
  outAt: number,
): void {
  const { passages, suctions, size } = piping;
  for (let i = 0; i < size + 2; i += 1) out[outAt + i * outStride] = 0;
  for (let j = 0; j < passages.length; j += 1) {
    const { into, from } = passages[j]!;
    const flow = flows[at + j * stride]!;
    out[outAt + into * outStride]! += flow;
    out[outAt + (from === SEA ? size : from) * outStride]! += from === SEA ? flow : -flow;
  }
  for (let k = 0; k < suctions.length; k += 1) {
    const taken = flows[at + (passages.length + k) * stride]!;
    out[outAt + suctions[k]!.compartment * outStride]! -= taken;
    out[outAt + (size + 1) * outStride]! += taken;
  }
}
