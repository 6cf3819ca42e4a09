import { normalChance } from "#numerics";

export type LifeModel = "weibull" | "lognormal" | "exponential";

/** A standard law of z = (ln t − μ) / σ. */
export interface Family {
  /** ln of the density. */
  readonly logDensity: (z: number) => number;
  /** Slope of that. */
  readonly densitySlope: (z: number) => number;
  readonly density: (z: number) => number;
  /** Chance of lying above z. */
  readonly survival: (z: number) => number;
  /** ln of that; finite where the chance itself is too small for a number, as long as z is. */
  readonly logSurvival: (z: number) => number;
  /** Chance of lying between; the second may be infinite. */
  readonly between: (low: number, high: number) => number;
}

const extreme: Family = {
  logDensity: (z) => z - Math.exp(z),
  densitySlope: (z) => 1 - Math.exp(z),
  density: (z) => Math.exp(z - Math.exp(z)),
  survival: (z) => Math.exp(-Math.exp(z)),
  logSurvival: (z) => -Math.exp(z),
  between: (low, high) => Math.exp(-Math.exp(low)) * -Math.expm1(Math.exp(low) - Math.exp(high)),
};

const ROOT = Math.log(Math.sqrt(2 * Math.PI));

/** From here on the series for the tail is exact to two parts in 10^5: its next term is 3/z⁴ (Abramowitz & Stegun 26.2.12). */
const FAR = 20;

const normal: Family = {
  logDensity: (z) => -(z * z) / 2 - ROOT,
  densitySlope: (z) => -z,
  density: (z) => Math.exp(-(z * z) / 2 - ROOT),
  survival: (z) => normalChance(-z),
  logSurvival: (z) =>
    z < FAR ? Math.log(normalChance(-z)) : -(z * z) / 2 - ROOT - Math.log(z) + Math.log1p(-1 / z ** 2),
  between: (low, high) => (low > 0 ? normalChance(-low) - normalChance(-high) : normalChance(high) - normalChance(low)),
};

/** Smallest extreme values make a Weibull life, normal ones a lognormal. */
export const FAMILIES: Readonly<Record<LifeModel, Family>> = {
  weibull: extreme,
  exponential: extreme,
  lognormal: normal,
};
