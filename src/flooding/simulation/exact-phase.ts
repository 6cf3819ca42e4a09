import type { Crossing, OdeSolution } from "#numerics";
import type { Body } from "../hull/body.ts";
import type { Seen, Watch } from "./flood-watch.ts";
import {
  inflowWith,
  limitBeyond,
  netWith,
  pumpedWith,
  steadyLaw,
  stretchAround,
  type SteadyLaw,
} from "./steady-law.ts";
import { surfaceWith, waterAtSea, waterAtSurface, type StraightSpace } from "../hull/straight-space.ts";
import { isSound, timeBetween, waterAfter, type StretchLaw } from "./stretch-law.ts";
import type { Piping } from "../openings/flows.ts";

/** More stretches than this are carried by the general integrator. */
const MOST_STRETCHES = 24;
/** As the general integrator's events: nearer to zero a value has no side. */
const DEAD = 1e-10;

/** What a phase begins with. */
export interface PhaseStart {
  readonly body: Body;
  readonly piping: Piping;
  readonly t: number;
  /** Water, the sea's inflow, the pumps' total [m³]. */
  readonly y: Float64Array;
  /** [m]; see `LINEAR_BELOW`. */
  readonly linearBelow: number;
}

interface Start {
  readonly t: number;
  readonly y: Float64Array;
}

interface Stretch {
  readonly from: number;
  readonly water: number;
  readonly law: StretchLaw;
}

interface Travel {
  readonly stretches: Stretch[];
  t: number;
  water: number;
  stop: Watch | undefined;
}

/**
 * Carries one straight space from one event to the next exactly, where one hole or pipe to the sea and steady pumps,
 * or one pump on a parabola, are all that moves water. Its water then only rises or only falls.
 *
 * @param given - state, piping and space
 * @param until - time of the next known change [s]
 * @param watches - what may happen
 * @returns the phase as the integrator would give it; undefined where it must carry the phase
 * @source DERIVED: docs/methods/flooding.md, "Closed form"
 */
export function carryExactly(given: PhaseStart, until: number, watches: readonly Watch[]): OdeSolution | undefined {
  const { body, piping, t, y, linearBelow } = given;
  const space = body.straight;
  const law = space && steadyLaw(space, piping, y[0]!, linearBelow);
  if (space === undefined || law === undefined) return undefined;
  const start = { t, y };
  const travel = travelOn(start, space, law, watches, until);
  if (travel === undefined || !isWithin(start, space, law, travel)) return undefined;
  return solutionOf(start, law, travel, passedOn(start, space, travel, watches));
}

/** From stretch to stretch until the first watch that stops the run, or the end. */
function travelOn(
  start: Start,
  space: StraightSpace,
  law: SteadyLaw,
  watches: readonly Watch[],
  until: number,
): Travel | undefined {
  const travel: Travel = { stretches: [], t: start.t, water: start.y[0]!, stop: undefined };
  const way = Math.sign(netWith(law, travel.water));
  const stop = way === 0 ? undefined : nearestStop(space, watches, travel.water, way);
  while (travel.t < until && travel.stop === undefined) {
    if (travel.stretches.length === MOST_STRETCHES) return undefined;
    if (!advance(travel, law, way, stop, until)) return undefined;
  }
  return travel;
}

interface Stop {
  readonly watch: Watch;
  readonly water: number;
}

/** One stretch further; false where no law carries it: from a dry floor something else goes on. */
function advance(travel: Travel, law: SteadyLaw, way: number, stop: Stop | undefined, until: number): boolean {
  const limit = limitBeyond(law, travel.water, way);
  const isStop = stop !== undefined && (stop.water - limit) * way <= 0;
  const goal = isStop ? stop.water : limit;
  const stretch = { from: travel.t, water: travel.water, law: stretchAround(law, middleOf(travel.water, goal, way)) };
  if (!isSound(stretch.law)) return false;
  travel.stretches.push(stretch);
  const time =
    way === 0 || !Number.isFinite(goal) ? Number.POSITIVE_INFINITY : timeBetween(stretch.law, travel.water, goal);
  if (travel.t + time > until) {
    travel.water = waterAfter(stretch.law, travel.water, until - travel.t);
    travel.t = until;
    return true;
  }
  travel.t += time;
  travel.water = goal;
  if (isStop) travel.stop = stop.watch;
  return isStop || goal > 0;
}

function middleOf(water: number, limit: number, way: number): number {
  return Number.isFinite(limit) ? (water + limit) / 2 : water + way;
}

/** Where on its way the water meets something seen. */
function thresholdOf(space: StraightSpace, seen: Seen | undefined): number {
  if (seen === undefined) return Number.NaN;
  if (seen.what === "water") return seen.at;
  return seen.what === "sea" ? waterAtSea(space, seen.at) : waterAtSurface(space, seen.at);
}

