import { PIECE, type Hull } from "./hull-form.ts";
import { GAUSS, layoutOf, type Layout, type Plane, type Window } from "./hull-panels.ts";

export type { Plane, Window } from "./hull-panels.ts";

/** Where each integral stands in a result row. Area integrals are of the surface seen from above, in the boat's axes. */
export const V = 0;
export const MX = 1;
export const MY = 2;
export const MZ = 3;
export const A = 4;
export const AX = 5;
export const AY = 6;
export const IXX = 7;
export const IXY = 8;
export const IYY = 9;
export const INTEGRALS = 10;

/** Slopes flatter than this are level: the boat's heel is then below a ten-millionth of a degree. */
const LEVEL = 1e-12;

/** Measures hulls; owns its work arrays, so make one per run. */
export interface Gauge {
  /** Integrals over the part of the hull inside the window and under the plane, written into `out`. */
  measure(plane: Plane, window: Window, out: Float64Array): Float64Array;
}

/**
 * Makes a gauge for a hull.
 *
 * Sections are clipped by the plane and integrated strip by strip: exact for straight and parabolic sections.
 * Along the length Gauss panels are used, split where the plane leaves an edge that runs the whole length: exact for
 * box, wedge and (level) Wigley hulls.
 *
 * @param hull - the hull
 * @returns the gauge
 * @source DERIVED: docs/methods/flooding.md, "Volumes and moments"
 */
export function makeGauge(hull: Hull): Gauge {
  const layouts = new Map<Window, Layout>();
  const strips = makeStrips(GAUSS[hull.orderUp]!);
  return {
    measure(plane, window, out) {
      out.fill(0);
      const { count, xs, weights, first, pieces } = layoutOf(layouts, hull, plane, window);
      for (let k = 0; k < count; k += 1) {
        strips(pieces, first[k]!, first[k + 1]!, { x: xs[k]!, weight: weights[k]!, plane, window }, out);
      }
      return out;
    },
  };
}

interface Slice {
  readonly x: number;
  readonly weight: number;
  readonly plane: Plane;
  readonly window: Window;
}

type Strips = (pieces: Float64Array, from: number, to: number, slice: Slice, out: Float64Array) => void;

function makeStrips(points: readonly (readonly [number, number])[]): Strips {
  const cuts = new Float64Array(12);
  const piece = new Float64Array(PIECE);
  return (pieces, from, to, slice, out) => {
    const level = slice.plane.height + slice.plane.slopeX * slice.x;
    const isLevel = Math.abs(slice.plane.slopeY) <= LEVEL;
    for (let p = from; p < to; p += PIECE) {
      for (let i = 0; i < PIECE; i += 1) piece[i] = pieces[p + i]!;
      if (isLevel) addLevelPiece(piece, level, slice, points, out);
      else addHeeledPiece(piece, level, slice, points, cuts, out);
    }
  };
}

function breadth(piece: Float64Array, z: number): number {
  return Math.max(0, piece[2]! + z * (piece[3]! + z * piece[4]!));
}

function addLevelPiece(
  piece: Float64Array,
  level: number,
  slice: Slice,
  points: readonly (readonly [number, number])[],
  out: Float64Array,
): void {
  const bottom = Math.max(piece[0]!, slice.window.z0);
  const ceiling = Math.min(piece[1]!, slice.window.z1);
  if (!(ceiling > bottom) || level <= bottom) return;
  const top = Math.min(ceiling, level);
  const [middle, reach] = [(top + bottom) / 2, (top - bottom) / 2];
  for (const [place, weight] of points) {
    const z = middle + reach * place;
    const half = breadth(piece, z);
    const [left, right] = [Math.max(-half, slice.window.y0), Math.min(half, slice.window.y1)];
    if (right > left) addStrip(slice, z, left, right, weight * reach * slice.weight, out);
  }
  if (level <= ceiling) addSurface(piece, level, slice, out);
}

function addStrip(slice: Slice, z: number, left: number, right: number, weight: number, out: Float64Array): void {
  const area = weight * (right - left);
  out[V]! += area;
  out[MX]! += area * slice.x;
  out[MY]! += (area * (left + right)) / 2;
  out[MZ]! += area * z;
}

