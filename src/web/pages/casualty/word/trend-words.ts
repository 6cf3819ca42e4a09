import type { UnitSystem } from "#base";
import type { OnSceneAnswer } from "#questions";
import { aboutLevel, sayDuration, sayLevelAbout, type Words } from "#words";

export type Trend = NonNullable<NonNullable<OnSceneAnswer["reading"]>["trend"]>;

const TRENDS = { rising: "trendRising", falling: "trendFalling", unclear: "trendUnclear" } as const;

/** "Trend only: rising, by the last 4 soundings.": where the soundings fit nothing, all there is to go by. */
export function sayTrend({ kind, soundings }: Trend, words: Words["sheetWord"]): string {
  return words[TRENDS[kind]]({ count: soundings });
}

/** Where the trend leads if it goes on so, with its doubt. A trend that is unclear leads nowhere. */
export function sayTrendAhead(
  { kind, ahead, level }: Trend,
  units: UnitSystem,
  words: Words["sheetWord"],
): string | undefined {
  if (kind === "unclear") return undefined;
  return words.trendAhead({
    level: sayLevelAbout(level.p50, units),
    low: aboutLevel(level.p05, units),
    high: aboutLevel(level.p95, units),
    duration: sayDuration(ahead, "estimate"),
  });
}
