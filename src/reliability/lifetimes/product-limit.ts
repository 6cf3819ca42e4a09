import { normalQuantile } from "#numerics";
import { isSeen, type LifeRecord } from "./life-record.ts";

/** Share still good after an age. */
export interface SurvivalPoint {
  readonly at: number;
  readonly survival: number;
  readonly low?: number;
  readonly high?: number;
  readonly atRisk?: number;
  readonly failed?: number;
}

/** An age by which half have failed; null where the records do not reach it. */
export interface MedianLife {
  readonly value: number | null;
  readonly low: number | null;
  readonly high: number | null;
}

/**
 * The product-limit estimate of the share still good, with limits on the log-log scale.
 *
 * S = Π (1 − d/n); limits S^exp(±z √(Σ d/(n(n − d))) / ln S); what was still good at an age counts as at risk there
 *
 * @param records - each end seen, or still good
 * @param level - of confidence [1]
 * @returns one point for every age at which something failed
 * @source Kaplan & Meier, JASA 53 (1958) 457-481; Kalbfleisch & Prentice, 1980 (FROM MEMORY)
 */
export function productLimit(records: readonly LifeRecord[], level: number): readonly SurvivalPoint[] {
  const z = normalQuantile(1 - (1 - level) / 2);
  let survival = 1;
  let spread = 0;
  return failureAges(records).map((at) => {
    const atRisk = count(records, ({ after }) => after >= at);
    const failed = count(records, (one) => isSeen(one) && one.after === at);
    survival *= 1 - failed / atRisk;
    spread += failed === atRisk ? 0 : failed / (atRisk * (atRisk - failed));
    return { at, survival, ...limits(survival, spread, z), atRisk, failed };
  });
}

/** Ages at which something was seen to fail, in order. */
export function failureAges(records: readonly LifeRecord[]): readonly number[] {
  return [...new Set(records.filter(isSeen).map(({ after }) => after))].toSorted((a, b) => a - b);
}

/** Lives that are meant, each record counted as often as it stands for. */
export function count(records: readonly LifeRecord[], isMeant: (record: LifeRecord) => boolean): number {
  return records.reduce((sum, record) => sum + (isMeant(record) ? record.count : 0), 0);
}

function limits(survival: number, spread: number, z: number) {
  if (survival <= 0 || survival >= 1) return {};
  const power = (z * Math.sqrt(spread)) / Math.log(survival);
  return { low: survival ** Math.exp(-power), high: survival ** Math.exp(power) };
}

const HALF = 0.5 + 1e-12;

/** The first age at which half or fewer are good, and the same of the limits. */
export function medianOf(curve: readonly SurvivalPoint[]): MedianLife {
  const first = (height: (point: SurvivalPoint) => number | undefined) =>
    curve.find((point) => (height(point) ?? 1) <= HALF)?.at ?? null;
  return { value: first(({ survival }) => survival), low: first(({ low }) => low), high: first(({ high }) => high) };
}