function addSurface(piece: Float64Array, level: number, slice: Slice, out: Float64Array): void {
  const half = breadth(piece, level);
  const [left, right] = [Math.max(-half, slice.window.y0), Math.min(half, slice.window.y1)];
  if (!(right > left)) return;
  const { x, weight } = slice;
  const width = weight * (right - left);
  const moment = (weight * (right * right - left * left)) / 2;
  out[A]! += width;
  out[AX]! += width * x;
  out[AY]! += moment;
  out[IXX]! += width * x * x;
  out[IXY]! += moment * x;
  out[IYY]! += (weight * (right * right * right - left * left * left)) / 3;
}

/**
 * Heeled: at height z the water reaches from the plane, y = (z − level)/q, to the low side. Pieces are cut at every
 * height where plane, shell or window edge takes over from another as a strip's limit.
 */
function addHeeledPiece(
  piece: Float64Array,
  level: number,
  slice: Slice,
  points: readonly (readonly [number, number])[],
  cuts: Float64Array,
  out: Float64Array,
): void {
  const bottom = Math.max(piece[0]!, slice.window.z0);
  const top = Math.min(piece[1]!, slice.window.z1);
  if (!(top > bottom)) return;
  const count = cutHeights(piece, level, slice, bottom, top, cuts);
  for (let k = 0; k + 1 < count; k += 1) {
    const [middle, reach] = [(cuts[k + 1]! + cuts[k]!) / 2, (cuts[k + 1]! - cuts[k]!) / 2];
    if (!(reach > 0)) continue;
    for (const [place, weight] of points) {
      addHeeledStrip(piece, level, slice, middle + reach * place, weight * reach * slice.weight, out);
    }
  }
}

function addHeeledStrip(
  piece: Float64Array,
  level: number,
  slice: Slice,
  z: number,
  weight: number,
  out: Float64Array,
): void {
  const q = slice.plane.slopeY;
  const half = breadth(piece, z);
  let left = Math.max(-half, slice.window.y0);
  let right = Math.min(half, slice.window.y1);
  const surface = (z - level) / q;
  const isCut = surface > left && surface < right;
  if (q > 0) left = Math.max(left, surface);
  else right = Math.min(right, surface);
  if (!(right > left)) return;
  addStrip(slice, z, left, right, weight, out);
  if (isCut) addSlopingSurface(slice, surface, weight / Math.abs(q), out);
}

function addSlopingSurface(slice: Slice, y: number, width: number, out: Float64Array): void {
  const { x } = slice;
  out[A]! += width;
  out[AX]! += width * x;
  out[AY]! += width * y;
  out[IXX]! += width * x * x;
  out[IXY]! += width * x * y;
  out[IYY]! += width * y * y;
}

/** Heights between bottom and top where a strip's limit changes hands, ascending, ends included; returns how many. */
function cutHeights(
  piece: Float64Array,
  level: number,
  slice: Slice,
  bottom: number,
  top: number,
  cuts: Float64Array,
): number {
  const q = slice.plane.slopeY;
  let count = 0;
  const note = (z: number): void => {
    if (z > bottom && z < top && count < cuts.length - 2) cuts[count++] = z;
  };
  for (const side of [q, -q]) meetShell(piece, level, side, note);
  for (const edge of [slice.window.y0, slice.window.y1]) {
    if (!Number.isFinite(edge)) continue;
    note(level + q * edge);
    meetEdge(piece, Math.abs(edge), note);
  }
  cuts[count++] = bottom;
  cuts[count++] = top;
  sortFirst(cuts, count);
  return count;
}

/** A handful: put in their places one by one. */
function sortFirst(cuts: Float64Array, count: number): void {
  for (let i = 1; i < count; i += 1) {
    const cut = cuts[i]!;
    let k = i;
    for (; k > 0 && cuts[k - 1]! > cut; k -= 1) cuts[k] = cuts[k - 1]!;
    cuts[k] = cut;
  }
}

/** Heights where level + q·b(z) = z. */
function meetShell(piece: Float64Array, level: number, q: number, note: (z: number) => void): void {
  solveQuadratic(q * piece[4]!, q * piece[3]! - 1, level + q * piece[2]!, note);
}

/** Heights where b(z) = edge. */
function meetEdge(piece: Float64Array, edge: number, note: (z: number) => void): void {
  solveQuadratic(piece[4]!, piece[3]!, piece[2]! - edge, note);
}

function solveQuadratic(a: number, b: number, c: number, note: (z: number) => void): void {
  if (a === 0) {
    if (b !== 0) note(-c / b);
    return;
  }
  const inside = b * b - 4 * a * c;
  if (inside < 0) return;
  const far = -(b + (b < 0 ? -1 : 1) * Math.sqrt(inside)) / 2;
  note(far / a);
  if (far !== 0) note(c / far);
}
