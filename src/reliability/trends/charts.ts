import type { Sides } from "./run-length.ts";

/** One value of a series and when it was seen; times in order. */
export interface Observation {
  readonly at: number;
  readonly value: number;
}

export interface CusumPoint {
  readonly at: number;
  readonly up: number;
  readonly down: number;
}

export interface EwmaPoint {
  readonly at: number;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A chart's path and where it first passed its limit. */
export interface Chart<Point> {
  readonly path: readonly Point[];
  readonly firstSignal: number | undefined;
}

/**
 * Sums of what lies beyond an allowance above and below a target, begun at 0.
 *
 * S₊ = max(0, S₊ + x − target − k), S₋ = max(0, S₋ + target − k − x); a signal where one passes h
 *
 * @param series - readings in order
 * @param target - [unit of the values]
 * @param k - allowance [unit of the values]
 * @param h - limit [unit of the values]
 * @param sides - watched
 * @returns both sums after every reading, and where the first signal is
 * @source NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.3
 */
export function cusum(series: readonly Observation[], target: number, k: number, h: number, sides: Sides) {
  let [up, down] = [0, 0];
  const path = series.map(({ at, value }): CusumPoint => {
    up = sides === "down" ? 0 : Math.max(0, up + value - target - k);
    down = sides === "up" ? 0 : Math.max(0, down + target - k - value);
    return { at, up, down };
  });
  return { path, firstSignal: path.find((point) => point.up > h || point.down > h)?.at } satisfies Chart<CusumPoint>;
}

/**
 * A mean in which old readings fade, begun at the target, with its lasting limits.
 *
 * E = λx + (1 − λ)E; limits target ± L σ √(λ/(2 − λ))
 *
 * @param series - readings in order
 * @param target - [unit of the values]
 * @param sigma - scatter of one reading [unit of the values]
 * @param weight - λ [1]
 * @param width - L [1]
 * @param sides - watched
 * @returns the mean after every reading with its limits, and where the first signal is
 * @source NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4
 */
export function ewma(
  series: readonly Observation[],
  target: number,
  sigma: number,
  weight: number,
  width: number,
  sides: Sides,
) {
  const half = width * sigma * Math.sqrt(weight / (2 - weight));
  const [low, high] = [target - half, target + half];
  let mean = target;
  const path = series.map(({ at, value }): EwmaPoint => {
    mean = weight * value + (1 - weight) * mean;
    return { at, value: mean, low, high };
  });
  const isOut = (point: EwmaPoint) => (sides !== "down" && point.value > high) || (sides !== "up" && point.value < low);
  return { path, firstSignal: path.find(isOut)?.at } satisfies Chart<EwmaPoint>;
}
