// Levels to come, times told and chances given, against what comes; and against two plain rules.
import { drawAgain, median, sum } from "./intervals.ts";
import { FAMILIES } from "./families.ts";
import { shareRow, type Row } from "./rows.ts";
import { carryLine, type RuleForecast } from "./rules.ts";
import { AHEAD, type Arrival, type Chances, type Five } from "./sheet.ts";
import type { Moment, Truth, Watched } from "./watching.ts";
import { isLosing } from "./words.ts";

/** Levels closer than this are the same [m]. */
const SAME = 1e-3;
const WANTED = { atLeast: 0.85, atMost: 0.95 };

/**
 * 90 % intervals of the level 10 and 20 minutes on, where the sheet does not say that nothing fits. None
 * is wanted of those lost soon: who is still afloat by then is who rose least. */
export function coverageRows(all: readonly Watched[]): readonly Row[] {
  return [0, 1].flatMap((place) => {
    const name = `level at +${AHEAD[place]! / 60} min in its 90 % interval`;
    const judge = (moment: Moment): boolean | undefined => isHeld(moment, place);
    return [
      ...FAMILIES.map((family) => {
        const own = all.filter((one) => one.family === family);
        return shareRow("intervals", `${name}, ${family}`, own, judge, family === "lost soon" ? undefined : WANTED);
      }),
      shareRow("intervals", `${name}, all`, all, judge),
      shareRow("intervals", `answers that fit and tell the level at +${AHEAD[place]! / 60} min`, all, ({ sheet }) =>
        sheet.misfit ? undefined : sheet.levels[place] !== undefined,
      ),
    ];
  });
}

function isHeld({ sheet, truth }: Moment, place: number): boolean | undefined {
  const [told, came] = [sheet.levels[place], truth.levels[place]];
  if (sheet.misfit || told === undefined || came === null || came === undefined) return undefined;
  return came >= told[0] - SAME && came <= told[4] + SAME;
}

/** Times to dry and to loss, where a chance of a half or more is told with a time. */
export function timeRows(all: readonly Watched[]): readonly Row[] {
  return [
    ...arrivalRows(all, "dry", toDry, (truth) => truth.pumpedDown),
    shareRow("times", "of answers while she is losing: dry told at 0.5 or more", all, (moment) =>
      isLosing(moment) ? isTold(moment.sheet.dry) : undefined,
    ),
    ...arrivalRows(
      all,
      "loss",
      ({ sheet }) => sheet.loss,
      (truth) => truth.left,
    ),
  ];
}

/** Time to dry, where she is not yet. */
function toDry({ sheet, truth }: Moment): Arrival | undefined {
  return truth.pumpedDown === 0 ? undefined : sheet.dry;
}

function isTold(arrival: Arrival | undefined): boolean {
  return arrival?.time !== undefined && arrival.chance >= 0.5;
}

function arrivalRows(
  all: readonly Watched[],
  what: string,
  told: (moment: Moment) => Arrival | undefined,
  came: (truth: Truth) => number | null,
): readonly Row[] {
  const timed = (moment: Moment): Five | undefined => {
    const arrival = moment.sheet.misfit ? undefined : told(moment);
    return isTold(arrival) ? arrival?.time : undefined;
  };
  const sure = (moment: Moment): boolean => !moment.sheet.misfit && (told(moment)?.chance ?? 0) >= 0.95;
  return [
    shareRow("times", `${what} told at 0.5 or more: comes within 4 h`, all, (m) =>
      timed(m) ? came(m.truth) !== null : undefined,
    ),
    shareRow("times", `${what} told at 0.95 or more: comes within 4 h`, all, (m) =>
      sure(m) ? came(m.truth) !== null : undefined,
    ),
    shareRow("times", `time to ${what}, where told and it comes, in its 90 % interval`, all, (m) =>
      isTimeHeld(timed(m), came(m.truth)),
    ),
    ratioRow(all, what, (m) => timeRatio(timed(m), came(m.truth))),
  ];
}

function isTimeHeld(told: Five | undefined, came: number | null): boolean | undefined {
  return told === undefined || came === null ? undefined : came >= told[0] - 20 && came <= told[4] + 20;
}

function timeRatio(told: Five | undefined, came: number | null): number | undefined {
  return told === undefined || came === null ? undefined : Math.max(1, came) / Math.max(1, told[2]);
}

function ratioRow(all: readonly Watched[], what: string, ratio: (moment: Moment) => number | undefined): Row {
  const found = all.map(({ moments }) => moments.flatMap((one) => ratio(one) ?? [])).filter((one) => one.length > 0);
  const ratios = found.flat();
  const interval = drawAgain(found, (drawn) => median(drawn.flat()));
  const counts = `${ratios.length} answers, ${found.length} casualties`;
  return {
    group: "times",
    name: `true time to ${what} over the median told, median`,
    value: median(ratios),
    ...interval,
    counts,
  };
}

/** A chance is never taken to be less than this, so that one mistake is not endless. */
const LEAST_CHANCE = 1e-3;
const HELD = 0.03;

/** What a plain rule goes by: so many soundings. */
const RULES = [
  ["the last two soundings", 2],
  ["a line through the last four", 4],
] as const;

