import { LINEAR_BELOW } from "../openings/opening.ts";
import { areaAt, riseWith, sinkageWith, volumeAt, type SoundedSpace } from "../soundings/sounding-space.ts";
import {
  AREA_LEAN,
  AREA_SHARE,
  DELIVERY,
  DELIVERY_LEAN,
  HOLE,
  OUTSIDE,
  SEEN_AT,
  STRAINER,
  STRENGTH,
  type Casualty,
} from "./places.ts";

/** Writes the rate of rise at a level [m/s] and its slope [1/s]. */
function riseAt(space: SoundedSpace, c: Casualty, h: number, pumped: number, out: Float64Array): void {
  const isWay = c.length > STRAINER;
  const share = c[AREA_SHARE]!;
  const plain = areaAt(space, h);
  const area = (isWay ? share * leanAt(c, AREA_LEAN, h) : share) * plain;
  const water = (isWay ? share * leanAt(c, AREA_LEAN, h / 2) : share) * volumeAt(space, h);
  const sinks = sinkageWith(space, water);
  const sea = c[OUTSIDE]! + riseWith(space, water);
  const hole = c[HOLE]!;
  const head = (sea > hole ? sea : hole) - (h > hole ? h : hole);
  const size = head < 0 ? -head : head;
  const isSmall = size < LINEAR_BELOW;
  const root = isSmall ? SMALL_ROOT : Math.sqrt(size);
  const strength = c[STRENGTH]!;
  const inflow = isSmall ? (strength * head) / root : head < 0 ? -strength * root : strength * root;
  const lean = sinks * area - (h > hole ? 1 : 0);
  const taken = pumped === 0 ? 0 : pumped * c[DELIVERY]! * (isWay ? leanAt(c, DELIVERY_LEAN, h) : 1);
  out[0] = (inflow - taken) / area;
  out[1] = (strength / (isSmall ? root : 2 * root)) * (lean / area);
  if (isWay) out[1]! -= (pumped * c[DELIVERY]! * c[DELIVERY_LEAN]! + out[0]! * c[AREA_LEAN]! * share * plain) / area;
}

/** What an area or a delivery is at a level, over what it is where it was seen; never less than this. */
export const LEAST_LEAN = 0.3;

function leanAt(c: Casualty, place: number, h: number): number {
  const lean = 1 + c[place]! * (h - c[SEEN_AT]!);
  return lean > LEAST_LEAN ? lean : LEAST_LEAN;
}

/** Water under a level [m³]; it lies about half as high as its surface. */
function waterUnder(space: SoundedSpace, c: Casualty, h: number): number {
  const lean = c.length > STRAINER ? leanAt(c, AREA_LEAN, h / 2) : 1;
  return c[AREA_SHARE]! * lean * volumeAt(space, h);
}

const SMALL_ROOT = Math.sqrt(LINEAR_BELOW);

/** A level moves no more than this in one step [m] of more than so long [s]: near the keel a hull's area vanishes. */
const LARGEST_MOVE = 0.05;
const SHORTEST = 0.2;
/** For the many ways of a sheet, each of which is good to a centimetre at best [m], [s]. */
const ROUGH_MOVE = 0.15;
const ROUGH_SHORTEST = 5;
/** Over a move this small the exponential alone is good to a fraction of a millimetre [m]. */
const STRAIGHT = 0.02;

/** Within this the series below are good to 1e-7, and much quicker than an exponential. */
const SERIES_REACH = 0.4;

/** φ₁(x) = (eˣ − 1)/x */
function firstBySeries(x: number): number {
  return 1 + (x / 2) * (1 + (x / 3) * (1 + (x / 4) * (1 + (x / 5) * (1 + x / 6))));
}

/** φ₃(x) = (eˣ − 1 − x − x²/2)/x³ */
function thirdBySeries(x: number): number {
  return (1 + (x / 4) * (1 + (x / 5) * (1 + (x / 6) * (1 + x / 7)))) / 6;
}

/** One step on; `rise` is room to work in. A pump that is down to its strainer takes what comes in, and no more. */
export function stepLevel(
  space: SoundedSpace,
  c: Casualty,
  h: number,
  length: number,
  pumped: number,
  rise: Float64Array,
): number {
  if (h > GONE * topOf(space)) return h;
  const strainer = c.length > STRAINER && pumped > 0 ? c[STRAINER]! : 0;
  if (strainer === 0) return stepFrom(space, c, h, length, { pumped, lowest: 0 }, rise);
  if (h > strainer) return stepFrom(space, c, h, length, { pumped, lowest: strainer }, rise);
  const bare = stepFrom(space, c, h, length, { pumped: 0, lowest: 0 }, rise);
  if (bare <= strainer) return bare;
  return Math.max(strainer, stepFrom(space, c, strainer, length, { pumped, lowest: strainer }, rise));
}

/** Water so much higher than the space is that of a boat long lost: how it rises from there is of no use to anybody. */
const GONE = 1.5;

/** Height of a boat's space [m]; upright sides have none. */
function topOf({ areas, step }: SoundedSpace): number {
  return areas.length > 2 ? step * (areas.length - 1) : Number.POSITIVE_INFINITY;
}

interface Drawn {
  readonly pumped: number;
  /** No lower than this [m]. */
  readonly lowest: number;
}

function stepFrom(
  space: SoundedSpace,
  c: Casualty,
  h: number,
  length: number,
  drawn: Drawn,
  rise: Float64Array,
): number {
  const { pumped, lowest } = drawn;
  riseAt(space, c, h, pumped, rise);
  const rate = rise[0]!;
  const slope = rise[1]!;
  const reach = Math.min(slope * length, 20);
  const isShort = reach > -SERIES_REACH && reach < SERIES_REACH;
  const first = isShort ? firstBySeries(reach) : Math.expm1(reach) / reach;
  const third = isShort ? thirdBySeries(reach) : ((first - 1) / reach - 0.5) / reach;
  const guess = h + length * first * rate;
  if (guess <= lowest && rate <= 0) return lowest;
  if (isTooFar(c, Math.abs(guess - h), length)) {
    const half = stepFrom(space, c, h, length / 2, drawn, rise);
    return stepFrom(space, c, half, length / 2, drawn, rise);
  }
  if (c.length > STRAINER && Math.abs(guess - h) < STRAIGHT) return guess > lowest ? guess : lowest;
  riseAt(space, c, guess, pumped, rise);
  const next = guess + 2 * length * third * (rise[0]! - rate - slope * (guess - h));
  return next > lowest ? next : lowest;
}

function isTooFar(c: Casualty, move: number, length: number): boolean {
  if (c.length > STRAINER) return move > ROUGH_MOVE && length > ROUGH_SHORTEST;
  return move > LARGEST_MOVE && length > SHORTEST;
}

/** Water coming in at a level [m³/s]. */
export function inflowAt(space: SoundedSpace, c: Casualty, h: number): number {
  const sea = c[OUTSIDE]! + riseWith(space, waterUnder(space, c, h));
  const head = Math.max(sea, c[HOLE]!) - Math.max(h, c[HOLE]!);
  return c[STRENGTH]! * Math.sign(head) * Math.sqrt(Math.abs(head));
}
