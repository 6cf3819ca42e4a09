import { rootBetween } from "./quadrature.ts";

/** g of the published rows [m/s²]. */
const G = 9.80665;

/** K of Q = K·√head for a hole of Cd 0.6 [m^2.5/s]. */
export const strengthOfHole = (area: number): number => 0.6 * area * Math.sqrt(2 * G);

/** K of a broken pipe: A·√(2g/(1 + ΣK + f·L/D)). */
export function strengthOfPipe(pipe: { bore: number; length: number; friction: number; fittings: number }): number {
  const losses = 1 + pipe.fittings + (pipe.friction * pipe.length) / pipe.bore;
  return (Math.PI / 4) * pipe.bore ** 2 * Math.sqrt((2 * G) / losses);
}

/** One upright space with its floor at 0, the sea held at a level, one hole, one steady pump. SI units. */
export interface HeldFlood {
  /** Plan area times permeability. */
  readonly area: number;
  readonly strength: number;
  readonly hole: number;
  readonly outside: number;
  readonly pumped: number;
}

/**
 * Seconds from one level to another, rising or falling. DERIVED:
 *
 * Below the hole the inflow is constant: A·Δh/(K·√(H − z) − Q).
 *
 * Above it, up to the sea, u = √(H − h), dh = −2u du, e = Q/K:
 * ∫A dh/(K u − Q) = (2A/K)·∫u/(u − e) du = (2A/K)·[u₀ − u₁ + e·ln((u₀ − e)/(u₁ − e))].
 *
 * Above sea and hole it runs out: u = √(h − max(H, z)), (2A/K)·[u₀ − u₁ − e·ln((u₀ + e)/(u₁ + e))].
 */
export function secondsBetween(space: HeldFlood, from: number, to: number): number {
  const rest = Math.max(space.hole, space.outside);
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  if (high > rest) return outward(space, from, to, rest);
  if (low < space.hole && high > space.hole) {
    return secondsBetween(space, from, space.hole) + secondsBetween(space, space.hole, to);
  }
  return high <= space.hole ? belowHole(space, from, to) : inward(space, from, to);
}

function belowHole({ area, strength, hole, outside, pumped }: HeldFlood, from: number, to: number): number {
  return (area * (to - from)) / (strength * Math.sqrt(Math.max(0, outside - hole)) - pumped);
}

function inward({ area, strength, outside, pumped }: HeldFlood, from: number, to: number): number {
  const [first, last, e] = [Math.sqrt(outside - from), Math.sqrt(outside - to), pumped / strength];
  const pumps = e === 0 ? 0 : e * Math.log((first - e) / (last - e));
  return ((2 * area) / strength) * (first - last + pumps);
}

function outward({ area, strength, pumped }: HeldFlood, from: number, to: number, rest: number): number {
  const [first, last, e] = [Math.sqrt(from - rest), Math.sqrt(to - rest), pumped / strength];
  return ((2 * area) / strength) * (first - last - (e === 0 ? 0 : e * Math.log((first + e) / (last + e))));
}

/** Level after so many seconds, where it lies between two levels on the way. */
export function levelAfterSeconds(
  space: HeldFlood,
  from: number,
  seconds: number,
  [low, high]: readonly [number, number],
): number {
  return rootBetween((level) => secondsBetween(space, from, level) - seconds, low, high);
}
