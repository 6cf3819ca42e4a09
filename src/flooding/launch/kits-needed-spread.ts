import { numberAt } from "#base";

/** Between what a chance or a time lies, nine times in ten. */
export interface Spread {
  readonly p05: number;
  readonly p95: number;
}

/** Standard normal below which nineteen in twenty lie. */
const Z = 1.645;
/** Spread of the time to her: sea, traffic, a kit that is slow to rig [1]. */
export const LATENESS = 0.15;
/** Time to her over that told, at the ends of nine in ten. */
export const EARLY = Math.exp(-Z * LATENESS);
export const LATE = Math.exp(Z * LATENESS);

/**
 * Until the first kit pumps, at its ends.
 *
 * @param arrival - as told [s]
 * @returns nine in ten [s]
 * @source log-normal of spread 0.15, docs/methods/kits-needed.md
 */
export function arrivalSpread(arrival: number): Spread {
  return { p05: arrival * EARLY, p95: arrival * LATE };
}

/**
 * A mean over weighed draws, and its error.
 *
 * @param values - of each draw
 * @param weights - adding up to 1
 * @returns mean, and its standard deviation
 * @source DERIVED: √Σ w² (x − mean)², Owen, Monte Carlo theory, methods and examples, 2013, ch. 9 (FROM MEMORY)
 */
export function meanWithError(
  values: Float64Array,
  weights: Float64Array,
): { readonly mean: number; readonly error: number } {
  const mean = weightedMean(values, weights);
  let square = 0;
  for (let n = 0; n < values.length; n += 1) square += (numberAt(weights, n) * (numberAt(values, n) - mean)) ** 2;
  return { mean, error: Math.sqrt(square) };
}

/** A mean over weighed draws, weights adding up to 1. */
export function weightedMean(values: Float64Array, weights: Float64Array): number {
  let sum = 0;
  for (let n = 0; n < values.length; n += 1) sum += numberAt(weights, n) * numberAt(values, n);
  return sum;
}

/**
 * A chance with its range: what the draws leave open and what is not known of its grounds, their distances added as squares.
 *
 * @param chance - as told [1]
 * @param ends - the chance with its grounds at their low and high end [1]
 * @param error - of the draws [1]
 * @returns nine in ten, within 0 and 1
 * @source DERIVED: distances of unknowns that are independent
 */
export function chanceSpread(chance: number, ends: readonly [number, number], error: number): Spread {
  const off = (end: number) => Math.hypot(chance - end, Z * error);
  return {
    p05: Math.max(0, chance - off(Math.min(chance, ...ends))),
    p95: Math.min(1, chance + off(Math.max(chance, ...ends))),
  };
}
