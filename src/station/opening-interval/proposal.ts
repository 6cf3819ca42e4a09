import { shorterSpan, type Span } from "#base";
import type { Pattern } from "#kit";
import type { StationPolicy } from "#readiness";
import { bestInterval, type BestInterval, type CostsAYear } from "#reliability";
import { openingEvidence, rateOfFaults, type OpeningEvidence } from "./evidence.ts";
import { daysIn, wholeSpan } from "./span-days.ts";
import type { StartLog } from "../start-chance/index.ts";

/** What the keeper and the day add to the log. */
export interface OpeningAsked {
  /** RFC 3339. */
  readonly now: string;
  /** Hours of work that one failure on the night weighs: somebody's judgement [h]. */
  readonly nightHours: number;
  readonly policy: StationPolicy;
  /** What an opening costs beside its hours of work; what is left out is not counted. */
  readonly stated?: StatedCosts;
}

/** What an opening costs beside its hours, as the keeper states it: judgement too. */
export interface StatedCosts {
  /** Parts used up in one opening, worth so many hours of work [h]. */
  readonly parts?: number;
  /** What one start wears off the engine, worth so many hours of work [h]. */
  readonly wearPerStart?: number;
  /** One day on which the kit is not there, worth so many hours of work [h]. */
  readonly perDayNotReady?: number;
  /** Openings in a thousand that leave a fault behind. */
  readonly harmed?: number;
}

/** How often kits of a pattern might be opened, in days. */
export interface OpeningProposal {
  readonly evidence: OpeningEvidence;
  /** The unit's own manual, as the pattern has it; it stands first. */
  readonly manual?: Span;
  /** What holds now: the shortest of manual, policy and what was accepted. */
  readonly standing?: Span;
  /** Best interval: nine times in ten between the ends, for what is believed of the rate and of what an opening finds [d]. */
  readonly best: { readonly shortest: number; readonly middle: number; readonly longest: number };
  /** Intervals that cost less than 5 % more, at the middle rate [d]. */
  readonly flat: { readonly from: number; readonly to: number };
  /** What a year costs one kit at the best, at the middle rate [h/year]. */
  readonly costs: CostsAYear;
  /** No interval beyond this is proposed: {@link LONGER} times the longest from one opening of a kit to its next [d]. */
  readonly bound: number;
  readonly verdict: OpeningVerdict;
}

export type OpeningVerdict =
  /** The evidence does not tell too often from too seldom; about so many more openings would, at the finds so far. */
  | { readonly kind: "cannot-tell"; readonly openings: number }
  /** What holds now costs less than 5 % more than the best. */
  | { readonly kind: "keep" }
  | { readonly kind: "shorter"; readonly every: Span }
  /** Longer would do, within the manual. */
  | { readonly kind: "longer"; readonly every: Span }
  /** Longer would do if faults went on coming at a steady rate, but no kit lay closed nearly so long as what holds now. */
  | { readonly kind: "not-seen" }
  /** Longer would do, but the manual's rule stands: clean openings that would back half as long again. */
  | { readonly kind: "manual-stands"; readonly cleanOpenings: number };

const DAY = 86_400;
/**
 * How much longer an interval is looked at when evidence for lengthening is told, and how far beyond the longest that was
 * seen one is proposed: judgement. A steady rate is an assumption there, and each step is seen before the next [1].
 */
const LONGER = 1.5;
/** More openings than this are never waited for. */
const MOST = 4000;

/**
 * How often to open the kits of a pattern, from the log: never longer than the unit's own manual, and never by itself.
 *
 * Costs in hours of work: an opening by the pattern's minutes and people, with parts, wear of its starts and days not ready
 * as they are stated, against `nightHours` for every call that meets a kit that does not work. Openings overlook faults as often
 * as drills measured, each opening afresh. Best interval by `bestInterval`, with the rate of hidden faults and the share that an
 * opening finds each at their 5th and 95th percentile; the two distances from the middle are added as squares of logarithms.
 *
 * @param pattern - its newest version
 * @param log - the station
 * @param asked - day, judgement, policy
 * @returns undefined where no kit of it ever lay closed between two openings
 * @source DERIVED from `bestInterval`: docs/methods/reliability.md
 */
export function openingProposal(pattern: Pattern, log: StartLog, asked: OpeningAsked): OpeningProposal | undefined {
  const evidence = openingEvidence(pattern, log, asked.now);
  if (!evidence) return undefined;
  const manual = pattern.policy.turnaround;
  const standing = standingSpan(pattern, asked.policy);
  const range = rangeOf(evidence, asked);
  return {
    evidence,
    ...(manual && { manual }),
    ...(standing && { standing }),
    best: { shortest: range.shortest, middle: range.middle, longest: range.longest },
    flat: range.flat,
    costs: range.costs,
    bound: boundOf(evidence),
    verdict: verdictOf(range, { evidence, manual, standing, asked }),
  };
}

/** What holds for a pattern's openings: the shortest of manual, the station's policy and what was accepted. */
export function standingSpan({ id, policy: own }: Pattern, policy: StationPolicy): Span | undefined {
  return shorterSpan(shorterSpan(own.turnaround, policy.turnaround), policy.openings?.[id]);
}

/** How far the evidence bears; nothing, where no kit was opened twice. */
function boundOf({ apart }: OpeningEvidence): number {
  return LONGER * (apart?.longest ?? 0);
}

