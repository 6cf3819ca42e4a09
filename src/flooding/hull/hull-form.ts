import { firstOf, lastOf, nth } from "#base";

/**
 * The hull as given. Lengths in metres. x runs forward from the after end, y to starboard from the centre line,
 * z up from the keel.
 */
export type HullForm =
  /** Flat sides, flat bottom, square ends. */
  | (HullSize & { readonly form: "box" })
  /** V sections from the keel to full beam at the deck, the same all along. */
  | (HullSize & { readonly form: "wedge" })
  /** Ends drawn in and sections rounded so that the block coefficient comes out. */
  | (HullSize & { readonly form: "family"; readonly blockCoefficient: number })
  /** y = (B/2)(1 − (2x/L)²)(1 − ((T − z)/T)²) up to the design draught, upright above it. */
  | (HullSize & { readonly form: "wigley" })
  /** Half-breadths at heights, at stations along the length; straight lines between. */
  | { readonly form: "offsets"; readonly draught?: number; readonly stations: readonly Station[] };

export interface HullSize {
  readonly length: number;
  readonly beam: number;
  /** Keel to deck edge [m]. */
  readonly depth: number;
  /** Draught the form is drawn for, and floats at unless said otherwise [m]. */
  readonly draught: number;
}

export interface Station {
  /** From the after end [m]. */
  readonly x: number;
  /** From the lowest point up. */
  readonly offsets: readonly { readonly z: number; readonly halfBreadth: number }[];
}

/** A hull ready to be measured. */
export interface Hull {
  readonly length: number;
  readonly beam: number;
  readonly depth: number;
  readonly draught: number;
  /** Panel limits along x, from 0 to the length. */
  readonly breaks: readonly number[];
  /** Gauss points per panel along x, and per piece along z. */
  readonly orderAlong: number;
  readonly orderUp: number;
  /** Edges that run the whole length unchanged: where the water's plane leaves them, panels are split. */
  readonly corners: readonly { readonly y: number; readonly z: number }[];
  /** Writes the pieces of the section at x; returns how many. */
  sectionAt(x: number, out: Float64Array): number;
}

/**
 * A piece of a section is five numbers: from z, to z, and c0, c1, c2 of the half-breadth b(z) = c0 + c1 z + c2 z².
 */
export const PIECE = 5;
/** Most pieces in a section. */
export const MOST_PIECES = 64;

/**
 * Makes a hull of a form already found valid (see `checkHullForm`).
 *
 * @param form - the form as given, lengths in [m]
 * @returns the hull ready to be measured
 * @source DERIVED: see docs/methods/flooding.md, "Hull forms"
 * @example makeHull({ form: "box", length: 9, beam: 2.6, depth: 1.2, draught: 0.7 }).breaks // [0, 9]
 */
export function makeHull(form: HullForm): Hull {
  if (form.form === "box") return boxHull(form);
  if (form.form === "wedge") return wedgeHull(form);
  if (form.form === "wigley") return productHull(form, 2, 1);
  if (form.form === "family") return familyHull(form);
  return offsetsHull(form.stations, form.draught);
}

function boxHull(size: HullSize): Hull {
  const half = size.beam / 2;
  return {
    ...sizeOf(size),
    breaks: [0, size.length],
    orderAlong: 3,
    orderUp: 2,
    corners: [
      { y: half, z: 0 },
      { y: -half, z: 0 },
      { y: half, z: size.depth },
      { y: -half, z: size.depth },
    ],
    sectionAt: (_x, out) => writePiece(out, 0, [0, size.depth, half, 0, 0]),
  };
}

function wedgeHull(size: HullSize): Hull {
  const half = size.beam / 2;
  return {
    ...sizeOf(size),
    breaks: [0, size.length],
    orderAlong: 3,
    orderUp: 2,
    corners: [
      { y: 0, z: 0 },
      { y: half, z: size.depth },
      { y: -half, z: size.depth },
    ],
    sectionAt: (_x, out) => writePiece(out, 0, [0, size.depth, 0, half / size.depth, 0]),
  };
}

/**
 * Section coefficient of the family: rounder sections on fuller boats, 2/3 (a parabola) up to a block coefficient of
 * 4/9, 0.97 from 0.8 on. A choice of this program, not a regression.
 */
function familySection(block: number): number {
  const share = Math.min(1, Math.max(0, (block - 4 / 9) / (0.8 - 4 / 9)));
  return 2 / 3 + share * (0.97 - 2 / 3);
}

function familyHull(form: HullSize & { readonly blockCoefficient: number }): Hull {
  const section = familySection(form.blockCoefficient);
  const lengthwise = form.blockCoefficient / section;
  return productHull(form, lengthwise / (1 - lengthwise), 3 * (1 - section));
}

/**
 * b(x, z) = (B/2)·(1 − |2x/L − 1|ⁿ)·(1 − a((T − z)/T)²); CB = n/(n + 1)·(1 − a/3).
 * n = 2 and a = 1 is the Wigley hull.
 */
