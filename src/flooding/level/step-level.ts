import { LINEAR_BELOW } from "../openings/opening.ts";
import { riseWith, seaWith, shapeAt, volumeAt, type SoundedSpace } from "../soundings/sounding-space.ts";
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

/**
 * What a step works on, kept in one row of numbers: handed over one by one each would be put on the heap, at a third of
 * the cost of an answer. From where and how long it is taken; what is pumped, and the least it comes to; the level looked
 * at; rate of rise and its slope there.
 */
const FROM = 0;
const LENGTH = 1;
const PUMPED = 2;
const LOWEST = 3;
const LOOKED_AT = 4;
const RATE = 5;
const SLOPE = 6;

/** Room for one step after another. */
export function roomForSteps(): Float64Array {
  return new Float64Array(7);
}

/** Writes the rate of rise at the level looked at [m/s] and its slope [1/s]. */
function riseAt(space: SoundedSpace, c: Casualty, room: Float64Array): void {
  const h = room[LOOKED_AT]!;
  const pumped = room[PUMPED]!;
  const isWay = c.length > STRAINER;
  const share = c[AREA_SHARE]!;
  shapeAt(space, h, room, RATE);
  const plain = room[RATE]!;
  const area = (isWay ? share * leanAt(c, AREA_LEAN, h) : share) * plain;
  seaWith(space, (isWay ? share * leanAt(c, AREA_LEAN, h / 2) : share) * room[SLOPE]!, room, RATE);
  const sinks = room[SLOPE]!;
  const sea = c[OUTSIDE]! + room[RATE]!;
  const hole = c[HOLE]!;
  const head = (sea > hole ? sea : hole) - (h > hole ? h : hole);
  const size = head < 0 ? -head : head;
  const isSmall = size < LINEAR_BELOW;
  const root = isSmall ? SMALL_ROOT : Math.sqrt(size);
  const strength = c[STRENGTH]!;
  const inflow = isSmall ? (strength * head) / root : head < 0 ? -strength * root : strength * root;
  const lean = sinks * area - (h > hole ? 1 : 0);
  const taken = pumped === 0 ? 0 : pumped * c[DELIVERY]! * (isWay ? leanAt(c, DELIVERY_LEAN, h) : 1);
  const rate = (inflow - taken) / area;
  const slope = (strength / (isSmall ? root : 2 * root)) * (lean / area);
  room[RATE] = rate;
  if (isWay) {
    const eased = pumped * c[DELIVERY]! * c[DELIVERY_LEAN]!;
    room[SLOPE] = slope - (eased + rate * c[AREA_LEAN]! * share * plain) / area;
  } else room[SLOPE] = slope;
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

/**
 * One step on, from a level, of a length [s], with so much pumped; in `room` of `roomForSteps`. A pump that is down to its
 * strainer takes what comes in, and no more.
 */
export function stepLevel(
  space: SoundedSpace,
  c: Casualty,
  h: number,
  length: number,
  pumped: number,
  room: Float64Array,
): number {
  if (h > GONE * topOf(space)) return h;
  const strainer = c.length > STRAINER && pumped > 0 ? c[STRAINER]! : 0;
  room[FROM] = h;
  room[LENGTH] = length;
  room[PUMPED] = pumped;
  room[LOWEST] = strainer;
  if (strainer > 0 && h <= strainer) return stepFromStrainer(space, c, strainer, room);
  stepOn(space, c, room);
  return room[FROM]!;
}

/** From below the strainer: nothing is pumped until it is covered. */
function stepFromStrainer(space: SoundedSpace, c: Casualty, strainer: number, room: Float64Array): number {
  const length = room[LENGTH]!;
  const pumped = room[PUMPED]!;
  room[PUMPED] = 0;
  room[LOWEST] = 0;
  stepOn(space, c, room);
  const bare = room[FROM]!;
  if (bare <= strainer) return bare;
  room[FROM] = strainer;
  room[LENGTH] = length;
  room[PUMPED] = pumped;
  room[LOWEST] = strainer;
  stepOn(space, c, room);
  return Math.max(strainer, room[FROM]!);
}

/** Water so much higher than the space is that of a boat long lost: how it rises from there is of no use to anybody. */
const GONE = 1.5;

/** Height of a boat's space [m]; upright sides have none. */
function topOf({ areas, step }: SoundedSpace): number {
  return areas.length > 2 ? step * (areas.length - 1) : Number.POSITIVE_INFINITY;
}

/** The step that is laid out in `room`: where it came to is where the next would begin. */
function stepOn(space: SoundedSpace, c: Casualty, room: Float64Array): void {
  const h = room[FROM]!;
  const length = room[LENGTH]!;
  const lowest = room[LOWEST]!;
  room[LOOKED_AT] = h;
  riseAt(space, c, room);
  const rate = room[RATE]!;
  const slope = room[SLOPE]!;
  const reach = Math.min(slope * length, 20);
  const isShort = reach > -SERIES_REACH && reach < SERIES_REACH;
  const first = isShort ? firstBySeries(reach) : Math.expm1(reach) / reach;
  const guess = h + length * first * rate;
  const move = Math.abs(guess - h);
  if (guess <= lowest && rate <= 0) room[FROM] = lowest;
  else if (isTooFar(c, move, length)) stepTwice(space, c, length / 2, room);
  else if (c.length > STRAINER && move < STRAIGHT) room[FROM] = guess > lowest ? guess : lowest;
  else {
    room[LOOKED_AT] = guess;
    riseAt(space, c, room);
    const third = isShort ? thirdBySeries(reach) : ((first - 1) / reach - 0.5) / reach;
    const next = guess + 2 * length * third * (room[RATE]! - rate - slope * (guess - h));
    room[FROM] = next > lowest ? next : lowest;
  }
}

function stepTwice(space: SoundedSpace, c: Casualty, length: number, room: Float64Array): void {
  room[LENGTH] = length;
  stepOn(space, c, room);
  room[LENGTH] = length;
  stepOn(space, c, room);
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
