import { nth } from "#base";
import { normalChance, normalQuantile } from "#numerics";
import type { Observation } from "./charts.ts";

export interface SlowDrift {
  readonly s: number;
  readonly variance: number;
  readonly z: number;
  /** Two-sided [1]. */
  readonly p: number;
  /** Sen's: the middle of all slopes between two readings [value per unit of time]. */
  readonly slope: number;
  readonly slopeLow: number;
  readonly slopeHigh: number;
}

/**
 * Whether a series drifts, whatever the law of its scatter, and how fast.
 *
 * S = Σ sign(xⱼ − xᵢ); variance [n(n − 1)(2n + 5) − Σ t(t − 1)(2t + 5)]/18 with ties t; Z with continuity. Limits of the
 * slope at ranks (N − C)/2 and (N + C)/2 + 1, interpolated, C = z √variance.
 *
 * @param series - at least 2 readings, times rising
 * @param level - of confidence for the slope [1]
 * @returns the test and the slope with its limits
 * @source Mann, Econometrica 13 (1945); Kendall 1975; Sen, JASA 63 (1968) 1379-1389; Gilbert 1987 (FROM MEMORY)
 */
export function mannKendall(series: readonly Observation[], level: number): SlowDrift {
  const pairs = series.flatMap((one, i) => series.slice(i + 1).map((other) => [one, other] as const));
  const s = pairs.reduce((sum, [one, other]) => sum + Math.sign(other.value - one.value), 0);
  const variance = varianceOf(series.map(({ value }) => value));
  const z = variance === 0 ? 0 : (s - Math.sign(s)) / Math.sqrt(variance);
  const slopes = pairs.map(([one, other]) => (other.value - one.value) / (other.at - one.at)).toSorted((a, b) => a - b);
  const reach = normalQuantile(1 - (1 - level) / 2) * Math.sqrt(variance);
  const n = slopes.length;
  return {
    s,
    variance,
    z,
    p: Math.min(1, 2 * normalChance(-Math.abs(z))),
    slope: atRank(slopes, (n + 1) / 2),
    slopeLow: atRank(slopes, (n - reach) / 2),
    slopeHigh: atRank(slopes, (n + reach) / 2 + 1),
  };
}

/**
 * The fewest readings of which the strongest drift can be told from luck.
 *
 * Least n with 2/n! ≤ 1 − level, the chance of the strongest order or its mirror, and a p of that order below 1 − level
 *
 * @param level - of confidence, below 1 [1]
 * @returns readings [1]
 * @source DERIVED: all orders of n readings are alike likely where nothing drifts
 * @example leastReadings(0.95) // 5
 */
export function leastReadings(level: number): number {
  for (let [n, orders] = [2, 2]; ; n += 1, orders *= n) {
    const strongest = Array.from({ length: n }, (_, at) => ({ at, value: at }));
    if (2 / orders <= 1 - level && mannKendall(strongest, level).p < 1 - level) return n;
  }
}

function varianceOf(values: readonly number[]): number {
  const n = values.length;
  const tied = new Map<number, number>();
  for (const value of values) tied.set(value, (tied.get(value) ?? 0) + 1);
  const ties = [...tied.values()].reduce((sum, t) => sum + t * (t - 1) * (2 * t + 5), 0);
  return (n * (n - 1) * (2 * n + 5) - ties) / 18;
}

/** The value at a rank counted from 1, between two where the rank is broken. */
function atRank(sorted: readonly number[], rank: number): number {
  const inside = Math.min(sorted.length, Math.max(1, rank));
  const low = Math.floor(inside);
  const share = inside - low;
  const [one, other] = [nth(sorted, low - 1), nth(sorted, Math.min(sorted.length, low + 1) - 1)];
  return share === 0 ? one : one * (1 - share) + other * share;
}