function productHull(size: HullSize, n: number, a: number): Hull {
  const { length, draught, depth } = size;
  const isPolynomial = n === 2;
  return {
    ...sizeOf(size),
    breaks: isPolynomial ? [0, length / 2, length] : gradedBreaks(length),
    orderAlong: isPolynomial ? 8 : 5,
    orderUp: 3,
    corners: [{ y: 0, z: 0 }],
    sectionAt(x, out) {
      const half = (size.beam / 2) * Math.max(0, 1 - Math.abs((2 * x) / length - 1) ** n);
      const bend = (half * a) / (draught * draught);
      const top = Math.min(draught, depth);
      const count = writePiece(out, 0, [0, top, half * (1 - a), 2 * bend * draught, -bend]);
      return depth > draught ? writePiece(out, count, [draught, depth, half, 0, 0]) : count;
    },
  };
}

function gradedBreaks(length: number): number[] {
  const steps = [0, 0.02, 0.12, 0.4, 1];
  const after = steps.map((s) => (length / 2) * (1 - s)).reverse();
  const fore = steps.slice(1).map((s) => (length / 2) * (1 + s));
  return [...after, ...fore];
}

function sizeOf(size: HullSize): Pick<Hull, "length" | "beam" | "depth" | "draught"> {
  return { length: size.length, beam: size.beam, depth: size.depth, draught: size.draught };
}

function writePiece(
  out: Float64Array,
  index: number,
  [from, to, c0, c1, c2]: readonly [number, number, number, number, number],
): number {
  const p = index * PIECE;
  out[p] = from;
  out[p + 1] = to;
  out[p + 2] = c0;
  out[p + 3] = c1;
  out[p + 4] = c2;
  return index + 1;
}

function offsetsHull(stations: readonly Station[], draught?: number): Hull {
  const first = firstOf(stations).x;
  const moved = stations.map((station) => ({ ...station, x: station.x - first }));
  const points = stations.flatMap((station) => station.offsets);
  const depth = Math.max(...points.map((point) => point.z));
  return {
    length: lastOf(moved).x,
    beam: 2 * Math.max(...points.map((point) => point.halfBreadth)),
    depth,
    draught: draught ?? depth / 2,
    breaks: moved.map((station) => station.x),
    orderAlong: 4,
    orderUp: 3,
    corners: [],
    sectionAt: (x, out) => writeBetween(moved, x, out),
  };
}

/** The section between two stations: half-breadths mixed at equal height, pieces split at the heights of both. */
function writeBetween(stations: readonly Station[], x: number, out: Float64Array): number {
  let after = 0;
  while (after < stations.length - 2 && nth(stations, after + 1).x <= x) after += 1;
  const [a, b] = [nth(stations, after), nth(stations, after + 1)];
  const share = Math.min(1, Math.max(0, (x - a.x) / (b.x - a.x)));
  const heights = [...new Set([...a.offsets, ...b.offsets].map((point) => point.z))].sort((low, high) => low - high);
  let count = 0;
  for (let k = 0; k + 1 < heights.length; k += 1) {
    const [low, high] = [nth(heights, k), nth(heights, k + 1)];
    const [atLow, atHigh] = [low, high].map((z, end) => {
      const inward = end === 0 ? "above" : "below";
      return (1 - share) * halfBreadthAt(a, z, inward) + share * halfBreadthAt(b, z, inward);
    }) as [number, number];
    const slope = (atHigh - atLow) / (high - low);
    count = writePiece(out, count, [low, high, atLow - slope * low, slope, 0]);
  }
  return count;
}

/** Half-breadth at a height, 0 outside the station's own heights; `side` says from which side a limit is taken. */
function halfBreadthAt(station: Station, z: number, side: "above" | "below"): number {
  const { offsets } = station;
  for (let k = 0; k + 1 < offsets.length; k += 1) {
    const [low, high] = [nth(offsets, k), nth(offsets, k + 1)];
    const isInside = side === "above" ? z >= low.z && z < high.z : z > low.z && z <= high.z;
    if (isInside) return low.halfBreadth + ((high.halfBreadth - low.halfBreadth) * (z - low.z)) / (high.z - low.z);
  }
  return 0;
}

/** Sides carried on above the deck edge end so many depths above the keel. */
export const RAISED = 1.5;

/**
 * The same hull with its sides carried on above the deck edge, so that she still floats while the edge goes under and
 * the moment it does can be found.
 */
export function raiseSides(hull: Hull): Hull {
  const depth = RAISED * hull.depth;
  return {
    ...hull,
    depth,
    corners: hull.corners.map((corner) => (corner.z === hull.depth ? { ...corner, z: depth } : corner)),
    sectionAt(x, out) {
      const count = hull.sectionAt(x, out);
      if (count > 0) out[PIECE * (count - 1) + 1] = depth;
      return count;
    },
  };
}
