import { formatNumber, type UnitSystem } from "#base";
import { sayVolume, type Words } from "#words";
import type { Trend } from "./trends.ts";

/** Readings up to which a rise or fall may still be chance, whatever it looks like. */
const TOO_FEW = 4;
/** Two-sided 95 % of the standard normal. */
const CLEAR = 1.96;

/** How a trend's readings have moved over its runs. */
export type TrendChange =
  | { readonly kind: "too-few"; readonly runs: number }
  | { readonly kind: "none-clear"; readonly runs: number }
  /** By how much the fitted line rises or falls from the first run to the last; `by` is above 0, in the trend's unit. */
  | { readonly kind: "rising" | "falling"; readonly by: number; readonly runs: number };

/**
 * Whether a trend's readings rise or fall, and by how much from the first run to the last. A single odd reading does
 * not make a trend, nor hide one: S = Σ_{i<j} sign(x_j − x_i), clear where (|S| − 1) / √Var(S) > 1.96, with
 * Var(S) = (n(n−1)(2n+5) − Σ_t t(t−1)(2t+5)) / 18 over groups of t equal readings; the rise is (n − 1) times the
 * median of (x_j − x_i) / (j − i).
 *
 * @param trend - readings in order of the runs, evenly spaced by run and not by day
 * @returns what the readings do; `by` in the unit of the readings
 * @range from 5 readings on; with fewer the answer is "too-few". A change within the last few of many runs may not show
 * @source Mann 1945 and Kendall 1975 (test), Theil 1950 and Sen 1968 (slope) | FROM MEMORY
 * @example
 * changeOf({ what: "prime", points: [20, 24, 30, 34, 41].map((value) => ({ value })) }) // { kind: "rising", by: 21, runs: 5 }
 */
export function changeOf({ points }: Trend): TrendChange {
  const runs = points.length;
  if (runs <= TOO_FEW) return { kind: "too-few", runs };
  const values = points.map(({ value }) => value);
  const sum = signSum(values);
  const by = (runs - 1) * medianSlope(values);
  if (by === 0 || (Math.abs(sum) - 1) / Math.sqrt(signVariance(values)) <= CLEAR) return { kind: "none-clear", runs };
  return { kind: by > 0 ? "rising" : "falling", by: Math.abs(by), runs };
}

/** The change in plain words: "Slower by 31 s over 9 runs." */
export function sayChange(trend: Trend, words: Words["standing"], units: UnitSystem = "metric"): string {
  const change = changeOf(trend);
  if (change.kind === "too-few") return words.changeFew();
  if (change.kind === "none-clear") return words.changeNone({ runs: change.runs });
  const { kind: way, by, runs } = change;
  switch (trend.what) {
    case "pulls":
      return words.changePulls({ way, by: formatNumber(by, 2), runs });
    case "prime":
      return words.changePrime({ way, seconds: Math.max(1, Math.round(by)), runs });
    case "delivery":
      return words.changeDelivery({ way, share: formatNumber(by * 100, 2), runs });
    default:
      return words.changeVolume({ way, volume: sayVolume(by, VOLUMES[trend.what], units, 2), runs });
  }
}

const VOLUMES = { fuel: "fuel", water: "drops" } as const;

function pairs<T>(values: readonly number[], read: (rise: number, apart: number) => T): readonly T[] {
  return values.flatMap((later, j) => values.slice(0, j).map((earlier, i) => read(later - earlier, j - i)));
}

function signSum(values: readonly number[]): number {
  return pairs(values, (rise) => Math.sign(rise)).reduce<number>((sum, sign) => sum + sign, 0);
}

/** Never 0 where the signs do not sum to 0. */
function signVariance(values: readonly number[]): number {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  const ties = [...counts.values()].reduce((sum, count) => sum + spread(count), 0);
  return (spread(values.length) - ties) / 18;
}

function spread(count: number): number {
  return count * (count - 1) * (2 * count + 5);
}

function medianSlope(values: readonly number[]): number {
  const slopes = pairs(values, (rise, apart) => rise / apart).toSorted((one, other) => one - other);
  const middle = slopes.length / 2;
  const [low, high] = [slopes[Math.ceil(middle) - 1] ?? 0, slopes[Math.floor(middle)] ?? 0];
  return (low + high) / 2;
}
