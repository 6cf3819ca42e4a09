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
  /** Where the readings' axis begins, in words, if not at nought. */
  readonly begins?: string;
}

/** Edges of the field the points are drawn in [px]. */
export interface TrendFrame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const DAY_MS = 86_400_000;

/** Who reads a trend: the tag of the language by BCP 47, and a reading in words where a bare number would mislead. */
export interface TrendReader {
  readonly language: string;
  readonly sayValue?: ((value: number) => string) | undefined;
  /** A reading in the unit of the axis, where it is not the reading's own: figures at the axis are round in it. */
  readonly inUnit?: ((value: number) => number) | undefined;
}

/** Places points, limits and ticks: time across, readings up, with room above the highest of them. */
export function placeTrend(
  points: readonly TrendPoint[],
  limits: readonly TrendLimit[],
  frame: TrendFrame,
  { language, sayValue, inUnit = (value) => value }: TrendReader,
): TrendPlaces {
  const across = timeScale(points, frame);
  const read = [...points, ...limits].map(({ value }) => ({ value: inUnit(value) }));
  const up = readingScale(read, frame);
  const ticks = readingTicks(up, read, sayValue ?? up.tickFormat(4));
  const count = Math.max(2, Math.floor((frame.right - frame.left) / 70));
  const days = across.ticks(count).filter((tick) => tick.getTime() % DAY_MS === 0);
  return {
    points: points.map(({ at, value }) => ({ x: across(Date.parse(at)), y: up(inUnit(value)), value })),
    limits: limits.map((limit) => ({ ...limit, y: up(inUnit(limit.value)) })),
    across: spaced(days.map((day, index) => ({ place: across(day), label: sayTick(day, index === 0, language) }))),
    up: ticks,
    ...(up.domain()[0]! > 0 && ticks[0] && { begins: ticks[0].label }),
  };
}

/** How far below a point, and above it, words stand beside it [px]. */
interface Beside {
  readonly below: number;
  readonly above: number;
}

/** Where the words of a point stand: below it where that is wanted and they keep clear of the axis, else above it [px]. */
export function wordsBeside(y: number, isBelow: boolean, { below, above }: Beside, { bottom }: TrendFrame): number {
  return isBelow && y + below < bottom - CLEAR ? y + below : y - above;
}

/** Between words and the axis below them [px]. */
const CLEAR = 5;

type Read = readonly { readonly value: number }[];

/** Readings up from the lowest; where all are nought, nought stands at the bottom. */
function readingScale(read: Read, { bottom, top }: TrendFrame) {
  const values = read.map(({ value }) => value);
  const most = Math.max(...values);
  return scaleLinear([lowest(values), most > 0 ? most * 1.12 : 4], [bottom, top]).nice(4);
}

/** Ticks of the readings, each said once: wholes where all was counted in wholes, nought alone where nothing else was read. */
function readingTicks(up: ReturnType<typeof readingScale>, read: Read, say: (value: number) => string) {
  const isCounted = read.every(({ value }) => Number.isInteger(value));
  const isNought = read.every(({ value }) => value === 0);
  const ticks = up
    .ticks(4)
    .filter((value) => (!isCounted || Number.isInteger(value)) && (!isNought || value === 0))
    .map((value) => ({ place: up(value), label: say(value) }));
  return ticks.filter(({ label }, index) => label !== ticks[index - 1]?.label);
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

/**
 * Readings begin at nought, but for those that all lie far above it and differ by more than a tenth: these would be one
 * line at the top. One reading, or equal ones, have no spread to look at closely.
 */
function lowest(values: readonly number[]): number {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const isFarAbove = least > 0.6 * most && most - least > 0.1 * most;
  return isFarAbove ? least - (most - least) * 0.25 : 0;
}

/** Time across; readings of a fortnight stand in the middle of two months. */
function timeScale(points: readonly TrendPoint[], { left, right }: TrendFrame) {
  const times = points.map(({ at }) => Date.parse(at));
  const [first, last] = [Math.min(...times), Math.max(...times)];
  const margin = last - first < 14 * DAY_MS ? 30 * DAY_MS : Math.max((last - first) * 0.04, DAY_MS);
  return scaleUtc([first - margin, last + margin], [left, right]);
}

/** A year at its first day, else the month; the first tick says its year too. */
function sayTick(day: Date, isFirst: boolean, language: string): string {
  const isYear = day.getUTCMonth() === 0 && day.getUTCDate() === 1;
  const year = { year: "numeric" } as const;
  const numeric = "numeric" as const;
  const month = { ...(day.getUTCDate() !== 1 && { day: numeric }), month: "short" } as const;
  const parts = isYear ? year : { ...month, ...(isFirst && year) };
  return new Intl.DateTimeFormat(language, { ...parts, timeZone: "UTC" }).format(day);
}
