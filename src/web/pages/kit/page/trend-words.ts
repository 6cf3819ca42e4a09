import { formatNumber, type UnitSystem } from "#base";
import { sayVolume, volumeIn, type Words } from "#words";
import { allSteps, type Pattern } from "#kit";
import { sayChange, trendLimit, type Trend } from "#readiness";
import type { TrendLimit } from "#web/drawing/trend-scales.ts";
import type { TrendCause, TrendSignal } from "#station";

import { sayDay } from "#web/parts/words/say-time.ts";

type TrendsWords = Words["trends"];

/** A trend as it is shown: its name, its axis, its unit and how a reading is said. */
export interface TrendWords {
  readonly title: string;
  readonly reading: (units: UnitSystem) => string;
  readonly say: (value: number, units: UnitSystem) => string;
  /** At the axis, where the bare number would mislead. */
  readonly sayTick?: (value: number, units: UnitSystem) => string;
  /** In the unit that the axis names, where that is not the reading's own. */
  readonly inUnit?: (value: number, units: UnitSystem) => number;
}

/** Each trend in words. */
const TREND_WORDS = {
  pulls: (words) => ({
    title: words.pulls(),
    reading: words.pullsAxis,
    say: (count) => words.sayPulls({ count }),
  }),
  prime: (words) => ({
    title: words.prime(),
    reading: words.primeAxis,
    say: sayPrimed,
  }),
  fuel: (words) => ({
    title: words.fuel(),
    reading: (units) => (units === "us" ? words.fuelAxisUs() : words.fuelAxis()),
    say: (value, units) => sayVolume(value, "fuel", units),
    inUnit: (value, units) => volumeIn(value, "fuel", units),
  }),
  water: (words) => ({
    title: words.water(),
    reading: (units) => (units === "us" ? words.waterAxisUs() : words.waterAxis()),
    say: (value, units) => sayVolume(value, "drops", units),
    inUnit: (value, units) => volumeIn(value, "drops", units),
  }),
  delivery: (words) => ({
    title: words.delivery(),
    reading: words.deliveryAxis,
    say: sayShare,
    sayTick: (value) => `${Math.round(value * 100)} %`,
  }),
} satisfies Readonly<Record<Trend["what"], (words: TrendsWords) => TrendWords>>;

/** Seconds to water. */
export function sayPrimed(seconds: number): string {
  return `${Math.round(seconds)} s`;
}

/** A measured flow as a share of the expected one. */
export function sayShare(ratio: number): string {
  return `${formatNumber(ratio * 100, 3)} %`;
}

/** What a trend is called and how it is told. */
export function wordsOfTrend(what: Trend["what"], words: TrendsWords): TrendWords {
  return TREND_WORDS[what](words);
}

/** Whether kits of a pattern have readings of it: no pulls where there is no cord, no prime where nothing is primed. */
export function isTaken({ what, points }: Trend, pattern: Pattern): boolean {
  if (points.length > 0 || (what !== "pulls" && what !== "prime")) return true;
  return allSteps(pattern).some(({ timer }) => timer?.kind === what);
}

/** The lines that the pattern holds a trend to. */
export function limitsOf(
  what: Trend["what"],
  pattern: Pattern,
  units: UnitSystem,
  words: TrendsWords,
): readonly TrendLimit[] {
  if (what === "delivery") return proofLimits(pattern, words);
  const most = trendLimit(what, pattern);
  if (most === undefined) return [];
  return [{ value: most, label: words.atMost({ value: wordsOfTrend(what, words).say(most, units) }) }];
}

function proofLimits({ hydraulics }: Pattern, words: TrendsWords): readonly TrendLimit[] {
  if (!hydraulics) return [];
  const { grounds, notes } = hydraulics.proof;

  return [
    { value: notes, label: words.notedBelow({ value: sayShare(notes) }) },
    { value: grounds, label: words.groundedBelow({ value: sayShare(grounds) }) },
  ];
}

/** A trend in a few sentences: the last reading, between what they have been since when, and how they move. */
export function sayTrend(
  trend: Trend,
  units: UnitSystem,
  { trends: words, standing }: { readonly trends: TrendsWords; readonly standing: Words["standing"] },
): string {
  const { what, points } = trend;
  const say = (value: number) => wordsOfTrend(what, words).say(value, units);
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return words.noneMeasured();
  const ending = { value: say(last.value), day: sayDay(last.at) };
  if (points.length === 1) return words.onlyOne(ending);
  const values = points.map(({ value }) => value);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const told = {
    ...ending,
    count: points.length,
    first: sayDay(first.at),
    least: say(least),
    change: sayChange(trend, standing, units),
  };
  return least === most ? words.always(told) : words.between({ ...told, most: say(most) });
}

/** Since when, and what it was before and is now. */
export function saySince({ what, since, before, after }: TrendSignal, units: UnitSystem, words: TrendsWords): string {
  const say = (value: number) =>
    what === "pulls" ? words.somePulls({ count: formatNumber(value, 2) }) : wordsOfTrend(what, words).say(value, units);
  return words.since({ day: sayDay(since), after: say(after), before: say(before) });
}

/** An item and what may be wrong with it, with how likely that is among the causes named. */
export function sayCause({ mode, chance }: TrendCause, words: TrendsWords): string {
  return words.cause({ mode: mode.name, tenths: Math.max(1, Math.round(10 * chance)) });
}

/** What the chances rest on. */
export function sayCauseBasis({ findings }: TrendSignal, words: TrendsWords): string {
  return findings === 0 ? words.basisNone() : words.basis({ count: findings });
}
