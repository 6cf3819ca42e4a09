import { assert } from "#base";

/** A point of a table. */
export interface TablePoint {
  readonly x: number;
  readonly y: number;
}

/** A curve through the points of a table; before the first and after the last it goes on straight. */
export interface Curve {
  value(x: number): number;
  slope(x: number): number;
}

/**
 * Monotone cubic through points: rises where the points rise, falls where they fall, never overshoots.
 *
 * Cubic Hermite pieces; the slope at an inner point is the weighted harmonic mean of the two neighbouring chords,
 * and zero where they differ in sign.
 *
 * @param points - at least one, x strictly rising
 * @returns curve, straight beyond its ends
 * @range between the first and the last point; beyond them it is an extrapolation
 * @source F. N. Fritsch and R. E. Carlson, SIAM J. Numer. Anal. 17 (1980) 238-246, conditions;
 *   F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304, slopes (known as PCHIP)
 * @example monotoneCubic([{ x: 0, y: 0 }, { x: 1, y: 1 }, { x: 2, y: 1 }]).value(1.5) // 1
 */
export function monotoneCubic(points: readonly TablePoint[]): Curve {
  const { xs, ys } = columns(points);
  return new HermitePieces(xs, ys, pchipSlopes(xs, ys));
}

/**
 * Straight segments through points, going on straight beyond the ends.
 *
 * @param points - at least one, x strictly rising
 * @returns curve
 * @range between the first and the last point; beyond them it is an extrapolation
 * @source definition
 */
export function straightSegments(points: readonly TablePoint[]): Curve {
  const { xs, ys } = columns(points);
  return new Chords(xs, ys);
}

interface Columns {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
}

function columns(points: readonly TablePoint[]): Columns {
  assert(points.length > 0, "a curve has at least one point");
  const xs = points.map((point) => point.x);
  assert(
    xs.every((x, i) => i === 0 || x > xs[i - 1]!),
    "x rises strictly along a curve",
  );
  return { xs, ys: points.map((point) => point.y) };
}

/** Index of the segment x lies in, the first or last one where x lies outside. */
function segmentOf(xs: readonly number[], x: number): number {
  let low = 0;
  let high = xs.length - 2;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (xs[middle]! <= x) low = middle;
    else high = middle - 1;
  }
  return low;
}

class Chords implements Curve {
  readonly #xs: readonly number[];
  readonly #ys: readonly number[];

  constructor(xs: readonly number[], ys: readonly number[]) {
    this.#xs = xs;
    this.#ys = ys;
  }

  value(x: number): number {
    if (this.#xs.length === 1) return this.#ys[0]!;
    const i = segmentOf(this.#xs, x);
    return this.#ys[i]! + chord(this.#xs, this.#ys, i) * (x - this.#xs[i]!);
  }

  slope(x: number): number {
    return this.#xs.length === 1 ? 0 : chord(this.#xs, this.#ys, segmentOf(this.#xs, x));
  }
}

function chord(xs: readonly number[], ys: readonly number[], i: number): number {
  return (ys[i + 1]! - ys[i]!) / (xs[i + 1]! - xs[i]!);
}

class HermitePieces implements Curve {
  readonly #xs: readonly number[];
  readonly #ys: readonly number[];
  readonly #slopes: readonly number[];

  constructor(xs: readonly number[], ys: readonly number[], slopes: readonly number[]) {
    this.#xs = xs;
    this.#ys = ys;
    this.#slopes = slopes;
  }

  value(x: number): number {
    const end = this.#endBefore(x);
    if (end !== undefined) return this.#ys[end]! + this.#slopes[end]! * (x - this.#xs[end]!);
    const i = segmentOf(this.#xs, x);
    const { h, c1, c2, c3 } = this.#piece(i);
    const t = (x - this.#xs[i]!) / h;
    return this.#ys[i]! + t * (c1 + t * (c2 + t * c3));
  }

  slope(x: number): number {
    const end = this.#endBefore(x);
    if (end !== undefined) return this.#slopes[end]!;
    const i = segmentOf(this.#xs, x);
    const { h, c1, c2, c3 } = this.#piece(i);
    const t = (x - this.#xs[i]!) / h;
    return (c1 + t * (2 * c2 + 3 * t * c3)) / h;
  }

  /** The end point x lies beyond, if it does; with one point, always that. */
  #endBefore(x: number): number | undefined {
    const last = this.#xs.length - 1;
    if (x < this.#xs[0]! || last === 0) return 0;
    return x > this.#xs[last]! ? last : undefined;
  }

  /** Width and coefficients of the cubic in t = (x − x_i)/h. */
  #piece(i: number): { readonly h: number; readonly c1: number; readonly c2: number; readonly c3: number } {
    const h = this.#xs[i + 1]! - this.#xs[i]!;
    const rise = this.#ys[i + 1]! - this.#ys[i]!;
    const [left, right] = [h * this.#slopes[i]!, h * this.#slopes[i + 1]!];
    return { h, c1: left, c2: 3 * rise - 2 * left - right, c3: left + right - 2 * rise };
  }
}

function pchipSlopes(xs: readonly number[], ys: readonly number[]): readonly number[] {
  const last = xs.length - 1;
  if (last < 2) return xs.map(() => (last === 0 ? 0 : chord(xs, ys, 0)));
  const h = (i: number): number => xs[i + 1]! - xs[i]!;
  const d = (i: number): number => chord(xs, ys, i);
  return xs.map((_, i) => {
    if (i === 0) return endSlope(h(0), h(1), d(0), d(1));
    if (i === last) return endSlope(h(last - 1), h(last - 2), d(last - 1), d(last - 2));
    return innerSlope(h(i - 1), h(i), d(i - 1), d(i));
  });
}

function innerSlope(hBefore: number, hAfter: number, before: number, after: number): number {
  if (before * after <= 0) return 0;
  const w1 = 2 * hAfter + hBefore;
  const w2 = hAfter + 2 * hBefore;
  return (w1 + w2) / (w1 / before + w2 / after);
}

/** One-sided three-point slope, held between zero and three times the end chord. */
function endSlope(h: number, hNext: number, chord: number, nextChord: number): number {
  const slope = ((2 * h + hNext) * chord - h * nextChord) / (h + hNext);
  if (slope * chord <= 0) return 0;
  return chord * nextChord <= 0 && Math.abs(slope) > 3 * Math.abs(chord) ? 3 * chord : slope;
}
