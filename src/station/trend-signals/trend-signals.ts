import {
  checksFinding,
  itemNamed,
  modeNamed,
  type Check,
  type Item,
  type Mode,
  type Pattern,
  type TroubleSign,
} from "#kit";
import { changeOf, checksTelling, type Trend } from "#readiness";

/** A trend that gets worse: since when, by how much, and what may be behind it. */
export interface TrendSignal {
  readonly what: Trend["what"];
  /** RFC 3339: the first run after the change. */
  readonly since: string;
  /** Middle reading before and from then on, in the trend's unit. */
  readonly before: number;
  readonly after: number;
  /** Likeliest first; empty where the pattern names no causes. */
  readonly likely: readonly TrendCause[];
  /** Findings on kits of the pattern that bear on the chances; the rest is the pattern's judgement. */
  readonly findings: number;
}

/** A mode that may be behind a trend, and the checks that would tell. */
export interface TrendCause {
  readonly item: Item;
  readonly mode: Mode;
  /** Of the causes that the pattern names for it [1]. */
  readonly chance: number;
  readonly checks: readonly Check[];
}

/** What a trend is the early form of, as patterns name it. */
const SIGNS: Readonly<Record<Trend["what"], readonly TroubleSign[]>> = {
  pulls: ["will-not-start", "starts-and-dies"],
  prime: ["no-prime", "loses-prime"],
  delivery: ["weak-delivery"],
  fuel: ["starts-and-dies", "weak-delivery"],
  water: [],
};
/** So many of the likeliest are told. */
const TOLD = 3;

/**
 * What a trend that clearly gets worse says: more pulls, a slower prime, less delivery. A trend that gets better, or only
 * scatters, says nothing.
 *
 * Since when: the split with the greatest |Σ sign(later − earlier)| over pairs across it. How much: the medians on both
 * sides. Causes: what the pattern names behind the readings, each as one finding, else those of its troubles of which the
 * trend is the early form, weights counted as so many findings; findings of each mode added.
 *
 * @param trend - of one kit, oldest first
 * @param pattern - it is built to
 * @param found - findings so far by mode, on kits of this pattern
 * @returns undefined where `changeOf` tells no change for the worse
 * @source Pettitt, Applied Statistics 28 (1979) 126-135 (split, FROM MEMORY); Mann 1945 for whether there is one
 */
export function trendSignal(
  trend: Trend,
  pattern: Pattern,
  found: ReadonlyMap<string, number>,
): TrendSignal | undefined {
  const { kind } = changeOf(trend);
  if (kind !== (trend.what === "delivery" ? "falling" : "rising")) return undefined;
  const values = trend.points.map(({ value }) => value);
  const split = splitOf(values);
  const causes = causesOf(trend.what, pattern, found);
  return {
    what: trend.what,
    since: trend.points[split]!.at,
    before: median(values.slice(0, split)),
    after: median(values.slice(split)),
    likely: causes.likely.slice(0, TOLD),
    findings: causes.findings,
  };
}

/** The place from which on readings are most unlike those before it. */
function splitOf(values: readonly number[]): number {
  const places = values.slice(1).map((_, i) => i + 1);
  const unlike = (at: number) =>
    Math.abs(values.slice(0, at).reduce((sum, one) => sum + signsAfter(one, values.slice(at)), 0));
  return places.reduce((best, at) => (unlike(at) > unlike(best) ? at : best), 1);
}

function signsAfter(one: number, later: readonly number[]): number {
  return later.reduce((sum, other) => sum + Math.sign(other - one), 0);
}

function median(values: readonly number[]): number {
  const sorted = values.toSorted((one, other) => one - other);
  return (sorted[Math.ceil(sorted.length / 2 - 1)]! + sorted[Math.floor(sorted.length / 2)]!) / 2;
}

function causesOf(what: Trend["what"], pattern: Pattern, found: ReadonlyMap<string, number>) {
  const behind = behindOf(what, pattern).map((mode) => ({ mode, weight: 1 }));
  const named = behind.length > 0 ? behind : troublesOf(what, pattern);
  const weights = new Map<string, number>();
  for (const { mode = "", weight } of named) weights.set(mode, (weights.get(mode) ?? 0) + weight);
  for (const mode of weights.keys()) weights.set(mode, weights.get(mode)! + (found.get(mode) ?? 0));
  const whole = [...weights.values()].reduce((sum, one) => sum + one, 0);
  const likely = [...weights].flatMap(([id, weight]) => causeOf(pattern, id, weight / whole));
  const findings = [...weights.keys()].reduce((sum, mode) => sum + (found.get(mode) ?? 0), 0);
  return { likely: likely.toSorted((one, other) => other.chance - one.chance), findings };
}

function troublesOf(what: Trend["what"], { troubles = [] }: Pattern) {
  return troubles.filter(({ sign }) => SIGNS[what].includes(sign)).flatMap(({ causes }) => causes);
}

/** Modes that the pattern names behind the readings of a trend that it measures. */
function behindOf(what: Trend["what"], pattern: Pattern): readonly string[] {
  if (what !== "fuel" && what !== "water") return [];
  return [...checksTelling(pattern, what).values()].flatMap(({ behind = [] }) => behind);
}

function causeOf(pattern: Pattern, id: string, chance: number): readonly TrendCause[] {
  const mode = modeNamed(pattern, id);
  const item = mode && itemNamed(pattern, mode.item);
  return mode && item ? [{ item, mode, chance, checks: checksFinding(pattern, id) }] : [];
}
