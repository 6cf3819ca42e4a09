import { shorterSpan, type Span } from "#base";
import type { Pattern } from "#kit";
import type { StationPolicy } from "#readiness";
import { bestInterval, type BestInterval } from "#reliability";
import { openingEvidence, rateOfFaults, type OpeningEvidence } from "./evidence.ts";
import { daysIn, monthsIn } from "./span-days.ts";
import type { StartLog } from "../start-chance/index.ts";

/** What the keeper and the day add to the log. */
export interface OpeningAsked {
  /** RFC 3339. */
  readonly now: string;
  /** Hours of work that one failure on the night weighs: somebody's judgement [h]. */
  readonly nightHours: number;
  readonly policy: StationPolicy;
}

/** How often kits of a pattern might be opened, in days. */
export interface OpeningProposal {
  readonly evidence: OpeningEvidence;
  /** The unit's own manual, as the pattern has it; it stands first. */
  readonly manual?: Span;
  /** What holds now: the shortest of manual, policy and what was accepted. */
  readonly standing?: Span;
  /** Best interval: for the highest and the lowest rate believed, nine times in ten between them, and for the middle [d]. */
  readonly best: { readonly shortest: number; readonly middle: number; readonly longest: number };
  /** Intervals that cost less than 5 % more, at the middle rate [d]. */
  readonly flat: { readonly from: number; readonly to: number };
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
  /** Longer would do, but the manual's rule stands: clean openings that would back half as long again. */
  | { readonly kind: "manual-stands"; readonly cleanOpenings: number };

const DAY = 86_400;
/** How much longer an interval is looked at when evidence for lengthening is told [1]. */
const LONGER = 1.5;
/** More openings than this are never waited for. */
const MOST = 4000;

/**
 * How often to open the kits of a pattern, from the log: never longer than the unit's own manual, and never by itself.
 *
 * Costs in hours of work: an opening by the pattern's minutes and people, against `nightHours` for every call that meets a
 * kit that does not work. Best interval by `bestInterval` at the 5th, 50th and 95th percentile of the rate of hidden faults.
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
  const range = rangeOf(evidence, asked.nightHours);
  return {
    evidence,
    ...(manual && { manual }),
    ...(standing && { standing }),
    best: { shortest: range.shortest, middle: range.middle, longest: range.longest },
    flat: range.flat,
    verdict: verdictOf(range, { evidence, manual, standing, nightHours: asked.nightHours }),
  };
}

/** What holds for a pattern's openings: the shortest of manual, the station's policy and what was accepted. */
export function standingSpan({ id, policy: own }: Pattern, policy: StationPolicy): Span | undefined {
  return shorterSpan(shorterSpan(own.turnaround, policy.turnaround), policy.openings?.[id]);
}

interface Range {
  readonly shortest: number;
  readonly middle: number;
  readonly longest: number;
  readonly flat: { readonly from: number; readonly to: number };
}

function rangeOf(evidence: OpeningEvidence, nightHours: number): Range {
  const { p05, p50, p95 } = evidence.rate;
  const middle = bestAt(p50, evidence, nightHours);
  return {
    shortest: bestAt(p95, evidence, nightHours).best.interval / DAY,
    middle: middle.best.interval / DAY,
    longest: bestAt(p05, evidence, nightHours).best.interval / DAY,
    flat: { from: middle.flat.from / DAY, to: middle.flat.to / DAY },
  };
}

function bestAt(rate: number, evidence: OpeningEvidence, nightHours: number): BestInterval {
  const { failing, out, hours, callsPerYear } = evidence;
  const life = { shape: 1, scale: 1 / rate };
  const costs = { test: hours, failureOnTheNight: nightHours, callsPerYear, perDayNotReady: 0 };
  return bestInterval({ life, testTime: out, repairTime: 0, demandFailure: failing }, costs);
}

interface Judged {
  readonly evidence: OpeningEvidence;
  readonly manual: Span | undefined;
  readonly standing: Span | undefined;
  readonly nightHours: number;
}

function verdictOf(range: Range, judged: Judged): OpeningVerdict {
  const { standing, manual } = judged;
  const now = standing ? daysIn(standing) : Infinity;
  const side = sideOf(range, now);
  if (side === "keep") return { kind: "keep" };
  if (side === "too-seldom") return { kind: "shorter", every: monthsIn(range.middle) };
  if (side === undefined) return { kind: "cannot-tell", openings: openingsToTell(now, judged) };
  const isManual = manual !== undefined && daysIn(manual) <= now + 1;
  if (isManual) return { kind: "manual-stands", cleanOpenings: cleanOpeningsFor(LONGER * now, now, judged) };
  const every = monthsIn(range.middle);
  return { kind: "longer", every: shorterSpan(every, manual) ?? every };
}

/** On which side of the best an interval lies; undefined where that cannot be told, or makes less than 5 % of difference. */
function sideOf({ shortest, longest, flat }: Range, now: number): "too-seldom" | "too-often" | "keep" | undefined {
  if (longest < now && flat.to < now) return "too-seldom";
  if (shortest > now && flat.from > now) return "too-often";
  const isNear = shortest > now / 2 && longest < now * 2;
  return isNear && flat.from <= now && now <= flat.to ? "keep" : undefined;
}

/** So many more openings, without a find, until even the highest rate believed asks for no shorter interval than `wanted`. */
function cleanOpeningsFor(wanted: number, every: number, { evidence, nightHours }: Judged): number {
  return fewest((more) => {
    const { p95 } = rateOfFaults(evidence.found, evidence.lay + more * every * DAY);
    return bestAt(p95, evidence, nightHours).best.interval / DAY >= wanted;
  });
}

/** So many more openings, with finds as often as so far, until the verdict is another. */
function openingsToTell(now: number, { evidence, nightHours }: Judged): number {
  const { looks, found, lay } = evidence;
  return fewest((more) => {
    const grown = 1 + more / Math.max(1, looks);
    const after = { ...evidence, rate: rateOfFaults(found * grown, lay * grown) };
    return sideOf(rangeOf(after, nightHours), now) !== undefined;
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
