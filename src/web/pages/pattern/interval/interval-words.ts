import { sayDuration, type Words } from "#words";
import { formatSpan, type Span } from "#base";
import {
  LEAST_PLANTED,
  type Drilled,
  type OpeningEvidence,
  type OpeningProposal,
  type OpeningVerdict,
  type StatedCosts,
} from "#station";

type IntervalWords = Words["patternInterval"];

const YEAR_DAYS = 365.25;
/** Beyond it an interval is only said to be longer. */
const MOST_DAYS = 10 * YEAR_DAYS;

/** What holds now, and by whom. */
export function sayStanding(
  { standing, manual }: Pick<OpeningProposal, "standing" | "manual">,
  words: IntervalWords,
): string {
  if (!standing) return words.standingNone();
  const every = sayEvery(standing, words);
  if (!manual) return words.standing({ every });
  const isOwn = formatSpan(manual) === formatSpan(standing);
  return isOwn ? words.standingManual({ every }) : words.standingBeside({ every, manual: formatSpan(manual) });
}

/** How far apart openings really were, from the log. */
export function sayApart({ apart }: Pick<OpeningEvidence, "apart">, words: IntervalWords): string {
  if (!apart) return words.neverTwice();
  const [median, from, to] = [apart.median, ...apart.quartiles].map((days) => sayLong(days, words));
  return words.reallyOpened({ count: apart.count, median: median!, from: from!, to: to! });
}

/** "every year", "every 8 months", "every 6 weeks". */
export function sayEvery(span: Span, words: IntervalWords): string {
  if ("days" in span) return sayEveryDays(span.days, words);
  const isYears = span.months !== 0 && span.months % 12 === 0;
  return isYears ? words.everyYears({ count: span.months / 12 }) : words.everyMonths({ count: span.months });
}

/** Weeks from two on, where they are whole. */
function sayEveryDays(days: number, words: IntervalWords): string {
  return days > 7 && days % 7 === 0 ? words.everyWeeks({ count: days / 7 }) : words.everyDays({ count: days });
}

/** The verdict in a sentence, and what it would take where the log does not tell. */
export function sayVerdict(verdict: OpeningVerdict, standing: Span | undefined, words: IntervalWords): string {
  const now = standing ? sayEvery(standing, words) : words.whatIsDone();
  switch (verdict.kind) {
    case "cannot-tell":
      return words.cannotTell({ now, more: sayMore(verdict.openings, words) });
    case "keep":
      return words.keepTo({ now });
    case "shorter":
      return words.shorter({ every: sayEvery(verdict.every, words), now });
    case "longer":
      return words.longer({ every: sayEvery(verdict.every, words), now });
    case "manual-stands":
      return words.manualStands({ now, more: sayMore(verdict.cleanOpenings, words) });
    case "not-seen":
      return words.notSeen({ now });
  }
}

/** More than this many are not counted out. */
const MANY = 4000;

function sayMore(openings: number, words: IntervalWords): string {
  return openings >= MANY ? words.moreThan({ count: MANY }) : words.moreAbout({ count: openings });
}

/** The best interval as a range; where that goes beyond what was seen, it says so in the same breath. */
export function sayBest(
  {
    best,
    evidence,
    bound,
  }: Pick<OpeningProposal, "best" | "bound"> & {
    readonly evidence: Pick<OpeningProposal["evidence"], "apart">;
  },
  words: IntervalWords,
): string {
  const range = words.best({ shortest: sayLong(best.shortest, words), longest: sayLong(best.longest, words) });
  const seen = evidence.apart?.longest;
  if (seen === undefined || best.longest <= seen) return range;
  return `${range} ${words.beyondSeen({ seen: sayLong(seen, words), bound: sayLong(bound, words) })}`;
}

/** How little it matters near the best. */
export function sayFlat({ flat, best }: OpeningProposal, words: IntervalWords): string {
  const [middle, from, to] = [best.middle, flat.from, flat.to].map((days) => sayLong(days, words));
  return words.flat({ middle: middle!, from: from!, to: to! });
}

