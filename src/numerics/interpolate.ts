import { assert } from "#base";

/** A point of a table. */
export interface TablePoint {
  readonly x: number;
  readonly y: number;
}

/** A curve through the points of a table; before the first and after the last it goes on straight. */
export interface Curve {
  readonly value: (x: number) => number;
  readonly slope: (x: number) => number;
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
  const table = columns(points);
  return pieces(table, pchipSlopes(table.xs, table.ys));
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
  if (xs.length === 1) return { value: () => ys[0]!, slope: () => 0 };
  const slopeIn = (i: number): number => (ys[i + 1]! - ys[i]!) / (xs[i + 1]! - xs[i]!);
  const slopes = Float64Array.from({ length: xs.length - 1 }, (_, i) => slopeIn(i));
  return {
    value: (x) => {
      const i = segmentOf(xs, x);
      return ys[i]! + slopes[i]! * (x - xs[i]!);
    },
    slope: (x) => slopes[segmentOf(xs, x)]!,
  };
}

interface Columns {
  readonly xs: Float64Array;
  readonly ys: Float64Array;
}

function columns(points: readonly TablePoint[]): Columns {
  assert(points.length > 0, "a curve has at least one point");
  const xs = Float64Array.from(points, (point) => point.x);
  assert(
    xs.every((x, i) => i === 0 || x > xs[i - 1]!),
    "x rises strictly along a curve",
  );
  return { xs, ys: Float64Array.from(points, (point) => point.y) };
}

/** Index of the segment x lies in, the first or last one where x lies outside. */
function segmentOf(xs: Float64Array, x: number): number {
  let low = 0;
  let high = xs.length - 2;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (xs[middle]! <= x) low = middle;
    else high = middle - 1;
  }
  return low;
}

function pieces({ xs, ys }: Columns, slopes: Float64Array): Curve {
  if (xs.length === 1) return { value: () => ys[0]!, slope: () => 0 };
  const last = xs.length - 1;
  const beyond = (x: number): number | undefined => (x < xs[0]! ? 0 : x > xs[last]! ? last : undefined);
  return {
    value: (x) => {
      const end = beyond(x);
      return end === undefined
        ? hermite(xs, ys, slopes, segmentOf(xs, x), x)
        : ys[end]! + slopes[end]! * (x - xs[end]!);
    },
    slope: (x) => {
      const end = beyond(x);
      return end === undefined ? hermiteSlope(xs, ys, slopes, segmentOf(xs, x), x) : slopes[end]!;
    },
  };
}

function hermite(xs: Float64Array, ys: Float64Array, slopes: Float64Array, i: number, x: number): number {
  const h = xs[i + 1]! - xs[i]!;
  const t = (x - xs[i]!) / h;
  const rise = ys[i + 1]! - ys[i]!;
  const c2 = 3 * rise - h * (2 * slopes[i]! + slopes[i + 1]!);
  const c3 = h * (slopes[i]! + slopes[i + 1]!) - 2 * rise;
  return ys[i]! + t * (h * slopes[i]! + t * (c2 + t * c3));
}

function hermiteSlope(xs: Float64Array, ys: Float64Array, slopes: Float64Array, i: number, x: number): number {
  const h = xs[i + 1]! - xs[i]!;
  const t = (x - xs[i]!) / h;
  const rise = ys[i + 1]! - ys[i]!;
  const c2 = 3 * rise - h * (2 * slopes[i]! + slopes[i + 1]!);
  const c3 = h * (slopes[i]! + slopes[i + 1]!) - 2 * rise;
  return slopes[i]! + (t * (2 * c2 + 3 * t * c3)) / h;
}

function pchipSlopes(xs: Float64Array, ys: Float64Array): Float64Array {
  const count = xs.length;
  const h = Float64Array.from({ length: count - 1 }, (_, i) => xs[i + 1]! - xs[i]!);
  const d = Float64Array.from({ length: count - 1 }, (_, i) => (ys[i + 1]! - ys[i]!) / h[i]!);
  if (count <= 2) return new Float64Array(count).fill(d[0] ?? 0);
  return Float64Array.from({ length: count }, (_, i) => {
    if (i === 0) return endSlope(h[0]!, h[1]!, d[0]!, d[1]!);
    if (i === count - 1) return endSlope(h[i - 1]!, h[i - 2]!, d[i - 1]!, d[i - 2]!);
    return innerSlope(h[i - 1]!, h[i]!, d[i - 1]!, d[i]!);
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
