import { normalQuantile } from "#numerics";
import { climb, type Hill, type Summit } from "../climb/index.ts";
import { FAMILIES, type Family, type LifeModel } from "./families.ts";
import { failuresIn, isSeen, isStillGood, type LifeRecord } from "./life-record.ts";

/** A law of life fitted to records. */
export interface LifeFit {
  readonly model: LifeModel;
  /** β of a Weibull, 1 of an exponential, 1/σ of a lognormal [1]. */
  readonly shape: number;
  /** η of a Weibull, 1/rate of an exponential, the median of a lognormal [unit of the records]. */
  readonly scale: number;
  readonly logLikelihood: number;
  /** Of the logarithms; none of the shape of an exponential. */
  readonly standardErrors: { readonly logShape?: number; readonly logScale: number };
  /** Of (ln scale, ln 1/shape), row by row. */
  readonly covariance: readonly (readonly number[])[];
}

/** Failures that a law takes at least: one for every figure it has. */
export const LEAST_FAILURES: Readonly<Record<LifeModel, number>> = { weibull: 2, lognormal: 2, exponential: 1 };

/** Log-shapes beyond this are no life but a search that ran away. */
const WILD = 5;

/** A standard error of a logarithm beyond this is that of a likelihood without a peak of its own: a factor of e¹⁰ either way. */
const VAGUE = 10;

/**
 * The law of life that best tells when things were found good and found failed.
 *
 * Likelihood: density where the end was seen, S(after) − S(before) where it lay between two looks, S where it is still good.
 *
 * @param records - lives, any kind; times > 0 where an end was seen
 * @param model - law
 * @returns the fit; undefined where the records do not settle one, their likelihood having no single peak
 * @range parameters to about 1e-8 relative
 * @source Meeker & Escobar, Statistical Methods for Reliability Data, 1998 (FROM MEMORY)
 */
export function fitLife(records: readonly LifeRecord[], model: LifeModel): LifeFit | undefined {
  if (failuresIn(records) < LEAST_FAILURES[model]) return undefined;
  const told = scaled(records);
  const hill = hillOf(told.records, FAMILIES[model], model !== "exponential");
  const starts = model === "exponential" ? [[0]] : [0, -1, 0.7].map((spread) => [0, spread]);
  const top = firstSummit(hill, starts);
  if (!top || Math.abs(top.at[1] ?? 0) > WILD) return undefined;
  return fitOf(model, top.at, top.value - told.seen * told.logUnit, top.covariance!, told.logUnit);
}

/** From the first start that leads to a summit: there is one where there is any. */
function firstSummit(hill: Hill, starts: readonly (readonly number[])[]): Summit | undefined {
  for (const start of starts) {
    const top = climb(hill, start);
    if (top.converged && isPeak(top)) return top;
  }
  return undefined;
}

/** Not where the likelihood lies flat: many curves tell the records equally well. */
function isPeak({ covariance }: Summit): boolean {
  return covariance?.every((row, i) => Math.sqrt(row[i]!) < VAGUE) ?? false;
}

/** In a unit in which lives are near 1, so that searches begin near. */
function scaled(records: readonly LifeRecord[]) {
  const logs = records.flatMap(({ after, before, count }) => {
    const time = before === Infinity ? after : (after + before) / 2;
    return time > 0 ? [{ log: Math.log(time), count }] : [];
  });
  const logUnit =
    logs.reduce((sum, { log, count }) => sum + log * count, 0) / logs.reduce((sum, { count }) => sum + count, 0);
  const unit = Math.exp(logUnit);
  const seen = records.reduce((sum, record) => sum + (isSeen(record) ? record.count : 0), 0);
  return {
    logUnit,
    seen,
    records: records.map((one) => ({ ...one, after: one.after / unit, before: one.before / unit })),
  };
}

