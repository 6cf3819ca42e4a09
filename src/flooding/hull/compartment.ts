import { A, AX, AY, INTEGRALS, MX, MY, MZ, V, type Gauge, type Plane, type Window } from "./hull-integrals.ts";
import type { Hull } from "./hull-form.ts";

/** A space between bulkheads that water can stand in. */
export interface Compartment {
  readonly name: string;
  /** After and forward bulkhead, from the after end of the hull [m]. */
  readonly from: number;
  readonly to: number;
  /** Share of the space that water can fill, 0 < μ ≤ 1. */
  readonly permeability: number;
  /** Limits to port and starboard of the centre line, starboard positive [m]. Default: the shell on both sides. */
  readonly sideFrom?: number;
  readonly sideTo?: number;
  /** Floor and ceiling above the keel [m]. Default: shell and deck. */
  readonly floor?: number;
  readonly top?: number;
  /** Water in it at the start, as a level above the keel amidships of the space [m] … */
  readonly level?: number;
  /** … or as a volume [m³]. */
  readonly water?: number;
}

/** Permeabilities by what is in the space: 46 CFR 172.240 (also 171.072). */
export const PERMEABILITIES = {
  stores: 0.6,
  accommodation: 0.95,
  machinery: 0.85,
  void: 0.95,
} as const;

/** The part of the hull a compartment takes up. */
export function windowOf(compartment: Compartment): Window {
  return {
    x0: compartment.from,
    x1: compartment.to,
    y0: compartment.sideFrom ?? Number.NEGATIVE_INFINITY,
    y1: compartment.sideTo ?? Number.POSITIVE_INFINITY,
    z0: compartment.floor ?? Number.NEGATIVE_INFINITY,
    z1: compartment.top ?? Number.POSITIVE_INFINITY,
  };
}

/**
 * A compartment with water in it, between two settlings. One per compartment and run.
 *
 * Above its ceiling the water stands in a thin imagined pipe, so that a full space can still be pressed up to the
 * outside level; the pipe holds a two-hundredth of the space.
 */
export interface Tank {
  readonly window: Window;
  readonly permeability: number;
  /** Greatest volume of water [m³]. */
  readonly capacity: number;
  /** Integrals of the space under its own water surface, from the last `fill`. */
  readonly integrals: Float64Array;
  /** Water surface: height of its plane at the after end on the centre line [m]. */
  height: number;
  /** Sets the water to so many m³ under a surface with these slopes. */
  fill(volume: number, slopeX: number, slopeY: number): void;
}

const PIPE_SHARE = 1 / 200;
/** Less than this share of a space is no water. */
const DRY_SHARE = 1e-12;
const FAR = 1e6;
/** The last share of a space to fill: in a trimmed or heeled one its surface shrinks to nothing, its level leaps. */
const LAST_CORNER = 1e-4;

/** Makes the tank of a compartment: no water in it yet. */
export function makeTank(hull: Hull, gauge: Gauge, window: Window, permeability: number): Tank {
  const full = gauge.measure({ height: FAR, slopeX: 0, slopeY: 0 }, window, new Float64Array(INTEGRALS));
  const space = full[V]!;
  const slopes = { x: 0, y: 0 };
  const reach = tallness(hull, window);
  const tank: Tank = {
    window,
    permeability,
    capacity: space * permeability,
    integrals: new Float64Array(INTEGRALS),
    height: Number.NaN,
    fill(volume, slopeX, slopeY) {
      const wanted = volume / permeability;
      const bounds = heightBounds(hull, window, slopeX, slopeY);
      if (wanted <= space * DRY_SHARE) {
        tank.height = bounds[0];
        tank.integrals.fill(0);
      } else if (wanted >= space) {
        tank.height = bounds[1] + ((wanted - space) * reach) / (space * PIPE_SHARE);
        tank.integrals.set(full);
      } else {
        const below = Math.min(wanted, space * (1 - LAST_CORNER));
        const guess = turned(tank, slopeX - slopes.x, slopeY - slopes.y, below);
        tank.height = findHeight(gauge, { window, slopeX, slopeY, bounds, wanted: below, guess }, tank.integrals);
        if (wanted > below) pressInto(tank, full, bounds[1], (wanted - below) / (space - below));
      }
      slopes.x = slopeX;
      slopes.y = slopeY;
    },
  };
  return tank;
}

