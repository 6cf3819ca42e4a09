import type { UnitSystem } from "#base";
import type { OnSceneAnswer } from "#questions";
import { sayCount } from "#web/parts/index.ts";
import { aboutLevel, sayDuration, sayLevelAbout } from "#words";

export type Trend = NonNullable<NonNullable<OnSceneAnswer["reading"]>["trend"]>;

/** "Trend only: rising, by the last 4 soundings.": where the soundings fit nothing, all there is to go by. */
export function sayTrend({ kind, soundings }: Trend): string {
  const way = kind === "unclear" ? "neither rising nor falling clearly" : kind;
  return `Trend only: ${way}, by the last ${sayCount(soundings, "sounding")}.`;
}

/** Where the trend leads if it goes on so, with its doubt. A trend that is unclear leads nowhere. */
export function sayTrendAhead({ kind, ahead, level }: Trend, units: UnitSystem): string | undefined {
  if (kind === "unclear") return undefined;
  const [low, high] = [level.p05, level.p95].map((si) => aboutLevel(si, units));
  return `If it goes on so: ${sayLevelAbout(level.p50, units)} (${low} to ${high}) ${sayDuration(ahead, "estimate")} after the last sounding. No hole, no pump and no deck edge is reckoned with.`;
}
