import { nth } from "#base";
import { normalQuantile } from "#numerics";

/** One place where a thing is renewed again and again, watched from 0. */
export interface Renewals {
  readonly id: string;
  readonly renewedAt: readonly number[];
  readonly until: number;
}

export interface CountPoint {
  readonly at: number;
  readonly count: number;
  readonly low: number;
  readonly high: number;
}

/**
 * The mean number of renewals of one place by an age, without any law of life.
 *
 * M(t) = Σ d/n over the ages up to t; variance Σᵢ (Σ (dᵢ − d/n)/n)² over the places i
 *
 * @param places - each with its renewals and the age until which it was watched
 * @param level - of confidence [1]
 * @returns one point for every age at which something was renewed
 * @source Nelson, Recurrent Events Data Analysis, 2003; Lawless & Nadeau, Technometrics 37 (1995) 158-168 (FROM MEMORY)
 */
export function meanCount(places: readonly Renewals[], level: number): readonly CountPoint[] {
  const z = normalQuantile(1 - (1 - level) / 2);
  const own = places.map(() => 0);
  let sum = 0;
  const ages = [...new Set(places.flatMap(({ renewedAt }) => renewedAt))].toSorted((a, b) => a - b);
  return ages.map((at) => {
    const watched = places.filter(({ until }) => until >= at).length;
    const renewed = places.map(({ renewedAt }) => renewedAt.filter((age) => age === at).length);
    const mean = renewed.reduce((total, one) => total + one, 0) / watched;
    sum += mean;
    for (const [i, { until }] of places.entries())
      if (until >= at) own[i] = nth(own, i) + (nth(renewed, i) - mean) / watched;
    const spread = Math.exp((z * Math.hypot(...own)) / sum);
    return { at, count: sum, low: sum / spread, high: sum * spread };
  });
}
