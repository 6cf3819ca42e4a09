import { firstOf, lastOf, nth } from "#base";
import { NINETY } from "./sounding-forecast.ts";
import type { Misfit } from "./sounding-misfit.ts";
import type { Pumped, Reading } from "./sounding-model.ts";

/** Middle and 90 % interval. */
export interface TrendInterval {
  readonly p05: number;
  readonly p50: number;
  readonly p95: number;
}

/** Where the last soundings point, carried on a little way. Not an estimate: nothing is known of hole or pump in it. */
export interface LevelTrend {
  /** The interval of the rise lies above nothing, below it, or on both sides. */
  readonly kind: "rising" | "falling" | "unclear";
  /** Soundings it is drawn from, at least three; the first and the last of them [s]. */
  readonly soundings: number;
  readonly from: number;
  readonly to: number;
  /** Rise of the level; a fall is negative [m/s]. */
  readonly rise: TrendInterval;
  /** So long after the last sounding [s] … */
  readonly ahead: number;
  /** … the level is this if it goes on so, never below the floor [m]. */
  readonly level: TrendInterval;
}

/** A trend is carried on so far and no further [s]. */
const AHEAD = 900;
/** Soundings this much older count half [s]. */
const HALF_LIFE = 300;
/** Older ones, and more than so many, say nothing of the trend [s]. */
const OLDEST = 1800;
const MOST = 6;
const FEWEST = 3;
/**
 * Share of its pace that a level keeps over the time ahead, and how far that may be out: levels slow as they near the
 * outside level or the point where pump and hole are even.
 */
const KEPT = 0.6;
const KEPT_DOUBT = 0.45;

/**
 * The trend of the last soundings: a straight line by weighted least squares, newer soundings counting more.
 *
 * slope doubt² = s²·Σ(w·d)²/(Σw·d²)², d the time from the weighted mean, s the stated error or, where larger, what
 * the soundings themselves scatter about the line. Ahead, 0.6 of the pace is kept, give or take 0.45.
 *
 * @param readings - in order of time
 * @param noise - error of one sounding [m]
 * @param since - soundings before this are left out [s]: something changed then
 * @returns the trend; none from fewer than three soundings
 * @range the next 15 minutes, while nothing changes
 * @source DERIVED: weighted least squares; coverage measured in docs/methods/soundings.md, "Trend"
 * @example recentTrend([{ at: 0, level: 0.3 }, { at: 300, level: 0.4 }, { at: 600, level: 0.5 }], 0.015)?.kind
 *   // "rising"
 */
export function recentTrend(
  readings: readonly Reading[],
  noise: number,
  since = Number.NEGATIVE_INFINITY,
): LevelTrend | undefined {
  const last = readings[readings.length - 1]?.at ?? 0;
  const used = readings.filter(({ at }) => at >= since && at >= last - OLDEST).slice(-MOST);
  if (used.length < FEWEST) return undefined;
  const line = fitLine(used, noise);
  const rise = around(line.slope, line.slopeDoubt);
  const lastLevel = line.middle + line.slope * (last - line.at);
  const level = lastLevel + KEPT * line.slope * AHEAD;
  const lever = last - line.at + KEPT * AHEAD;
  const reach = Math.hypot(line.middleDoubt, line.slopeDoubt * lever, KEPT_DOUBT * line.slope * AHEAD);
  const { p05, p50, p95 } = around(level, reach);
  return {
    kind: rise.p05 > 0 ? "rising" : rise.p95 < 0 ? "falling" : "unclear",
    soundings: used.length,
    from: firstOf(used).at,
    to: last,
    rise,
    ahead: AHEAD,
    level: { p05: Math.max(0, p05), p50: Math.max(0, p50), p95: Math.max(0, p95) },
  };
}

function around(middle: number, doubt: number): TrendInterval {
  return { p05: middle - NINETY * doubt, p50: middle, p95: middle + NINETY * doubt };
}

/** A line through its weighted middle, with doubts independent of each other. */
interface Line {
  readonly at: number;
  readonly middle: number;
  readonly middleDoubt: number;
  readonly slope: number;
  readonly slopeDoubt: number;
}

function fitLine(readings: readonly Reading[], noise: number): Line {
  const last = lastOf(readings).at;
  const weights = readings.map(({ at }) => 2 ** ((at - last) / HALF_LIFE));
  const sum = (value: (reading: Reading, weight: number) => number): number =>
    readings.reduce((total, reading, k) => total + value(reading, nth(weights, k)), 0);
  const all = sum((_, w) => w);
  const at = sum((one, w) => w * one.at) / all;
  const middle = sum((one, w) => w * one.level) / all;
  const leverage = sum((one, w) => w * (one.at - at) ** 2);
  const slope = sum((one, w) => w * (one.at - at) * (one.level - middle)) / leverage;
  const off = sum((one, w) => w * (one.level - middle - slope * (one.at - at)) ** 2) / all;
  const spread = Math.max(noise, Math.sqrt((off * readings.length) / (readings.length - 2)));
  return {
    at,
    middle,
    middleDoubt: (spread * Math.sqrt(sum((_, w) => w * w))) / all,
    slope,
    slopeDoubt: (spread * Math.sqrt(sum((one, w) => (w * (one.at - at)) ** 2))) / leverage,
  };
}

/**
 * The trend to be told where the soundings do not fit one steady casualty: of the soundings since the pumping last
 * changed and since the change that was found.
 *
 * @param given - readings in order of time, pumping [s], error of one sounding [m]
 * @param misfit - what the readings do not fit, and where
 * @returns the trend; none from fewer than three soundings since
 * @source DERIVED: `recentTrend`
 */
export function trendOf(
  given: {
    readonly readings: readonly Reading[];
    readonly pumping: readonly Pumped[];
    readonly prior: { readonly noise: number };
  },
  misfit: Misfit,
): LevelTrend | undefined {
  const last = lastOf(given.readings).at;
  const corners = given.pumping.flatMap(({ from, to }) => (to === undefined ? [from] : [from, to]));
  const found = misfit.change === undefined ? [] : [nth(given.readings, misfit.change.after).at];
  const since = Math.max(...[...corners, ...found].filter((at) => at <= last));
  return recentTrend(given.readings, given.prior.noise, since);
}
