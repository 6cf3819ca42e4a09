import { scaleLinear } from "d3-scale";
import type { AxisUnit } from "./delivery-scales.ts";
import type { Tick } from "./trend-scales.ts";

/** One instant of the forecast: [ms] since 1970-01-01 UTC, level [m]. */
export interface FanPoint {
  readonly at: number;
  readonly p05: number;
  readonly p25: number;
  readonly p50: number;
  readonly p75: number;
  readonly p95: number;
}

/** Soundings and what the level may do, as they are drawn. */
export interface SoundingsDrawn {
  readonly readings: readonly { readonly at: number; readonly level: number }[];
  readonly fan: readonly FanPoint[];
  /** When pumps ran. */
  readonly runs: readonly { readonly from: number; readonly to: number }[];
  /** Where the future begins; none on a sheet that is closed. */
  readonly now?: number;
}

/** Edges of the field the levels are drawn in [px]. */
export interface SoundingFrame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

interface ScreenPoint {
  readonly x: number;
  readonly y: number;
}

/** Everything at its place [px]. */
export interface SoundingPlaces {
  readonly readings: readonly ScreenPoint[];
  readonly median: readonly ScreenPoint[];
  /** Nine in ten, and one in two. */
  readonly wide: readonly (ScreenPoint & { readonly top: number })[];
  readonly narrow: readonly (ScreenPoint & { readonly top: number })[];
  readonly runs: readonly { readonly from: number; readonly to: number }[];
  readonly now?: number;
  readonly across: readonly Tick[];
  readonly up: readonly Tick[];
  /** The highest of the forecast, in words, where that is above the field. */
  readonly beyond?: string;
}

const MINUTE = 60_000;
/** Steps of a clock that people read at a glance [min]. */
const STEPS = [5, 10, 15, 30, 60, 120, 240, 480];

/**
 * Places soundings, forecast and pumping: wall clock across, level up from the lowest point of the space.
 *
 * @param drawn - instants in [ms], levels in [m]
 * @param unit - of the level, as the person reads it
 * @param frame - edges of the field [px]
 * @param sayTime - an instant in words
 */
export function placeSoundings(
  drawn: SoundingsDrawn,
  unit: AxisUnit,
  frame: SoundingFrame,
  sayTime: (at: number) => string,
): SoundingPlaces {
  const [first, last] = spanOf(drawn);
  const across = scaleLinear([first, last], [frame.left, frame.right]);
  const up = scaleLinear([0, unit.of(highestOf(drawn))], [frame.bottom, frame.top]).nice(4);
  const at = (when: number, level: number): ScreenPoint => ({ x: across(when), y: up(unit.of(Math.max(0, level))) });
  const band = (low: "p05" | "p25", high: "p75" | "p95") =>
    drawn.fan.map((point) => ({ ...at(point.at, point[low]), top: up(unit.of(point[high])) }));
  const format = up.tickFormat(4);
  const utmost = unit.of(Math.max(0, ...drawn.fan.map(({ p95 }) => p95)));
  return {
    readings: drawn.readings.map((reading) => at(reading.at, reading.level)),
    median: drawn.fan.map((point) => at(point.at, point.p50)),
    wide: band("p05", "p95"),
    narrow: band("p25", "p75"),
    runs: drawn.runs.map(({ from, to }) => ({ from: across(Math.max(first, from)), to: across(Math.min(last, to)) })),
    ...(drawn.now !== undefined && { now: across(drawn.now) }),
    across: clockTicks(first, last, (frame.right - frame.left) / 64).map((when) => ({
      place: across(when),
      label: sayTime(when),
    })),
    up: up.ticks(4).map((value) => ({ place: up(value), label: format(value) })),
    ...(utmost > up.domain()[1]! && { beyond: `${format(Math.round(utmost))} ${unit.symbol}` }),
  };
}

function spanOf({ readings, fan, runs, now }: SoundingsDrawn): readonly [number, number] {
  const written = [...readings.map(({ at }) => at), ...runs.map(({ to }) => to), ...(now === undefined ? [] : [now])];
  const first = Math.min(...written);
  const last = Math.max(first + 10 * MINUTE, fan.at(-1)?.at ?? 0, ...written);
  return [first - 0.02 * (last - first), last];
}

/** All soundings and half the forecast are always in sight; a wide fan may leave the field. */
function highestOf({ readings, fan }: SoundingsDrawn): number {
  const read = Math.max(0.1, ...readings.map(({ level }) => level));
  const likely = Math.max(0, ...fan.map(({ p75 }) => p75));
  const utmost = Math.max(0, ...fan.map(({ p95 }) => p95));
  return 1.15 * Math.max(read, Math.min(utmost, Math.max(1.5 * read, likely)));
}

/** Whole clock times, no more than fit. */
function clockTicks(first: number, last: number, most: number): readonly number[] {
  const span = (last - first) / MINUTE;
  const step = MINUTE * (STEPS.find((minutes) => span / minutes <= most) ?? 1440);
  const from = Math.ceil(first / step) * step;
  return Array.from({ length: Math.max(0, Math.floor((last - from) / step) + 1) }, (_, k) => from + k * step);
}
