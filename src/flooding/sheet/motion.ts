import {
  ALL_PLACES,
  AREA_LEAN,
  AREA_SHARE,
  DELIVERY,
  DELIVERY_LEAN,
  HOLE,
  OUTSIDE,
  SEEN_AT,
  stepLevel,
  STRAINER,
  STRENGTH,
} from "../soundings/sounding-model.ts";
import { LEAST_LEAN, roomForSteps } from "../level/step-level.ts";
import type { SoundedSpace } from "../soundings/sounding-space.ts";
import type { Chances } from "./chances.ts";
import type { Cloud } from "./cloud.ts";
import { drawShare, strengthOfArea, THOUGHT } from "./thought.ts";

/** A stretch of time in which nothing told changes: from and to [s], stated flow by pump, 0 where it stands [m³/s]. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly flows: readonly number[];
}

/** Steps are no longer than this [s]. */
const LONGEST = 150;
/** So many of the ways try an untold change between two soundings, however seldom it is; they are weighed back. */
const TRIED = 0.2;
const HOUR = 3600;

/** What is drawn for one interval between two soundings: when an untold change comes, by way; never is infinite. */
export function drawTurns(cloud: Cloud, seconds: number, isSeen: boolean, chances: Chances): Float64Array {
  const chance = 1 - Math.exp(-seconds / THOUGHT.untold.every);
  const tried = isSeen ? Math.max(chance, TRIED) : chance;
  const turns = new Float64Array(cloud.count).fill(Number.POSITIVE_INFINITY);
  for (let n = 0; n < cloud.count; n += 1) {
    const isTried = chances.even() < tried;
    if (isTried) turns[n] = seconds * chances.even();
    cloud.weight[n]! += Math.log(isTried ? chance / tried : (1 - chance) / (1 - tried));
  }
  return turns;
}

/** Slow changes over an interval: hole and pumps wander. */
export function wander(cloud: Cloud, seconds: number, chances: Chances): void {
  const root = Math.sqrt(seconds / HOUR);
  const { drift } = THOUGHT;
  for (let n = 0; n < cloud.count; n += 1) {
    cloud.hole[n]! += drift.hole * root * chances.normal();
    cloud.strainer[n] = Math.max(0, cloud.strainer[n]! + THOUGHT.strainer.shifts * chances.normal());
    for (const share of cloud.shares) {
      const moved = share[n]! * Math.exp(drift.pump * root * chances.normal());
      share[n] = Math.min(THOUGHT.pump.greatest, moved);
    }
  }
}

/**
 * Moves every way through a stretch.
 *
 * @param cloud - moved
 * @param space - being sounded
 * @param stretch - what is told of it
 * @param untold - when an untold change comes, by way [s from the interval's start]; the interval's start [s]; the
 *   number of the reading at its end
 */
export function moveThrough(
  cloud: Cloud,
  space: SoundedSpace,
  stretch: Stretch,
  untold: { readonly turns: Float64Array; readonly start: number; readonly reading: number },
  chances: Chances,
): void {
  const seconds = stretch.to - stretch.from;
  if (seconds <= 0) return;
  const steps = Math.ceil(seconds / LONGEST);
  const length = seconds / steps;
  const work = { casualty: new Float64Array(ALL_PLACES), room: roomForSteps() };
  work.casualty[DELIVERY] = 1;
  const running = stretch.flows.flatMap((flow, p) => (flow > 0 ? [p] : []));
  for (let n = 0; n < cloud.count; n += 1) {
    const turn = untold.start + untold.turns[n]!;
    const before = cloud.level[n]!;
    fill(cloud, n, work.casualty);
    let pumped = pumpedAt(cloud, n, stretch.flows);
    let level = before;
    for (let k = 0; k < steps; k += 1) {
      const at = stretch.from + k * length;
      if (turn >= at && turn < at + length) {
        const isHole = turnUntold(cloud, n, running, chances);
        cloud.turned[n] = isHole ? untold.reading : -untold.reading;
        fill(cloud, n, work.casualty);
        pumped = pumpedAt(cloud, n, stretch.flows);
      }
      level = stepLevel(space, work.casualty, level, length, pumped, work.room);
    }
    settle(cloud, n, level);
    cloud.area[n]! += THOUGHT.drift.area * Math.sqrt(Math.abs(level - before) / 0.1) * chances.normal();
  }
}

