import { sum } from "#base";
import { poissonChances } from "#numerics";

/** So many of a part are wanted at once. */
export interface Lot {
  /** Whole, at least 1 [parts]. */
  readonly size: number;
  /** How often beside the other sizes, more than 0; only their ratio counts [1]. */
  readonly share: number;
}

/** Wanted one at a time. */
export const SINGLY: readonly Lot[] = [{ size: 1, share: 1 }];

/**
 * Chances that 0, 1, 2 … parts are wanted, where occasions come by chance and each takes a lot at once: compound Poisson.
 *
 * P(0) = exp(−λ), P(n) = λ/n Σ c f(c) P(n − c); λ = μ / Σ c f(c)
 *
 * @param pipeline - μ, parts to be expected [1], 0 to about 700 lots
 * @param most - last number that is told, whole
 * @param lots - sizes c with their shares, f(c) once they are brought to 1
 * @source Feeney & Sherbrooke 1966, compound Poisson demand; recursion: Panjer 1981 (both FROM MEMORY)
 */
export function demandChances(pipeline: number, most: number, lots: readonly Lot[]): readonly number[] {
  if (lots.every(({ size }) => size === 1)) return poissonChances(pipeline, most);
  const expected = sum(lots.map(({ size, share }) => size * share));
  const weights = lots.map(({ size, share }) => ({ size, weight: (pipeline * size * share) / expected }));
  const chances = [Math.exp(-sum(weights.map(({ size, weight }) => weight / size)))];
  for (let n = 1; n <= most; n++) {
    chances.push(sum(weights.map(({ size, weight }) => weight * (chances[n - size] ?? 0))) / n);
  }
  return chances;
}

/** The largest lot [parts]. */
export function largestOf(lots: readonly Lot[]): number {
  return Math.max(...lots.map(({ size }) => size));
}