interface Range {
  readonly shortest: number;
  readonly middle: number;
  readonly longest: number;
  readonly flat: { readonly from: number; readonly to: number };
  readonly costs: CostsAYear;
}

function rangeOf(evidence: OpeningEvidence, asked: Weighed): Range {
  const { rate, drilled } = evidence;
  const middle = bestAt(evidence, asked);
  const at = middle.best.interval / DAY;
  const byRate = [rate.p05, rate.p95].map((one) => bestAt(evidence, asked, { rate: one }));
  const finding = drilled?.counts ? [drilled.finding.p05, drilled.finding.p95] : [];
  const byFinding = finding.map((one) => bestAt(evidence, asked, { finding: one }));
  const away = [byRate, byFinding].map((ends) => ends.map(({ best }) => Math.log(best.interval / DAY / at)));
  return {
    shortest: at * Math.exp(-Math.hypot(...away.map((logs) => Math.max(0, ...logs.map((one) => -one))))),
    middle: at,
    longest: at * Math.exp(Math.hypot(...away.map((logs) => Math.max(0, ...logs)))),
    flat: { from: middle.flat.from / DAY, to: middle.flat.to / DAY },
    costs: middle.best.costs ?? NO_COSTS,
  };
}

type Weighed = Pick<OpeningAsked, "nightHours" | "stated">;
const NO_COSTS: CostsAYear = { tests: 0, parts: 0, wear: 0, notReady: 0, night: 0 };

/** The best where these are known; what is left out is taken at its middle. */
function bestAt(
  evidence: OpeningEvidence,
  { nightHours, stated = {} }: Weighed,
  known: { readonly rate?: number; readonly finding?: number } = {},
): BestInterval {
  const { failing, out, hours, starts } = evidence;
  const { rate = evidence.rate.p50, finding = evidence.drilled?.finding.mean ?? 1 } = known;
  const { parts = 0, wearPerStart = 0, perDayNotReady = 0, harmed = 0 } = stated;
  const life = { shape: 1, scale: 1 / rate };
  const opening = { test: hours, parts, wearPerStart, startsPerTest: starts };
  const costs = { ...opening, failureOnTheNight: nightHours, callsPerYear: evidence.callsPerYear.mean, perDayNotReady };
  const missed = evidence.drilled?.counts ? 1 - finding : 0;
  const looks = { testTime: out, repairTime: 0, demandFailure: failing.mean, harm: harmed / 1000, missed };
  return bestInterval({ life, ...looks }, costs);
}

interface Judged {
  readonly evidence: OpeningEvidence;
  readonly manual: Span | undefined;
  readonly standing: Span | undefined;
  readonly asked: Weighed;
}

function verdictOf(range: Range, judged: Judged): OpeningVerdict {
  const { standing, manual } = judged;
  const now = standing ? daysIn(standing) : Infinity;
  const side = sideOf(range, now, judged.evidence.found);
  if (side === "keep") return { kind: "keep" };
  const bound = boundOf(judged.evidence);
  const every = wholeSpan(Math.min(range.middle, bound));
  if (side === "too-seldom") return { kind: "shorter", every };
  if (side === undefined) return { kind: "cannot-tell", openings: openingsToTell(now, judged) };
  if (daysIn(every) <= now && bound < range.middle) return { kind: "not-seen" };
  const isManual = manual !== undefined && daysIn(manual) <= now + 1;
  if (isManual) return { kind: "manual-stands", cleanOpenings: cleanOpeningsFor(LONGER * now, now, judged) };
  return { kind: "longer", every: shorterSpan(every, manual) ?? every };
}

/**
 * On which side of the best an interval lies; undefined where that cannot be told, or makes less than 5 % of difference.
 *
 * Too seldom only once a fault was found: with none, the exact lower limit of the rate is 0, whatever the prior says.
 *
 * @source that limit: Garwood, Biometrika 28 (1936), FROM MEMORY
 */
function sideOf(
  { shortest, longest, flat }: Range,
  now: number,
  found: number,
): "too-seldom" | "too-often" | "keep" | undefined {
  if (found > 0 && longest < now && flat.to < now) return "too-seldom";
  if (shortest > now && flat.from > now) return "too-often";
  const isNear = shortest > now / 2 && longest < now * 2;
  return isNear && flat.from <= now && now <= flat.to ? "keep" : undefined;
}

/** So many more openings, without a find, until even the highest rate believed asks for no shorter interval than `wanted`. */
function cleanOpeningsFor(wanted: number, every: number, { evidence, asked }: Judged): number {
  return fewest((more) => {
    const rate = rateOfFaults(evidence.found, evidence.lay + more * every * DAY);
    return rangeOf({ ...evidence, rate }, asked).shortest >= wanted;
  });
}

/** So many more openings, with finds as often as so far, until the verdict is another. */
function openingsToTell(now: number, { evidence, asked }: Judged): number {
  const { looks, found, lay } = evidence;
  return fewest((more) => {
    const grown = 1 + more / Math.max(1, looks);
    const after = { ...evidence, rate: rateOfFaults(found * grown, lay * grown) };
    return sideOf(rangeOf(after, asked), now, found) !== undefined;
  });
}

/** The least whole number from 1 on for which it holds; {@link MOST} where none up to it does. */
function fewest(holds: (count: number) => boolean): number {
  let [low, high] = [0, 1];
  while (!holds(high)) {
    if (high >= MOST) return MOST;
    [low, high] = [high, Math.min(MOST, high * 2)];
  }
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (holds(middle)) high = middle;
    else low = middle;
  }
  return high;
}
