import { logBeta, logGamma } from "#numerics";
import type { BetaPiece } from "./beta-mixture.ts";

/** What is believed of a figure as equally likely values, from low to high. */
export type Spread = readonly number[];

/** Values that a spread holds. */
export const VALUES = 40;
const STEPS = 400;
const ENDS = 18;
/** ln of a density that adds nothing a number could hold beside the rest. */
const NOTHING = -45;

/**
 * A mixture of beta distributions as equally likely values.
 *
 * @param pieces - weights adding up to 1
 * @returns the values at the middle of each of 40 equal shares of the belief [1]
 * @range about 1 % of the value; chances from 2e-8
 * @source DERIVED: density summed over 400 places of the ln odds
 */
export function spreadOfBetas(pieces: readonly BetaPiece[]): Spread {
  const odds = Array.from({ length: STEPS }, (_, i) => -ENDS + (2 * ENDS * (i + 0.5)) / STEPS);
  const logs = odds.map((t) => [-Math.log1p(Math.exp(-t)), -Math.log1p(Math.exp(t))] as const);
  const density = odds.map(() => 0);
  for (const { a, b, weight } of pieces) {
    const whole = logBeta(a, b);
    for (let i = 0; i < STEPS; i += 1) density[i]! += weight * Math.exp(a * logs[i]![0] + b * logs[i]![1] - whole);
  }
  return valuesAt(odds, density).map((t) => 1 / (1 + Math.exp(-t)));
}

/** Where equal shares of a density have their middles. */
function valuesAt(places: readonly number[], density: readonly number[]): Spread {
  const whole = density.reduce((sum, one) => sum + one, 0);
  const step = places[1]! - places[0]!;
  let [i, below] = [0, 0];
  return Array.from({ length: VALUES }, (_, k) => {
    const wanted = ((k + 0.5) / VALUES) * whole;
    while (i < density.length - 1 && below + density[i]! < wanted) below += density[i++]!;
    return places[i]! + step * ((wanted - below) / (density[i]! || 1) - 0.5);
  });
}

/** A gamma distribution and how much of the belief it carries. */
export interface GammaPiece {
  readonly a: number;
  /** Rate [time]. */
  readonly b: number;
  readonly weight: number;
}

/**
 * Mean of a mixture of gamma distributions.
 *
 * @param pieces - weights adding up to 1
 * @returns mean [1/time]
 * @source DERIVED: a / b of each
 */
export function meanOfGammas(pieces: readonly GammaPiece[]): number {
  return pieces.reduce((sum, { a, b, weight }) => sum + (weight * a) / b, 0);
}

/**
 * A mixture of gamma distributions as equally likely values.
 *
 * @param pieces - weights adding up to 1
 * @returns the values at the middle of each of 40 equal shares of the belief [1/time]
 * @range about 1 % of the value, from e⁻²⁴ to e⁶ times the mean
 * @source DERIVED: density summed over 400 places of the logarithm
 */
export function spreadOfGammas(pieces: readonly GammaPiece[]): Spread {
  const mean = meanOfGammas(pieces);
  const places = Array.from({ length: STEPS }, (_, i) => Math.log(mean) - 24 + (30 * (i + 0.5)) / STEPS);
  const values = places.map(Math.exp);
  const density = places.map(() => 0);
  for (const { a, b, weight } of pieces) {
    const whole = logGamma(a) - a * Math.log(b) - Math.log(weight);
    for (let i = 0; i < STEPS; i += 1) {
      const log = a * places[i]! - b * values[i]! - whole;
      if (log > NOTHING) density[i]! += Math.exp(log);
    }
  }
  return valuesAt(places, density).map(Math.exp);
}
