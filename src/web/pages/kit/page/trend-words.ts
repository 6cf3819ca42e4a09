import { formatNumber } from "#base";
import type { Pattern } from "#kit";
import { sayChange, trendLimit, type Trend } from "#readiness";
import type { TrendLimit } from "../../../drawing/trend-scales.ts";
import type { TrendCause, TrendSignal } from "#station";
import { sayCount } from "../../../parts/words/say-count.ts";
import { sayDay } from "../../../parts/words/say-time.ts";

/** A trend as it is shown: its name, its axis, its unit and how a reading is said. */
export interface TrendWords {
  readonly title: string;
  readonly reading: string;
  readonly say: (value: number) => string;
  /** At the axis, where the bare number would mislead. */
  readonly sayTick?: (value: number) => string;
}

/** Each trend in words. */
export const TREND_WORDS: Readonly<Record<Trend["what"], TrendWords>> = {
  pulls: {
    title: "Pulls to start",
    reading: "Pulls to the first start",
    say: (value) => sayCount(value, "pull"),
  },
  prime: {
    title: "Prime",
    reading: "Seconds from first stroke to water",
    say: (value) => `${Math.round(value)} s`,
  },
  delivery: {
    title: "Delivery",
    reading: "Measured flow over expected flow",
    say: (value) => `${formatNumber(value * 100, 3)} %`,
    sayTick: (value) => `${Math.round(value * 100)} %`,
  },
};

/** The lines that the pattern holds a trend to. */
export function limitsOf(what: Trend["what"], pattern: Pattern): readonly TrendLimit[] {
  if (what === "delivery") return proofLimits(pattern);
  const most = trendLimit(what, pattern);
  if (most === undefined) return [];
  return [{ value: most, label: `At most ${TREND_WORDS[what].say(most)}` }];
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
export function sayTrend(trend: Trend): string {
  const { what, points } = trend;
  const { say } = TREND_WORDS[what];
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return "None measured yet.";
  const ending = `Last ${say(last.value)}, on ${sayDay(last.at)}.`;
  if (points.length === 1) return `${ending} It is the only one.`;
  const values = points.map(({ value }) => value);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const between = least === most ? `always ${say(least)}` : `from ${say(least)} to ${say(most)}`;
  return `${ending} ${points.length} since ${sayDay(first.at)}, ${between}. ${sayChange(trend)}`;
}

/** Since when, and what it was before and is now. */
export function saySince({ what, since, before, after }: TrendSignal): string {
  const say = (value: number) => (what === "pulls" ? `${formatNumber(value, 2)} pulls` : TREND_WORDS[what].say(value));
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
