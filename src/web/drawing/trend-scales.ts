import { scaleLinear, scaleUtc } from "d3-scale";

/** One reading of a trend: when, as an RFC 3339 instant, and how much. */
export interface TrendPoint {
  readonly at: string;
  readonly value: number;
}

/** A line a reading is held to. */
export interface TrendLimit {
  readonly value: number;
  readonly label: string;
}

/** A tick of an axis at its place [px]. */
export interface Tick {
  readonly place: number;
  readonly label: string;
}

/** A trend's points and axes at their places [px]. */
export interface TrendPlaces {
  readonly points: readonly { readonly x: number; readonly y: number; readonly value: number }[];
  readonly limits: readonly (TrendLimit & { readonly y: number })[];
  readonly across: readonly Tick[];
  readonly up: readonly Tick[];
}

/** Edges of the field the points are drawn in [px]. */
export interface TrendFrame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const DAY_MS = 86_400_000;

/** Places points, limits and ticks: time across, readings up from nought, with room above the highest of them. */
export function placeTrend(
  points: readonly TrendPoint[],
  limits: readonly TrendLimit[],
  frame: TrendFrame,
  sayValue?: (value: number) => string,
): TrendPlaces {
  const across = timeScale(points, frame);
  const values = [...points, ...limits].map(({ value }) => value);
  const up = scaleLinear([lowest(values), Math.max(...values, 1e-9) * 1.12], [frame.bottom, frame.top]).nice(4);
  const format = sayValue ?? up.tickFormat(4);
  const count = Math.max(2, Math.floor((frame.right - frame.left) / 70));
  return {
    points: points.map(({ at, value }) => ({ x: across(Date.parse(at)), y: up(value), value })),
    limits: limits.map((limit) => ({ ...limit, y: up(limit.value) })),
    across: spaced(across.ticks(count).map((day, index) => ({ place: across(day), label: sayTick(day, index === 0) }))),
    up: up.ticks(4).map((value) => ({ place: up(value), label: format(value) })),
  };
}

/** Room that one letter of a tick takes, and the gap between two [px]. */
const LETTER = 8.6;
const GAP = 6;

/** Leaves out the words of a tick that would run into the one before it. */
function spaced(ticks: readonly Tick[]): readonly Tick[] {
  let free = -Infinity;
  return ticks.map((tick) => {
    const half = (tick.label.length * LETTER) / 2;
    if (tick.place - half < free) return { ...tick, label: "" };
    free = tick.place + half + GAP;
    return tick;
  });
}

/** Readings begin at nought, but for those that all lie far above it: these would be one flat line at the top. */
function lowest(values: readonly number[]): number {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  return least > 0.6 * most ? least - (most - least) * 0.25 : 0;
}

/** Time across; a single reading stands in the middle of two months. */
function timeScale(points: readonly TrendPoint[], { left, right }: TrendFrame) {
  const times = points.map(({ at }) => Date.parse(at));
  const [first, last] = [Math.min(...times), Math.max(...times)];
  const margin = Math.max((last - first) * 0.04, first === last ? 30 * DAY_MS : DAY_MS);
  return scaleUtc([first - margin, last + margin], [left, right]);
}

/** A year at its first day, else the month; the first tick says its year too. */
function sayTick(day: Date, isFirst: boolean): string {
  const isYear = day.getUTCMonth() === 0 && day.getUTCDate() === 1;
  const year = { year: "numeric" } as const;
  const numeric = "numeric" as const;
  const month = { ...(day.getUTCDate() !== 1 && { day: numeric }), month: "short" } as const;
  const parts = isYear ? year : { ...month, ...(isFirst && year) };
  return new Intl.DateTimeFormat("en-GB", { ...parts, timeZone: "UTC" }).format(day);
}