/** Into the last corner the water is pressed as into the pipe above it: a share of the way from nearly full to full. */
function pressInto(tank: Tank, full: Float64Array, top: number, share: number): void {
  const { integrals } = tank;
  for (let k = 0; k < INTEGRALS; k += 1) integrals[k]! += share * (full[k]! - integrals[k]!);
  tank.height += share * (top - tank.height);
}

/** Where the surface stands after a small turn about its own middle and a little more water. */
function turned(tank: Tank, turnX: number, turnY: number, wanted: number): number {
  const { integrals, height } = tank;
  if (!(integrals[A]! > 0)) return height;
  return height + (wanted - integrals[V]! - integrals[AX]! * turnX - integrals[AY]! * turnY) / integrals[A]!;
}

function tallness(hull: Hull, window: Window): number {
  return Math.min(window.z1, hull.depth) - Math.max(window.z0, 0);
}

/** Heights of a plane that just misses the space below, and just covers it. */
function heightBounds(hull: Hull, window: Window, slopeX: number, slopeY: number): readonly [number, number] {
  const [aft, fore] = [slopeX * Math.max(window.x0, 0), slopeX * Math.min(window.x1, hull.length)];
  const port = slopeY * Math.max(window.y0, -hull.beam / 2);
  const starboard = slopeY * Math.min(window.y1, hull.beam / 2);
  const bottom = Math.max(window.z0, 0);
  const lowest = bottom - Math.max(aft, fore) - Math.max(port, starboard);
  return [lowest, bottom + tallness(hull, window) - Math.min(aft, fore) - Math.min(port, starboard)];
}

interface HeightSearch {
  readonly window: Window;
  readonly slopeX: number;
  readonly slopeY: number;
  readonly bounds: readonly [number, number];
  readonly wanted: number;
  readonly guess: number;
}

/**
 * Newton's correction of a volume. Far off, on the root of the volume instead: water in a corner grows with the square
 * of its depth or faster.
 */
function stepOf(volume: number, wanted: number): number {
  if (volume < 2 * wanted && wanted < 2 * volume) return volume - wanted;
  return 2 * (volume - Math.sqrt(volume * wanted));
}

/** So near to the volume wanted the surface is lifted by the rest as it is: what is left is the square of this. */
const SO_NEAR = 1e-10;

/** Takes a sliver off under the plane; returns the height without it. */
function lifted(plane: Plane, excess: number, out: Float64Array): number {
  const [area, ax, ay] = [out[A]!, out[AX]!, out[AY]!];
  const lift = -excess / area;
  out[V]! -= excess;
  out[MX]! += lift * ax;
  out[MY]! += lift * ay;
  out[MZ]! += lift * (plane.height * area + plane.slopeX * ax + plane.slopeY * ay);
  return plane.height + lift;
}

/** Newton on the volume under the plane, held inside a shrinking bracket. */
function findHeight(gauge: Gauge, search: HeightSearch, out: Float64Array): number {
  let [low, high] = search.bounds;
  let height = search.guess > low && search.guess < high ? search.guess : (low + high) / 2;
  for (let i = 0; i < 100; i += 1) {
    const plane: Plane = { height, slopeX: search.slopeX, slopeY: search.slopeY };
    gauge.measure(plane, search.window, out);
    const excess = out[V]! - search.wanted;
    if (Math.abs(excess) <= 1e-14 * search.wanted || high - low < 1e-14) break;
    if (Math.abs(excess) <= SO_NEAR * search.wanted && out[A]! > 0) return lifted(plane, excess, out);
    if (excess > 0) high = height;
    else low = height;
    const next = out[A]! > 0 ? height - stepOf(out[V]!, search.wanted) / out[A]! : Number.NaN;
    if (Math.abs(next - height) < 1e-15 * (1 + Math.abs(height))) break;
    height = next > low && next < high ? next : (low + high) / 2;
  }
  return height;
}
