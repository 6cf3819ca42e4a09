import { logGamma } from "../distributions.ts";

/**
 * Chances that a Poisson count is 0, 1, ... up to `most`.
 *
 * P(n) = e^(−μ) μⁿ / n!
 *
 * @param mean - μ, at least 0 [1]
 * @param most - whole, at least 0 [1]
 * @returns one chance per count [1]
 * @source Abramowitz & Stegun 26.1.22 (FROM MEMORY)
 * @example poissonChances(1, 1) // [0.36787944117144233, 0.36787944117144233]
 */
export function poissonChances(mean: number, most: number): number[] {
  if (mean === 0) return Array.from({ length: most + 1 }, (_, n) => (n === 0 ? 1 : 0));
  return Array.from({ length: most + 1 }, (_, n) => Math.exp(n * Math.log(mean) - mean - logGamma(n + 1)));
}
