import { findRoot, normalChance, normalQuantile } from "#numerics";
import { logSurvivalAt, type LifeFit } from "./fit-life.ts";

/** Chance that something lasts, and between what it lies [1]. */
export interface Lasting {
  readonly chance: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Chance that what is good at one age is still good at another, with its limits, by one law taken as known.
 *
 * @param fit - law of life
 * @param from - age now, at least 0
 * @param to - age at the next opening, more than `from`
 * @param level - of confidence [1]
 * @returns chance and limits [1]
 * @range too sure where the law was chosen by the same records: see `lastingByLaws`
 * @source DERIVED: delta method on ln of the hazard between
 */
export function lastingOf(fit: LifeFit, from: number, to: number, level: number): Lasting {
  const { mean, error } = hazardBetween(fit, from, to);
  const wide = normalQuantile(1 - (1 - level) / 2) * error;
  return { chance: lastsAt(mean), low: lastsAt(mean + wide), high: lastsAt(mean - wide) };
}

/**
 * The same where nobody knows the law: Weibull and lognormal, each as likely as the records make it. A steady rate is a
 * Weibull of shape 1 and is not counted again.
 *
 * F(x) = Σ wᵢ Φ((x − mᵢ)/eᵢ), wᵢ in proportion to exp(ln likelihood); limits and middle of ln of the hazard between
 *
 * @param fits - of the same records; laws of one figure are left out
 * @param from - age now, at least 0
 * @param to - more than `from`
 * @param level - of confidence [1]
 * @returns middle and limits [1]; undefined where no law of two figures could be fitted
 * @range measured on 60 and 120 lives looked at once a year: docs/methods/reliability.md
 * @source Buckland, Burnham & Augustin, Biometrics 53 (1997) 603-618 (FROM MEMORY): weights; limits of the mixture DERIVED
 */
export function lastingByLaws(fits: readonly LifeFit[], from: number, to: number, level: number): Lasting | undefined {
  const laws = fits.filter(({ model }) => model !== "exponential");
  if (laws.length === 0) return undefined;
  const best = Math.max(...laws.map(({ logLikelihood }) => logLikelihood));
  const parts = laws.map((fit) => ({
    ...hazardBetween(fit, from, to),
    weight: Math.exp(fit.logLikelihood - best),
  }));
  const tail = (1 - level) / 2;
  const at = (share: number) => lastsAt(quantileOf(parts, share));
  return { chance: at(0.5), low: at(1 - tail), high: at(tail) };
}

interface Hazard {
  /** Of ln of the hazard between two ages. */
  readonly mean: number;
  /** Its standard error. */
  readonly error: number;
}

type Weighed = Hazard & { readonly weight: number };

function lastsAt(logHazard: number): number {
  return Math.exp(-Math.exp(logHazard));
}

/** Beyond these the chance is 1 or 0 to every digit. */
const [LEAST_HAZARD, MOST_HAZARD] = [1e-300, 1e300];
const STEP = 1e-4;

function hazardBetween(fit: LifeFit, from: number, to: number): Hazard {
  const hazard = (scale: number, shape: number) => {
    const shifted = { ...fit, scale: fit.scale * Math.exp(scale), shape: fit.shape * Math.exp(-shape) };
    const between =
      Math.min(MOST_HAZARD, -logSurvivalAt(shifted, to)) - Math.min(MOST_HAZARD, -logSurvivalAt(shifted, from));
    return Math.log(Math.max(LEAST_HAZARD, between));
  };
  const slopes = [hazard(STEP, 0) - hazard(-STEP, 0), hazard(0, STEP) - hazard(0, -STEP)].map((d) => d / (2 * STEP));
  const free = slopes.slice(0, fit.covariance.length);
  const variance = free.reduce(
    (sum, a, i) => sum + free.reduce((part, b, j) => part + a * b * fit.covariance[i]![j]!, 0),
    0,
  );
  return { mean: hazard(0, 0), error: Math.sqrt(variance) };
}

/** Of a mixture of normal laws. */
function quantileOf(parts: readonly Weighed[], share: number): number {
  const whole = parts.reduce((sum, { weight }) => sum + weight, 0);
  const z = normalQuantile(share);
  const own = parts.map(({ mean, error }) => mean + z * error);
  const [low, high] = [Math.min(...own), Math.max(...own)];
  if (high - low < 1e-12) return low;
  const over = (x: number) => parts.reduce((sum, one) => sum + (one.weight / whole) * belowIn(one, x), 0) - share;
  const found = findRoot(over, low, high, { rootTolerance: 1e-10 });
  return found.kind === "not-bracketed" ? (low + high) / 2 : found.root;
}

function belowIn({ mean, error }: Hazard, x: number): number {
  return error > 0 ? normalChance((x - mean) / error) : Number(x >= mean);
}
