import type { Entry } from "#log";
import type { Bodies, CasualtyState } from "#readiness";
import type { ToldPercentile } from "#reliability";
import { sheetMoments } from "../timeline/index.ts";

/** A sounding upon which the page told of levels to come, and the next one, by which it is judged. */
export interface LevelForecast {
  /** Id of the sounding's line. */
  readonly entry: string;
  readonly at: string;
  /** As whoever wrote it then knew her. */
  readonly casualty: CasualtyState;
  readonly space: string;
  /** [m] */
  readonly level: number;
  readonly next: { readonly at: string; readonly level: number };
}

/** Lines after which what was told before no longer holds. */
const CHANGES: ReadonlySet<string> = new Set(["pump-set", "pump-seen", "hole-patched", "tow-set", "fuel-smelt"]);
/** The next sounding comes at least so long after [ms]: sooner it tells of the stick, not of her. */
const SOONEST = 120_000;

/**
 * Forecasts of a sheet that can be judged: upon a sounding with another of the same space after it, and nothing changed
 * in between.
 *
 * @param entries - every line of the sheet, struck ones and strikes too
 * @param counting - those that count
 */
export function levelsForecast(entries: readonly Entry[], counting: readonly Entry[]): readonly LevelForecast[] {
  const moments = new Map(sheetMoments(entries).map((moment) => [moment.entry, moment]));
  const soundings = counting.filter(({ kind }) => kind === "sounding-taken").toSorted(byReading);
  return soundings.flatMap((line, i) => {
    const moment = moments.get(line.id);
    const { space, level } = bodyOf(line);
    const next = soundings.slice(i + 1).find((other) => bodyOf(other).space === space);
    if (!moment || !next || whenRead(next) - whenRead(line) < SOONEST) return [];
    const isChanged = counting.some(({ kind, at }) => {
      return CHANGES.has(kind) && Date.parse(at) > Date.parse(line.at) && Date.parse(at) <= whenRead(next);
    });
    if (isChanged) return [];
    const came = { at: new Date(whenRead(next)).toISOString(), level: bodyOf(next).level };
    return [{ entry: line.id, at: line.at, casualty: moment.casualty, space, level, next: came }];
  });
}

/** Level at one time to come [m]. */
export interface LevelToCome {
  /** On the clock of the reading it is asked for. */
  readonly at: number;
  readonly p05: number;
  readonly p25: number;
  readonly p50: number;
  readonly p75: number;
  readonly p95: number;
}

/**
 * Chance that a level stands below a mark at one time, by the fan that was told.
 *
 * @param fan - oldest first
 * @param at - when, on the fan's clock
 * @param mark - [m]
 * @returns chance [1], 0.02 to 0.98 beyond the told percentiles; undefined outside the fan's times
 * @source DERIVED: straight between percentiles and times
 */
export function chanceLower(fan: readonly LevelToCome[], at: number, mark: number): number | undefined {
  const levels = levelsAt(fan, at)?.map(({ value }) => value);
  if (!levels) return undefined;
  if (mark <= levels[0]!) return mark < levels[0]! ? 0.02 : 0.05;
  const above = levels.findIndex((level) => level >= mark);
  if (above < 0) return 0.98;
  const [low, high] = [levels[above - 1]!, levels[above]!];
  const [from, to] = [PERCENTILES[above - 1]!.chance, PERCENTILES[above]!.chance];
  return high === low ? to : from + ((to - from) * (mark - low)) / (high - low);
}

/**
 * Percentiles of the level at one time, by the fan that was told.
 *
 * @param fan - oldest first
 * @param at - when, on the fan's clock
 * @returns levels [m] by rising chance; undefined outside the fan's times
 */
export function levelsAt(fan: readonly LevelToCome[], at: number): readonly ToldPercentile[] | undefined {
  const after = fan.findIndex((one) => one.at >= at);
  const [before, next] = [fan[Math.max(0, after - 1)], fan[after]];
  if (!before || !next || before.at > at) return undefined;
  const share = next.at === before.at ? 1 : (at - before.at) / (next.at - before.at);
  return PERCENTILES.map(({ key, chance }) => ({ chance, value: before[key] + share * (next[key] - before[key]) }));
}

const PERCENTILES = [
  { key: "p05", chance: 0.05 },
  { key: "p25", chance: 0.25 },
  { key: "p50", chance: 0.5 },
  { key: "p75", chance: 0.75 },
  { key: "p95", chance: 0.95 },
] as const;

function byReading(one: Entry, other: Entry): number {
  return whenRead(one) - whenRead(other);
}

function whenRead(entry: Entry): number {
  return Date.parse(bodyOf(entry).taken ?? entry.at);
}

function bodyOf(entry: Entry): Bodies["sounding-taken"] {
  return entry.body as Bodies["sounding-taken"];
}
