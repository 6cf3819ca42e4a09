import { headOver } from "../openings/opening.ts";

/** One upright space in a vessel held at a level: one hole, one steady pump. SI units, heights above the floor. */
export interface HeldSpace {
  readonly area: number;
  /** Cd·A·√(2g) of the hole, see `strengthOf` [m^2.5/s]. */
  readonly strength: number;
  readonly hole: number;
  readonly outside: number;
  readonly pumped: number;
}

/** Stretches with one law each: at most so many follow one another. */
const MOST_STRETCHES = 8;
const NEWTON = 60;

/**
 * Level in a held space after a time, exactly: the judge of the simulation, and a thousand times quicker.
 *
 * Hole above the level: constant inflow. Hole drowned, u = √|head|, u_e = ±Q/K, τ = K t/2A:
 * u_e·s + (u₀ − u_e)(1 − e^(−s)) = τ, u = u_e + (u₀ − u_e)e^(−s). A dry floor stays dry while the pump can take it.
 *
 * @param space - the space
 * @param start - level at the start [m]
 * @param seconds - time [s]
 * @returns level [m]
 * @range √head taken to the last: no straight piece near equal levels
 * @source DERIVED (the Lambert-W solution written without it); docs/methods/flooding.md, "Closed form"
 * @example levelAfter({ area: 12, strength: 0.0208697, hole: 0, outside: 1.5, pumped: 0 }, 0, 704.2233) // 1.125
 */
export function levelAfter(space: HeldSpace, start: number, seconds: number): number {
  let [level, left] = [start, seconds];
  for (let k = 0; k < MOST_STRETCHES && left > 0; k += 1) {
    const next = isDrowned(space, level) ? throughDrowned(space, level, left) : aboveWater(space, level, left);
    left -= next.spent;
    level = next.level;
    if (next.rests) break;
  }
  return level;
}

interface Stretch {
  readonly level: number;
  readonly spent: number;
  /** Nothing changes any more. */
  readonly rests?: true;
}

function isDrowned(space: HeldSpace, level: number): boolean {
  if (level > space.hole) return true;
  return level === space.hole && rateAt(space, level) >= 0;
}

function rateAt(space: HeldSpace, level: number): number {
  const head = headOver(space.hole, space.outside, level);
  return (space.strength * Math.sign(head) * Math.sqrt(Math.abs(head)) - space.pumped) / space.area;
}

function aboveWater(space: HeldSpace, level: number, left: number): Stretch {
  const rate = rateAt(space, level);
  if (rate === 0 || (level <= 0 && rate < 0)) return { level: Math.max(0, level), spent: left, rests: true };
  const end = rate > 0 ? space.hole : 0;
  const spent = (end - level) / rate;
  return spent >= left ? { level: level + rate * left, spent: left } : { level: end, spent };
}

function throughDrowned(space: HeldSpace, level: number, left: number): Stretch {
  const still = stillLevel(space);
  const isFilling = level <= still;
  const rest = (isFilling ? 1 : -1) * (space.pumped / space.strength);
  const first = Math.sqrt(Math.abs(still - level));
  const rate = space.strength / (2 * space.area);
  const last = isFilling ? Math.sqrt(Math.max(0, space.outside - Math.max(space.hole, 0))) : 0;
  const isBound = rest > last || (!isFilling && rest <= 0) || (isFilling && rest === 0);
  const goal = isFilling && rest === 0 ? 0 : last;
  const reach = isBound ? spentTo(first, goal, rest, rate) : Number.POSITIVE_INFINITY;
  if (reach <= left) {
    const there = isFilling ? still - goal ** 2 : still;
    return { level: there, spent: reach, ...endsThere(space, there) };
  }
  const root = rootAfter(first, rest, rate * left);
  return { level: still + (isFilling ? -1 : 1) * root ** 2, spent: left };
}

/** Level inside at which nothing passes a drowned hole: the sea's, or the hole's own where that lies higher. */
function stillLevel(space: HeldSpace): number {
  return Math.max(space.outside, space.hole);
}

function endsThere(space: HeldSpace, level: number): { rests?: true } {
  const isEven = level === stillLevel(space) && space.pumped === 0;
  return isEven || (level <= 0 && rateAt(space, 0) <= 0) ? { rests: true } : {};
}

/** Time for √head to go from one value to another. */
function spentTo(first: number, last: number, rest: number, rate: number): number {
  const s = rest === 0 ? 0 : Math.log((first - rest) / (last - rest));
  return (first - last + rest * s) / rate;
}

/** √head after τ: Newton on s, where u_e·s + (u₀ − u_e)(1 − e^(−s)) = τ. */
function rootAfter(first: number, rest: number, tau: number): number {
  if (rest === 0) return Math.max(0, first - tau);
  const far = first - rest;
  if (far === 0) return first;
  let s = tau / Math.max(first, Math.abs(rest));
  for (let i = 0; i < NEWTON; i += 1) {
    const fade = Math.exp(-s);
    const step = (rest * s + far * (1 - fade) - tau) / (rest + far * fade);
    s -= step;
    if (Math.abs(step) <= 1e-15 * (1 + Math.abs(s))) break;
  }
  return rest + far * Math.exp(-s);
}
