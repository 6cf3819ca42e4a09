import { formatNumber } from "#base";
import { allSteps, type Pattern } from "#kit";
import type { Words } from "#words";
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

/** A trend that clearly gets worse, with its last reading and what the pattern holds it to. */
export interface Watch {
  readonly trend: Trend;
  readonly last: number;
  readonly limit: number;
}

/**
 * A kit's trends worth watching: each that clearly gets worse and, changing as much again, passes its limit, or has passed
 * it. It bears on no standing: the kit met its pattern when it was last run.
 */
export function watchesOf(kit: KitState, pattern: Pattern): readonly Watch[] {
  return trendsOf(kit).flatMap((trend) => {
    const limit = trendLimit(trend.what, pattern);
    const last = trend.points.at(-1)?.value;
    if (limit === undefined || last === undefined || !nears(trend, last, limit)) return [];
    return [{ trend, last, limit }];
  });
}

function nears(trend: Trend, last: number, limit: number): boolean {
  const change = changeOf(trend);
  if (trend.what === "delivery") return change.kind === "falling" && last - change.by < limit;
  return change.kind === "rising" && last + change.by > limit;
}

/** A trend worth watching in words: "Prime: slower by 32 s over 9 runs. Last 58 s; at most 60 s." */
export function sayWatch({ trend, last, limit }: Watch, words: Words["standing"]): string {
  const { what } = trend;
  const said = sayChange(trend, words);
  const change = `${said.charAt(0).toLowerCase()}${said.slice(1)}`;
  if (what === "delivery") return words.watchShare({ change, last: percent(last), limit: percent(limit) });
  const say = (value: number) => (what === "prime" ? `${Math.round(value)} s` : String(value));
  return words.watch({ what, change, last: say(last), limit: say(limit) });
}

function percent(share: number): string {
  return formatNumber(share * 100, 3);
}
