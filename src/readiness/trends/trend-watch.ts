import { formatNumber } from "#base";
import { allSteps, type Pattern } from "#kit";
import type { KitState } from "../state.ts";
import { changeOf, sayChange } from "./trend-change.ts";
import { trendsOf, type Trend } from "./trends.ts";

/**
 * What a pattern holds a trend to: most pulls, most seconds to water [s], or the share of the expected delivery below
 * which it is noted [1]. Undefined where the pattern has none.
 */
export function trendLimit(what: Trend["what"], pattern: Pattern): number | undefined {
  if (what === "delivery") return pattern.hydraulics?.proof.notes;
  const timers = allSteps(pattern).flatMap(({ timer }) => timer ?? []);
  return timers.flatMap((timer) => (timer.kind === what ? [timer.atMost] : []))[0];
}

/**
 * A kit's trends worth watching, in words: each that clearly gets worse and, changing as much again, passes its limit,
 * or has passed it. It bears on no standing: the kit met its pattern when it was last run.
 *
 * @returns such as "Prime: slower by 32 s over 9 runs. Last 58 s; at most 60 s."
 */
export function watchesOf(kit: KitState, pattern: Pattern): readonly string[] {
  return trendsOf(kit).flatMap((trend) => {
    const limit = trendLimit(trend.what, pattern);
    const last = trend.points.at(-1)?.value;
    if (limit === undefined || last === undefined || !nears(trend, last, limit)) return [];
    return [sayWatch(trend, last, limit)];
  });
}

function nears(trend: Trend, last: number, limit: number): boolean {
  const change = changeOf(trend);
  if (trend.what === "delivery") return change.kind === "falling" && last - change.by < limit;
  return change.kind === "rising" && last + change.by > limit;
}

const NAMES: Readonly<Record<Trend["what"], string>> = {
  pulls: "Pulls",
  prime: "Prime",
  delivery: "Delivery",
  fuel: "Fuel burnt",
  water: "Water found",
};

function sayWatch(trend: Trend, last: number, limit: number): string {
  const { what } = trend;
  const words = sayChange(trend);
  const change = `${words.charAt(0).toLowerCase()}${words.slice(1)}`;
  const bound = what === "delivery" ? `noted below ${sayReading(what, limit)}` : `at most ${sayReading(what, limit)}`;
  return `${NAMES[what]}: ${change} Last ${sayReading(what, last)}; ${bound}.`;
}

function sayReading(what: Trend["what"], value: number): string {
  if (what === "delivery") return `${formatNumber(value * 100, 3)} %`;
  return what === "prime" ? `${Math.round(value)} s` : String(value);
}