/** What a way has by `stepLevel`, area and delivery as where it stands. */
export function fill(cloud: Cloud, n: number, casualty: Float64Array): void {
  casualty[STRENGTH] = Math.exp(cloud.hole[n]!);
  casualty[AREA_SHARE] = Math.exp(cloud.area[n]!);
  casualty[OUTSIDE] = cloud.outside[n]!;
  casualty[HOLE] = cloud.height[n]! * cloud.outside[n]!;
  casualty[STRAINER] = cloud.strainer[n]!;
  casualty[SEEN_AT] = cloud.level[n]!;
  casualty[AREA_LEAN] = cloud.widens[n]!;
  casualty[DELIVERY_LEAN] = cloud.eases[n]!;
}

/** Area and deliveries are those at the level it has come to. */
function settle(cloud: Cloud, n: number, level: number): void {
  const moved = level - cloud.level[n]!;
  cloud.area[n]! += Math.log(Math.max(LEAST_LEAN, 1 + cloud.widens[n]! * moved));
  const eased = Math.max(LEAST_LEAN, 1 + cloud.eases[n]! * moved);
  for (const share of cloud.shares) share[n] = Math.min(THOUGHT.pump.greatest, share[n]! * eased);
  cloud.level[n] = level;
}

function pumpedAt({ shares }: Cloud, n: number, flows: readonly number[]): number {
  let sum = 0;
  for (let p = 0; p < flows.length; p += 1) sum += flows[p]! * shares[p]![n]!;
  return sum;
}

/** A hole grows, is stopped a little or a second one opens (true); a pump blocks, or moves what it will (false). */
function turnUntold(cloud: Cloud, n: number, running: readonly number[], chances: Chances): boolean {
  const { untold, further } = THOUGHT;
  if (running.length === 0 || chances.even() < untold.hole) {
    if (chances.even() < untold.adds) {
      const more = Math.exp(further.logSpread * chances.normal()) * strengthOfArea(further.median);
      cloud.hole[n] = Math.log(Math.exp(cloud.hole[n]!) + more);
    } else cloud.hole[n]! += untold.factor * chances.normal();
    return true;
  }
  const share = cloud.shares[running[Math.floor(running.length * chances.even())]!]!;
  if (chances.even() < untold.blocks) share[n]! *= untold.blocksTo * chances.even();
  else share[n] = drawShare(chances);
  return false;
}

/** A patch told: the share of the hole left open goes by so much, more or less, and may not hold. */
export function tellPatch(cloud: Cloud, open: number, before: number, chances: Chances): void {
  const { patch } = THOUGHT;
  const ratio = Math.log(Math.max(patch.weeps, open) / Math.max(patch.weeps, before));
  const spread = open <= patch.weeps ? patch.tightSpread : patch.logSpread;
  for (let n = 0; n < cloud.count; n += 1) {
    const isHeld = ratio > 0 || chances.even() >= patch.fails;
    cloud.hole[n]! += isHeld ? ratio + (ratio === 0 ? 0 : spread * chances.normal()) : ratio * chances.even();
  }
  cloud.turned.fill(0);
}

/** What was seen at a pump's discharge. */
export type PumpSign = "water" | "no-water" | "sucks-air" | "weak" | "wont-start";

/** What shares a sign leaves: between these; where a way is outside them it is drawn anew within. */
const SIGNS: Readonly<Record<PumpSign, readonly [from: number, to: number]>> = {
  water: [0.1, THOUGHT.pump.greatest],
  "no-water": [0, 0.03],
  "wont-start": [0, 0.01],
  "sucks-air": [0, 0.6],
  weak: [0.08, 0.65],
};

/** A sign seen of one pump. */
export function tellSign(share: Float64Array, sign: PumpSign, chances: Chances): void {
  const [from, to] = SIGNS[sign];
  for (let n = 0; n < share.length; n += 1) {
    if (share[n]! >= from && share[n]! <= to) continue;
    if (sign !== "water") share[n] = from + (to - from) * chances.even();
    else while (share[n]! < from) share[n] = drawShare(chances);
  }
}