function valueOf(space: StraightSpace, seen: Seen, water: number): number {
  if (seen.what === "water") return water - seen.at;
  const height = seen.what === "sea" ? space.seaDry + space.seaRise * water : surfaceWith(space, water);
  return height - seen.at;
}

/** It has a side to come from, lies ahead, and its passing that way is heard. */
function isAhead(space: StraightSpace, watch: Watch, water: number, way: number): boolean {
  const { seen, event } = watch;
  if (seen === undefined || !(Math.abs(valueOf(space, seen, water)) > DEAD)) return false;
  const isRising = way > 0 !== (seen.falls === true);
  if (event.direction !== "either" && (event.direction === "rising") !== isRising) return false;
  const there = thresholdOf(space, seen);
  return (there - water) * way > 0 && (there > 0 || seen.what === "strainer");
}

function nearestStop(space: StraightSpace, watches: readonly Watch[], water: number, way: number): Stop | undefined {
  let nearest: Stop | undefined;
  for (const watch of watches) {
    if (!watch.event.terminal || !isAhead(space, watch, water, way)) continue;
    const at = thresholdOf(space, watch.seen);
    if (nearest === undefined || (at - nearest.water) * way < 0) nearest = { watch, water: at };
  }
  return nearest;
}

/** The lines held on the whole way, and nothing ran out of a space as good as empty. */
function isWithin(start: Start, space: StraightSpace, law: SteadyLaw, travel: Travel): boolean {
  const [low, high] = [Math.min(start.y[0]!, travel.water), Math.max(start.y[0]!, travel.water)];
  if (!Number.isFinite(travel.water) || !space.holds(low, high)) return false;
  return low >= 1e-6 * Math.min(space.capacity, 10) || inflowWith(law, low) >= 0;
}

/** What was passed on the way, and all that is met where the phase was stopped. */
function passedOn(start: Start, space: StraightSpace, travel: Travel, watches: readonly Watch[]): Passed[] {
  const way = Math.sign(travel.water - start.y[0]!);
  const passed: Passed[] = [];
  for (const watch of watches) {
    if (way === 0 || !isAhead(space, watch, start.y[0]!, way)) continue;
    const water = thresholdOf(space, watch.seen);
    const isMet = Math.abs(valueOf(space, watch.seen!, travel.water)) <= DEAD;
    if (isMet && travel.stop !== undefined) passed.push({ watch, water: travel.water, at: travel.t });
    else if (!isMet && (travel.water - water) * way > 0) passed.push({ watch, water, at: timeAt(travel, water, way) });
  }
  return passed.sort((a, b) => a.at - b.at);
}

interface Passed extends Stop {
  readonly at: number;
}

function timeAt(travel: Travel, water: number, way: number): number {
  const { stretches } = travel;
  let k = stretches.length - 1;
  while (k > 0 && (water - stretches[k]!.water) * way < 0) k -= 1;
  return Math.min(travel.t, stretches[k]!.from + timeBetween(stretches[k]!.law, stretches[k]!.water, water));
}

function solutionOf(start: Start, law: SteadyLaw, travel: Travel, passed: readonly Passed[]): OdeSolution {
  const { t, water, stop } = travel;
  return {
    kind: stop === undefined ? "finished" : "stopped",
    because: stop?.name ?? "the span is done",
    t,
    y: stateWith(start, law, t, water),
    crossings: passed.map((one) => crossingOf(one, water > start.y[0]!, stateWith(start, law, one.at, one.water))),
    counters: { steps: travel.stretches.length, rejected: 0, rates: 0 },
    at: (when) => stateWith(start, law, Math.min(when, t), when >= t ? water : waterAt(travel, when)),
  };
}

/** All that came in and did not stay was pumped. */
function stateWith(start: Start, law: SteadyLaw, t: number, water: number): Float64Array {
  const y = new Float64Array(3);
  const grown = water - start.y[0]!;
  const pumped = pumpedWith(law, t - start.t, grown);
  y[0] = water;
  y[1] = start.y[1]! + grown + pumped;
  y[2] = start.y[2]! + pumped;
  return y;
}

function crossingOf({ watch, at }: Passed, isUp: boolean, y: Float64Array): Crossing {
  return { event: watch.event, at, y, rising: isUp !== (watch.seen!.falls === true) };
}

function waterAt(travel: Travel, t: number): number {
  const { stretches } = travel;
  let k = stretches.length - 1;
  while (k > 0 && stretches[k]!.from > t) k -= 1;
  const { from, water, law } = stretches[k]!;
  return waterAfter(law, water, t - from);
}
