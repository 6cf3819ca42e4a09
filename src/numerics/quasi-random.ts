import { assert } from "#base";

// Primitive polynomials (degree s, coefficients a) and first direction numbers m of dimensions 2 to 10:
// Joe & Kuo, Constructing Sobol sequences with better two-dimensional projections, SIAM J. Sci. Comput. 30 (2008)
// 2635-2654, table new-joe-kuo-6 (FROM MEMORY; the points are tested against another implementation's).
const DIRECTIONS: readonly { readonly s: number; readonly a: number; readonly m: readonly number[] }[] = [
  { s: 1, a: 0, m: [1] },
  { s: 2, a: 1, m: [1, 3] },
  { s: 3, a: 1, m: [1, 3, 1] },
  { s: 3, a: 2, m: [1, 1, 1] },
  { s: 4, a: 1, m: [1, 1, 3, 3] },
  { s: 4, a: 4, m: [1, 3, 5, 13] },
  { s: 5, a: 2, m: [1, 1, 5, 5, 17] },
  { s: 5, a: 4, m: [1, 1, 5, 5, 5] },
  { s: 5, a: 7, m: [1, 1, 7, 11, 19] },
];
const BITS = 32;

/** Most dimensions served. */
export const SOBOL_DIMENSIONS = DIRECTIONS.length + 1;

/**
 * Points of a Sobol sequence in Gray-code order, moved by a digital shift so that no coordinate is 0.
 *
 * @param count - how many points; powers of two are balanced
 * @param dimensions - 1 to 10
 * @param seed - which shift; 0 is the plain sequence (its first point is the corner 2⁻³³)
 * @returns count × dimensions numbers in (0, 1), point by point
 * @source Joe & Kuo 2008; Antonov & Saleev, USSR Comput. Math. 19 (1979) 252-256 (FROM MEMORY)
 * @example sobolPoints(4, 1, 0) // [0.000000, 0.500000, 0.750000, 0.250000]
 */
export function sobolPoints(count: number, dimensions: number, seed = 0): Float64Array {
  assert(dimensions >= 1 && dimensions <= SOBOL_DIMENSIONS, `Sobol points have 1 to ${SOBOL_DIMENSIONS} dimensions`);
  const points = new Float64Array(count * dimensions);
  for (let d = 0; d < dimensions; d += 1) fillDimension(points, { count, dimensions, d, shift: shiftOf(seed, d) });
  return points;
}

function fillDimension(
  points: Float64Array,
  place: { readonly count: number; readonly dimensions: number; readonly d: number; readonly shift: number },
): void {
  const directions = directionsOf(place.d);
  let x = 0;
  for (let i = 0; i < place.count; i += 1) {
    points[i * place.dimensions + place.d] = (((x ^ place.shift) >>> 0) + 0.5) / 2 ** BITS;
    x ^= directions[lowestZero(i)]!;
  }
}

function lowestZero(index: number): number {
  return 31 - Math.clz32(~index & (index + 1));
}

function directionsOf(dimension: number): Int32Array {
  const v = new Int32Array(BITS);
  if (dimension === 0) return v.map((_, k) => 1 << (BITS - 1 - k));
  const { s, a, m } = DIRECTIONS[dimension - 1]!;
  for (let k = 0; k < BITS; k += 1) v[k] = k < s ? m[k]! << (BITS - 1 - k) : recur(v, k, s, a);
  return v;
}

function recur(v: Int32Array, k: number, s: number, a: number): number {
  let value = v[k - s]! ^ (v[k - s]! >>> s);
  for (let j = 1; j < s; j += 1) if ((a >> (s - 1 - j)) & 1) value ^= v[k - j]!;
  return value;
}

function shiftOf(seed: number, dimension: number): number {
  return seed === 0 ? 0 : mixBits(seed * 0x9e3779b1 + (dimension + 1) * 0x85ebca6b);
}

/**
 * Scatters the bits of a whole number: a fixed permutation of the 32-bit integers.
 *
 * @source "lowbias32", C. Wellons, 2018 (FROM MEMORY)
 */
export function mixBits(value: number): number {
  let x = value | 0;
  x = Math.imul(x ^ (x >>> 16), 0x7feb352d);
  x = Math.imul(x ^ (x >>> 15), 0x846ca68b);
  return (x ^ (x >>> 16)) | 0;
}

/** A repeatable stream of numbers in (0, 1) for synthetic cases. Same seed, same stream. */
export function repeatableStream(seed: number): () => number {
  let count = 0;
  return () => {
    count += 1;
    const high = mixBits(mixBits(seed) + Math.imul(count, 0x9e3779b1)) >>> 0;
    return (high + 0.5) / 2 ** BITS;
  };
}