function fitOf(
  model: LifeModel,
  at: readonly number[],
  logLikelihood: number,
  covariance: readonly (readonly number[])[],
  logUnit: number,
): LifeFit {
  const errors = covariance.map((row, i) => Math.sqrt(row[i]!));
  return {
    model,
    shape: Math.exp(-(at[1] ?? 0)),
    scale: Math.exp(at[0]! + logUnit),
    logLikelihood,
    standardErrors: { logScale: errors[0]!, ...(errors[1] === undefined ? {} : { logShape: errors[1] }) },
    covariance,
  };
}

interface Piece {
  readonly value: number;
  /** Slope by μ and by ln σ. */
  readonly slope: readonly [number, number];
}

function hillOf(records: readonly LifeRecord[], family: Family, isShapeFree: boolean): Hill {
  const pieces = (at: readonly number[]) =>
    records.map((record) => ({ count: record.count, piece: pieceOf(record, family, at[0]!, Math.exp(at[1] ?? 0)) }));
  return {
    value: (at) => pieces(at).reduce((sum, { count, piece }) => sum + count * piece.value, 0),
    slope: (at) => {
      const sums = [0, 0];
      for (const { count, piece } of pieces(at)) for (const i of [0, 1]) sums[i]! += count * piece.slope[i]!;
      return isShapeFree ? sums : sums.slice(0, 1);
    },
  };
}

function pieceOf(record: LifeRecord, family: Family, mu: number, sigma: number): Piece {
  const z = (time: number) => (Math.log(time) - mu) / sigma;
  if (isSeen(record)) return seenPiece(family, z(record.after), sigma, Math.log(record.after));
  if (isStillGood(record)) return betweenPiece(family, z(record.after), Infinity, sigma);
  return betweenPiece(family, z(record.after), z(record.before), sigma);
}

function seenPiece(family: Family, z: number, sigma: number, log: number): Piece {
  const slope = family.densitySlope(z);
  return { value: family.logDensity(z) - Math.log(sigma) - log, slope: [-slope / sigma, -z * slope - 1] };
}

function betweenPiece(family: Family, low: number, high: number, sigma: number): Piece {
  const chance = high === Infinity ? family.survival(low) : family.between(low, high);
  const [atLow, atHigh] = [low, high].map((z) => (Number.isFinite(z) ? family.density(z) : 0));
  const bySpread = weighed(low, atLow!) - weighed(high, atHigh!);
  return { value: Math.log(chance), slope: [(atLow! - atHigh!) / sigma / chance, bySpread / chance] };
}

/** z · density, nothing where an end is infinite. */
function weighed(z: number, density: number): number {
  return density === 0 ? 0 : z * density;
}

/** Chance of being good at an age by a fit. */
export function survivalAt({ model, shape, scale }: LifeFit, age: number): number {
  return age <= 0 ? 1 : FAMILIES[model].survival(shape * Math.log(age / scale));
}

/** ln of the chance of being good at an age by a fit; at most 0. */
export function logSurvivalAt({ model, shape, scale }: LifeFit, age: number): number {
  return age <= 0 ? 0 : FAMILIES[model].logSurvival(shape * Math.log(age / scale));
}

/** An age with its limits [unit of the records]. */
export interface FailedAge {
  readonly age: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Age by which a share has failed, by one law taken as known, with its limits.
 *
 * ln t = μ + σz; var(ln t) = V₁₁ + 2σz V₁₂ + (σz)² V₂₂, V that of (μ, ln σ)
 *
 * @param fit - law of life
 * @param share - that has failed, above 0 and below 1 [1]
 * @param level - of confidence [1]
 * @returns [unit of the records]
 * @source Meeker & Escobar 1998 (FROM MEMORY): delta method on the logarithm of a quantile
 */
export function failedAge({ model, shape, scale, covariance }: LifeFit, share: number, level: number): FailedAge {
  const z = (model === "lognormal" ? normalQuantile(share) : Math.log(-Math.log1p(-share))) / shape;
  const [[own = 0, both = 0] = [], [, spread = 0] = []] = covariance;
  const error = Math.sqrt(Math.max(0, own + 2 * z * both + z * z * spread));
  const age = scale * Math.exp(z);
  const wide = Math.exp(normalQuantile((1 + level) / 2) * error);
  return { age, low: age / wide, high: age * wide };
}
