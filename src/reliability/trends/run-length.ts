import { numberAt } from "#base";
import { factorise, gaussNodes, normalChance, solveFactorised, type Node } from "#numerics";

const PLACES = 64;
const ROOT = Math.sqrt(2 * Math.PI);
const density = (z: number) => Math.exp(-(z * z) / 2) / ROOT;

/** Which side a chart watches. */
export type Sides = "up" | "down" | "both";

/**
 * How many values a CUSUM takes on average until it signals.
 *
 * L(z) = 1 + L(0) Φ(k − z − δ) + ∫₀ʰ L(x) φ(x + k − z − δ) dx, at z = 0; both sides: 1/L = 1/L₊ + 1/L₋
 *
 * @param k - allowance [sigma]
 * @param h - limit, > 0 [sigma]
 * @param shift - of the mean, upwards [sigma]
 * @param sides - watched
 * @returns values until a signal, to be expected [1]
 * @range 64 Gauss places; about 1e-6 relative for h up to 10
 * @source Page, Biometrika 41 (1954) 100-115; both sides: Kemp 1961 (FROM MEMORY)
 * @example cusumRunLength(0.5, 4, 0, "up") // 335.37
 */
export function cusumRunLength(k: number, h: number, shift: number, sides: Sides): number {
  if (sides === "up") return oneSided(k, h, shift);
  if (sides === "down") return oneSided(k, h, -shift);
  return 1 / (1 / oneSided(k, h, shift) + 1 / oneSided(k, h, -shift));
}

function oneSided(k: number, h: number, shift: number): number {
  const nodes = gaussNodes(PLACES, 0, h);
  const size = PLACES + 1;
  const places = [0, ...nodes.map(({ at }) => at)];
  const matrix = new Float64Array(size * size);
  for (const [i, z] of places.entries()) {
    matrix[i * size] = -normalChance(k - z - shift);
    for (const [j, { at, weight }] of nodes.entries()) matrix[i * size + j + 1] = -weight * density(at + k - z - shift);
    matrix[i * size + i] = numberAt(matrix, i * size + i) + 1;
  }
  return solved(matrix, size, 0);
}

/**
 * How many values an EWMA takes on average until it passes its lasting limits, begun at the target.
 *
 * L(z) = 1 + (1/λ) ∫ L(x) φ((x − (1 − λ)z)/λ − δ) dx between the limits
 *
 * @param weight - λ, of the newest value, 0 < λ ≤ 1 [1]
 * @param width - of the limits, > 0 [sigma of the average]
 * @param shift - of the mean, upwards [sigma]
 * @returns values until a signal on either side, to be expected [1]
 * @range 65 Gauss places; about 1e-6 relative
 * @source Crowder, Technometrics 29 (1987) 401-407 (FROM MEMORY)
 * @example ewmaRunLength(0.1, 2.814, 0) // 499.58
 */
export function ewmaRunLength(weight: number, width: number, shift: number): number {
  if (weight === 1) return 1 / (normalChance(-width - shift) + normalChance(shift - width));
  const limit = width * Math.sqrt(weight / (2 - weight));
  const nodes: readonly Node[] = gaussNodes(PLACES + 1, -limit, limit);
  const size = nodes.length;
  const matrix = new Float64Array(size * size);
  for (const [i, { at: z }] of nodes.entries()) {
    for (const [j, { at, weight: share }] of nodes.entries())
      matrix[i * size + j] = (-share / weight) * density((at - (1 - weight) * z) / weight - shift);
    matrix[i * size + i] = numberAt(matrix, i * size + i) + 1;
  }
  return solved(matrix, size, (size - 1) / 2);
}

function solved(matrix: Float64Array, size: number, wanted: number): number {
  const factors = factorise(matrix, size);
  if (!factors) return Infinity;
  const out = new Float64Array(size);
  solveFactorised(factors, () => 1, out);
  const length = numberAt(out, wanted);
  return length > 0 ? Math.min(length, LONGEST) : LONGEST;
}

/** Longer runs are told as this: nobody will live to see one. */
const LONGEST = 1e12;