/** What a year costs one kit at the likeliest best, part by part; what nobody stated is not in it. */
export function sayCosts(
  { costs }: Pick<OpeningProposal, "costs">,
  { parts, wearPerStart, perDayNotReady }: StatedCosts,
  words: IntervalWords,
): string {
  const hours = (of: number) => ({ hours: sayHours(of, words) });
  const made = [
    words.costOpening(hours(costs.tests)),
    ...(parts === undefined ? [] : [words.costInParts(hours(costs.parts))]),
    ...(wearPerStart === undefined ? [] : [words.costInWear(hours(costs.wear))]),
    ...(perDayNotReady === undefined ? [] : [words.costNotReady(hours(costs.notReady))]),
  ];
  return words.yearCosts({ costs: made.join(", "), last: words.costNights(hours(costs.night)) });
}

function sayHours(hours: number, words: IntervalWords): string {
  return words.hours({ hours: hours < 10 ? hours.toFixed(1) : Math.round(hours) });
}

/** Days as months or years. */
export function sayLong(days: number, words: IntervalWords): string {
  if (days >= MOST_DAYS) return words.tenYears();
  return sayDuration(86_400 * Math.max(1, days), "long");
}

/** What the log has, a sentence each. */
export function sayEvidence(evidence: OpeningEvidence, stated: StatedCosts, words: IntervalWords): readonly string[] {
  const { looks, found, lay, kits, starts } = evidence;
  const years = (lay / 86_400 / YEAR_DAYS).toFixed(1);
  return [
    words.evidenceLooks({ looks, kits, years, found }),
    sayRate(evidence, words),
    sayDrilled(evidence.drilled, words),
    sayStarts(evidence, words),
    sayCalls(evidence, words),
    `${sayOut(evidence, words)} ${words.started({ times: words.times({ count: starts }) })}`,
    sayNotCounted(stated, words),
  ];
}

function sayRate({ rate }: OpeningEvidence, words: IntervalWords): string {
  return words.evidenceRate({ low: inTenYears(rate.p05), high: inTenYears(rate.p95) });
}

function inTenYears(perSecond: number): string {
  return figure(perSecond * 10 * YEAR_DAYS * 86_400);
}

function sayStarts({ asked, failing }: OpeningEvidence, words: IntervalWords): string {
  if (asked === 0) return words.startsNotCounted();
  const [low, high] = [figure(100 * failing.p05), figure(100 * failing.p95)];
  return words.startsFail({ times: words.times({ count: asked }), low, high });
}

function sayCalls({ calls, callsPerYear }: OpeningEvidence, words: IntervalWords): string {
  const [low, high, mean] = [figure(callsPerYear.p05), figure(callsPerYear.p95), figure(callsPerYear.mean)];
  return words.calls({ times: words.times({ count: calls }), low, high, mean });
}

const COUNTED = [
  { key: "parts", word: "ofParts" },
  { key: "wearPerStart", word: "ofWear" },
  { key: "perDayNotReady", word: "ofDays" },
  { key: "harmed", word: "ofHarmed" },
] as const satisfies readonly { readonly key: keyof StatedCosts; readonly word: keyof IntervalWords }[];

function sayNotCounted(stated: StatedCosts, words: IntervalWords): string {
  const left = COUNTED.filter(({ key }) => stated[key] === undefined).map(({ word }) => words[word]());
  return left.length === 0 ? words.allStated() : words.notCounted({ costs: left.join(", ") });
}

/** Whether openings find such faults, as drills measured. */
function sayDrilled(drilled: Drilled | undefined, words: IntervalWords): string {
  if (!drilled) return words.noDrill();
  const { found, planted, finding, counts } = drilled;
  if (!counts) return words.drillsFew({ planted, found, least: LEAST_PLANTED });
  const [low, high, mean] = [ofTen(finding.p05), ofTen(finding.p95), ofTen(finding.mean)];
  return words.drills({ planted, found, low, high, mean });
}

function ofTen(chance: number): string {
  return (10 * chance).toFixed(1);
}

function figure(value: number): string {
  return `${Number(value.toPrecision(2))}`;
}

/** Hours of work by the pattern; hours out as the log has them, nights for drying and all, where enough were timed. */
function sayOut({ hours, out, timed }: OpeningEvidence, words: IntervalWords): string {
  const long = { hours: hours.toFixed(1), out: (out / 3600).toFixed(1) };
  return timed === 0 ? words.workOut(long) : words.workTimed({ ...long, count: timed });
}
