import { MOST_PIECES, PIECE, type Hull } from "./hull-form.ts";

/** A water surface z = height + slopeX·x + slopeY·y in the boat's own axes. */
export interface Plane {
  /** At the after end on the centre line [m]. */
  readonly height: number;
  /** Up going forward: tan of the trim. */
  readonly slopeX: number;
  /** Up going to starboard: tan of the heel. */
  readonly slopeY: number;
}

/** Part of the hull looked at. */
export interface Window {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
  readonly z0: number;
  readonly z1: number;
}

// Gauss-Legendre on [-1, 1]: points and weights, closed forms for 2 and 3, printed decimals above
// (Abramowitz & Stegun table 25.4; tested on polynomials).
export const GAUSS: Readonly<Record<number, readonly (readonly [number, number])[]>> = {
  2: symmetric([[1 / Math.sqrt(3), 1]]),
  3: symmetric([[Math.sqrt(0.6), 5 / 9]], 8 / 9),
  4: symmetric([
    [0.8611363115940526, 0.34785484513745385],
    [0.33998104358485626, 0.6521451548625461],
  ]),
  5: symmetric(
    [
      [0.906179845938664, 0.23692688505618908],
      [0.5384693101056831, 0.47862867049936647],
    ],
    128 / 225,
  ),
  8: symmetric([
    [0.9602898564975363, 0.10122853629037626],
    [0.7966664774136267, 0.22238103445337448],
    [0.525532409916329, 0.31370664587788727],
    [0.1834346424956498, 0.362683783378362],
  ]),
};

function symmetric(half: readonly (readonly [number, number])[], middle?: number): (readonly [number, number])[] {
  const both = half.flatMap(([x, w]) => [[-x, w] as const, [x, w] as const]);
  return middle === undefined ? both : [...both, [0, middle] as const];
}

/** Sections to be measured in a window, with the panels they were laid out for. */
export interface Layout {
  limits: readonly number[];
  count: number;
  xs: Float64Array;
  weights: Float64Array;
  /** Where each section's pieces begin, and the next one's. */
  first: Int32Array;
  pieces: Float64Array;
  /** Work space for one section. */
  readonly section: Float64Array;
}

/** The sections of a window under a plane; kept from one plane to the next while the panels stay the same. */
export function layoutOf(layouts: Map<Window, Layout>, hull: Hull, plane: Plane, window: Window): Layout {
  const limits = panelsOf(hull, plane, window);
  const kept = layouts.get(window) ?? emptyLayout();
  if (isSame(kept.limits, limits)) return kept;
  layouts.set(window, kept);
  makeRoom(kept, limits.length * GAUSS[hull.orderAlong]!.length);
  layOut(hull, limits, kept);
  return kept;
}

function isSame(a: readonly number[], b: readonly number[]): boolean {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i += 1) if (a[i] !== b[i]) return false;
  return true;
}

function emptyLayout(): Layout {
  const none = new Float64Array(0);
  const section = new Float64Array(PIECE * MOST_PIECES);
  return { limits: [], count: 0, xs: none, weights: none, first: new Int32Array(1), pieces: none, section };
}

function makeRoom(layout: Layout, sections: number): void {
  if (layout.xs.length >= sections) return;
  layout.xs = new Float64Array(2 * sections);
  layout.weights = new Float64Array(2 * sections);
  layout.first = new Int32Array(2 * sections + 1);
}

function layOut(hull: Hull, limits: readonly number[], into: Layout): void {
  into.limits = limits;
  into.count = 0;
  for (let k = 0; k + 1 < limits.length; k += 1) {
    const middle = (limits[k]! + limits[k + 1]!) / 2;
    const reach = (limits[k + 1]! - limits[k]!) / 2;
    if (!(reach > 0)) continue;
    for (const [place, weight] of GAUSS[hull.orderAlong]!)
      addSection(hull, middle + reach * place, weight * reach, into);
  }
}

function addSection(hull: Hull, x: number, weight: number, into: Layout): void {
  const begin = into.first[into.count]!;
  const numbers = PIECE * hull.sectionAt(x, into.section);
  if (into.pieces.length < begin + numbers) growPieces(into, begin + numbers);
  for (let i = 0; i < numbers; i += 1) into.pieces[begin + i] = into.section[i]!;
  into.xs[into.count] = x;
  into.weights[into.count] = weight;
  into.count += 1;
  into.first[into.count] = begin + numbers;
}

function growPieces(layout: Layout, numbers: number): void {
  const pieces = new Float64Array(2 * numbers);
  pieces.set(layout.pieces);
  layout.pieces = pieces;
}

/** Panel limits inside the window, with the places where the plane passes an edge. */
function panelsOf(hull: Hull, plane: Plane, window: Window): number[] {
  const x0 = Math.max(window.x0, 0);
  const x1 = Math.min(window.x1, hull.length);
  if (!(x1 > x0)) return [];
  const limits = [x0, x1];
  for (const at of hull.breaks) if (at > x0 && at < x1) limits.push(at);
  if (plane.slopeX !== 0) addEdgeCrossings(hull, plane, window, limits);
  return limits.length === 2 ? limits : limits.sort((a, b) => a - b);
}

function addEdgeCrossings(hull: Hull, plane: Plane, window: Window, limits: number[]): void {
  const [x0, x1] = [limits[0]!, limits[1]!];
  const note = (y: number, z: number): void => {
    const x = (z - plane.height - plane.slopeY * y) / plane.slopeX;
    if (x > x0 && x < x1) limits.push(x);
  };
  const ys = [window.y0, window.y1].filter(Number.isFinite);
  for (const { y, z } of hull.corners) {
    note(y, z);
    for (const edge of ys) note(edge, z);
    if (Number.isFinite(window.z0)) note(y, window.z0);
    if (Number.isFinite(window.z1)) note(y, window.z1);
  }
  for (const edge of ys) for (const z of [window.z0, window.z1]) if (Number.isFinite(z)) note(edge, z);
}
