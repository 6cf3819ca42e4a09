import { formatNumber, type UnitSystem } from "#base";
import { sayVolume, volumeFigure } from "#words";
import { allSteps, type Pattern } from "#kit";
import { sayChange, trendLimit, type Trend } from "#readiness";
import type { TrendLimit } from "#web/drawing/trend-scales.ts";
import type { TrendCause, TrendSignal } from "#station";
import { sayCount } from "#web/parts/words/say-count.ts";
import { sayDay } from "#web/parts/words/say-time.ts";

/** A trend as it is shown: its name, its axis, its unit and how a reading is said. */
export interface TrendWords {
  readonly title: string;
  readonly reading: (units: UnitSystem) => string;
  readonly say: (value: number, units: UnitSystem) => string;
  /** At the axis, where the bare number would mislead. */
  readonly sayTick?: (value: number, units: UnitSystem) => string;
}

/** Each trend in words. */
export const TREND_WORDS = {
  pulls: {
    title: "Pulls to start",
    reading: () => "Pulls to the first start",
    say: (value: number) => sayCount(value, "pull"),
  },
  prime: {
    title: "Prime",
    reading: () => "Seconds from first stroke to water",
    say: (value: number) => `${Math.round(value)} s`,
  },
  fuel: {
    title: "Fuel burnt in a run",
    reading: (units) => `${units === "us" ? "US quarts" : "Litres"} of fuel burnt in the run`,
    say: (value, units) => sayVolume(value, "fuel", units),
    sayTick: (value, units) => volumeFigure(value, "fuel", units, 2),
  },
  water: {
    title: "Water found in the case",
    reading: (units) => `${units === "us" ? "US fluid ounces" : "Millilitres"} of water found in the case`,
    say: (value, units) => sayVolume(value, "drops", units),
    sayTick: (value, units) => volumeFigure(value, "drops", units, 2),
  },
  delivery: {
    title: "Delivery",
    reading: () => "Measured flow over expected flow",
    say: (value: number) => `${formatNumber(value * 100, 3)} %`,
    sayTick: (value: number) => `${Math.round(value * 100)} %`,
  },
} satisfies Readonly<Record<Trend["what"], TrendWords>>;

/** What a trend is called and how it is told. */
export function wordsOfTrend(what: Trend["what"]): TrendWords {
  return TREND_WORDS[what];
}

/** Whether kits of a pattern have readings of it: no pulls where there is no cord, no prime where nothing is primed. */
export function isTaken({ what, points }: Trend, pattern: Pattern): boolean {
  if (points.length > 0 || (what !== "pulls" && what !== "prime")) return true;
  return allSteps(pattern).some(({ timer }) => timer?.kind === what);
}

/** The lines that the pattern holds a trend to. */
export function limitsOf(what: Trend["what"], pattern: Pattern, units: UnitSystem): readonly TrendLimit[] {
  if (what === "delivery") return proofLimits(pattern);
  const most = trendLimit(what, pattern);
  if (most === undefined) return [];
  return [{ value: most, label: `At most ${wordsOfTrend(what).say(most, units)}` }];
}

function proofLimits({ hydraulics }: Pattern): readonly TrendLimit[] {
  if (!hydraulics) return [];
  const { grounds, notes } = hydraulics.proof;
  const { say } = TREND_WORDS.delivery;
  return [
    { value: notes, label: `Noted below ${say(notes)}` },
    { value: grounds, label: `Grounded below ${say(grounds)}` },
  ];
}

/** A trend in a few sentences: the last reading, between what they have been since when, and how they move. */
export function sayTrend(trend: Trend, units: UnitSystem): string {
  const { what, points } = trend;
  const say = (value: number) => wordsOfTrend(what).say(value, units);
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return "None measured yet.";
  const ending = `Last ${say(last.value)}, on ${sayDay(last.at)}.`;
  if (points.length === 1) return `${ending} It is the only one.`;
  const values = points.map(({ value }) => value);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const between = least === most ? `always ${say(least)}` : `from ${say(least)} to ${say(most)}`;
  return `${ending} ${points.length} since ${sayDay(first.at)}, ${between}. ${sayChange(trend, units)}`;
}

/** Since when, and what it was before and is now. */
export function saySince({ what, since, before, after }: TrendSignal, units: UnitSystem): string {
  const say = (value: number) =>
    what === "pulls" ? `${formatNumber(value, 2)} pulls` : wordsOfTrend(what).say(value, units);
  return `Since about ${sayDay(since)}: ${say(after)} rather than ${say(before)}, in the middle.`;
}

/** An item and what may be wrong with it, with how likely that is among the causes named. */
export function sayCause({ mode, chance }: TrendCause): string {
  return `${mode.name}: about ${Math.max(1, Math.round(10 * chance))} in 10`;
}

/** What the chances rest on. */
export function sayCauseBasis({ findings }: TrendSignal): string {
  if (findings === 0) return "The chances are the pattern's judgement; no finding bears on them yet.";
  return `The chances are the pattern's judgement and ${sayCount(findings, "finding")} on kits of it.`;
}