interface Scored {
  readonly own: number;
  readonly rule: number;
}
/** Of sheet and rule, for the same answer; undefined where one of them says nothing. */
type Score = (moment: Moment, rule: RuleForecast) => Scored | undefined;

/** Sheet over rule, below 1 where the sheet is better; the same answers for both. */
export function scoreRows(all: readonly Watched[]): readonly Row[] {
  const scores: readonly (readonly [string, Score, boolean])[] = [
    ["log score of the hour", chanceScore(logScore), true],
    ["Brier score of the hour", chanceScore(brierScore), false],
    ["CRPS of levels at +10 and +20 min", levelScore([0, 1]), true],
    ["CRPS of the level at +60 min", levelScore([2]), false],
  ];
  return scores.flatMap(([name, score, isWanted]) =>
    RULES.map(([rule, count]) => scoreRow(`${name}, over ${rule}`, scoresOf(all, score, count), isWanted)),
  );
}

/** By casualty: sums of the scores, and of how many answers. */
function scoresOf(all: readonly Watched[], score: Score, count: number): readonly (Scored & { readonly of: number })[] {
  return all
    .map(({ moments }) => {
      const readings = moments.map(({ written }) => written);
      return moments.flatMap((moment, n) => {
        const rule = carryLine(readings.slice(0, n + 1), count);
        return (rule && score(moment, rule)) ?? [];
      });
    })
    .filter((one) => one.length > 0)
    .map((one) => ({ own: sum(one.map(({ own }) => own)), rule: sum(one.map(({ rule }) => rule)), of: one.length }));
}

function ratioOf(drawn: readonly Scored[]): number {
  return sum(drawn.map(({ own }) => own)) / sum(drawn.map(({ rule }) => rule));
}

function scoreRow(name: string, found: readonly (Scored & { readonly of: number })[], isWanted: boolean): Row {
  const of = sum(found.map((one) => one.of));
  const mean = (which: "own" | "rule"): string => (sum(found.map((one) => one[which])) / of).toPrecision(3);
  const counts = `${mean("own")} over ${mean("rule")}; ${of} answers`;
  const interval = drawAgain(found, ratioOf);
  return {
    group: "scores",
    name,
    value: ratioOf(found),
    ...interval,
    counts,
    ...(isWanted && { wanted: { below: 1 } }),
  };
}

type Kind = keyof Chances;

/** What she does over the next hour, carried on: held within 3 cm; lost is losing. */
export function hourOf({ left, level, levels }: Truth): Kind {
  const later = levels[2];
  if (left !== null && left <= 3600) return "losing";
  const change = (later ?? level) - level;
  if (change > HELD) return "losing";
  return change < -HELD ? "gaining" : "holding";
}

function chanceScore(score: (chances: Chances, came: Kind) => number): Score {
  return ({ sheet, truth }, rule) => {
    const came = hourOf(truth);
    return sheet.chances && { own: score(sheet.chances, came), rule: score(rule.chances, came) };
  };
}

/** Good, Rational decisions, J. R. Stat. Soc. B 14 (1952) 107. */
export function logScore(chances: Chances, came: Kind): number {
  return -Math.log(Math.max(LEAST_CHANCE, chances[came]));
}

/** Brier, Verification of forecasts expressed in terms of probability, Monthly Weather Review 78 (1950) 1. */
export function brierScore(chances: Chances, came: Kind): number {
  const kinds: readonly Kind[] = ["gaining", "holding", "losing"];
  return sum(kinds.map((kind) => (chances[kind] - Number(kind === came)) ** 2));
}

function levelScore(places: readonly number[]): Score {
  return ({ sheet, truth }, rule) => {
    const pairs = places.flatMap((place) => {
      const [own, other, came] = [sheet.levels[place], rule.levels[place], truth.levels[place]];
      if (own === undefined || other === undefined || came === null || came === undefined) return [];
      return [{ own: rankedScore(own, came), rule: rankedScore(other, came) }];
    });
    if (pairs.length === 0) return undefined;
    return { own: sum(pairs.map(({ own }) => own)), rule: sum(pairs.map((one) => one.rule)) };
  };
}

/** Chances of the five quantiles. */
const QUANTILES = [0.05, 0.25, 0.5, 0.75, 0.95] as const;
/** Places at which the score is summed. */
const PLACES = 40;

/**
 * CRPS from five quantiles: twice the quantile score, summed over the chance; between the five, and on past the outer
 * two, quantiles lie on straight lines.
 *
 * @param told - quantiles [m]
 * @param came - true level [m]
 * @source Gneiting and Ranjan, Journal of Business and Economic Statistics 29 (2011) 411
 */
export function rankedScore(told: Five, came: number): number {
  const scores = Array.from({ length: PLACES }, (_, n) => {
    const chance = (n + 0.5) / PLACES;
    const value = quantileOf(told, chance);
    return (Number(came < value) - chance) * (value - came);
  });
  return (2 * sum(scores)) / PLACES;
}

function quantileOf(told: Five, chance: number): number {
  const next = QUANTILES.findIndex((one) => one >= chance);
  const high = next < 0 ? 4 : Math.max(1, next);
  const share = (chance - QUANTILES[high - 1]!) / (QUANTILES[high]! - QUANTILES[high - 1]!);
  return told[high - 1]! + share * (told[high]! - told[high - 1]!);
}
