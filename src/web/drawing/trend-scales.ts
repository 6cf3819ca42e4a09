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
): TrendPlaces {
  const across = timeScale(points, frame);
  const highest = Math.max(...points.map(({ value }) => value), ...limits.map(({ value }) => value), 1e-9);
  const up = scaleLinear([0, highest * 1.12], [frame.bottom, frame.top]).nice(4);
  const format = up.tickFormat(4);
  const count = Math.max(2, Math.floor((frame.right - frame.left) / 70));
  return {
    points: points.map(({ at, value }) => ({ x: across(Date.parse(at)), y: up(value), value })),
    limits: limits.map((limit) => ({ ...limit, y: up(limit.value) })),
    across: across.ticks(count).map((day) => ({ place: across(day), label: sayTick(day) })),
    up: up.ticks(4).map((value) => ({ place: up(value), label: format(value) })),
  };
}

/** Time across; a single reading stands in the middle of two months. */
function timeScale(points: readonly TrendPoint[], { left, right }: TrendFrame) {
  const times = points.map(({ at }) => Date.parse(at));
  const [first, last] = [Math.min(...times), Math.max(...times)];
  const margin = Math.max((last - first) * 0.04, first === last ? 30 * DAY_MS : DAY_MS);
  return scaleUtc([first - margin, last + margin], [left, right]);
}

function sayTick(day: Date): string {
  const isYear = day.getUTCMonth() === 0 && day.getUTCDate() === 1;
  const parts = isYear
    ? ({ year: "numeric" } as const)
    : day.getUTCDate() === 1
      ? ({ month: "short" } as const)
      : ({ day: "numeric", month: "short" } as const);
  return new Intl.DateTimeFormat("en-GB", { ...parts, timeZone: "UTC" }).format(day);
}
