import { findRoot, leastOf } from "#numerics";
import { costOfTest, costsAYear, daysOutAYear, type CostsAYear, type IntervalCosts } from "./costs.ts";
import { standbyOf } from "./standby.ts";
import type { StandbyCase } from "./standby-case.ts";
import { leastOfTerms, sumAt, textbookTerms, type PowerTerm } from "./textbook.ts";

export interface IntervalPoint {
  /** [s] */
  readonly interval: number;
  /** [1] */
  readonly unavailability: number;
  readonly costPerYear?: number;
  /** What that is made of. */
  readonly costs?: CostsAYear;
}

export interface BestInterval {
  readonly best: IntervalPoint;
  readonly firstOrder: IntervalPoint | undefined;
  /** Intervals within 5 % of the best [s]. */
  readonly flat: { readonly from: number; readonly to: number };
  readonly curve: readonly IntervalPoint[];
  /** Where the least of the curve lies: between its ends, at one of them, or nowhere where it is flat from end to end. */
  readonly lies: "inside" | "shortest" | "longest" | "flat";
}

type Case = Omit<StandbyCase, "interval">;

const YEAR = 365.25 * 86_400;
const DAY = 86_400;
const NEAR = 1.05;
/** So near to an end, in ln interval, the least lies at it. */
const EDGE = 1e-6;
/** The longest interval looked at, over what test and repair take, where a thing fails sooner than they end. */
const LONG = 100;
const GRID = 160;
const CURVE = 25;
/** Tests between overhauls at most, so that a search ends. */
const MOST_TESTS = 2000;

/**
 * The interval between tests that leaves a thing least unready, or that costs least.
 *
 * cost per year = (test + parts + starts · wear) / T + failureOnTheNight · callsPerYear · unavailability + perDayNotReady · days out per year
 *
 * @param given - the case, times in seconds
 * @param costs - what counts instead of unavailability alone
 * @returns the best, the textbook sum's best, the region within 5 %, and a curve over a hundredfold range
 * @range intervals from those that test and repair just fit into, to 50 times the scale of life, 100 times those, or the overhaul
 * @source √(2τ/λ) for rare failures: Jacobs, Nuclear Safety 9(4) 1968 (FROM MEMORY); else DERIVED by search
 */
export function bestInterval(given: Case, costs?: IntervalCosts): BestInterval {
  const [low, high] = rangeOf(given);
  const pointAt = (interval: number) => pointOf(given, interval, costs);
  const worth = (t: number) => worthOf(pointAt(Math.exp(t)));
  const least = leastOf(worth, Math.log(low), Math.log(high), GRID);
  const best = pointAt(Math.exp(least.at));
  const over = (t: number) => worth(t) - NEAR * least.value;
  const ends = [crossing(over, Math.log(low), least.at), crossing(over, Math.log(high), least.at)] as const;
  const places = Array.from({ length: CURVE }, (_, i) => least.at + Math.log(100) * (i / (CURVE - 1) - 0.5));
  const inside = places.map(Math.exp).filter((interval) => interval >= low && interval <= high);
  const curve = inside.map(pointAt);
  const isFlat = [low, high, ...inside].every((interval) => over(Math.log(interval)) <= 0);
  return {
    best,
    firstOrder: textbookBest(given, costs, low, high),
    flat: { from: ends[0], to: ends[1] },
    curve,
    lies: isFlat ? "flat" : placeOf(least.at, Math.log(low), Math.log(high)),
  };
}

function placeOf(least: number, low: number, high: number): "inside" | "shortest" | "longest" {
  if (least > high - EDGE) return "longest";
  return least < low + EDGE ? "shortest" : "inside";
}

function rangeOf({ life, testTime, repairTime, pair, coverage }: Case): readonly [number, number] {
  const busy = (testTime + repairTime) * (pair?.tested === "staggered" ? 2 : 1);
  const high = coverage?.overhaul ?? Math.max(50 * life.scale, LONG * busy);
  const low = Math.max(busy * 1.000_001, life.scale * 1e-7, coverage ? coverage.overhaul / MOST_TESTS : 0);
  return [low, high];
}

function pointOf(given: Case, interval: number, costs: IntervalCosts | undefined): IntervalPoint {
  const { unavailability: summed, parts } = standbyOf({ ...given, interval });
  const unavailability = Math.min(1, summed);
  if (!costs) return { interval, unavailability };
  const made = costsAYear(costs, { interval, unavailability, daysOut: daysOutAYear(parts) });
  return { interval, unavailability, costPerYear: Object.values(made).reduce((sum, one) => sum + one, 0), costs: made };
}

function worthOf({ unavailability, costPerYear }: IntervalPoint): number {
  return costPerYear ?? unavailability;
}

/** The textbook sum's best, where it lies among what is looked at and is a chance at all. */
function textbookBest(given: Case, costs: IntervalCosts | undefined, low: number, high: number) {
  const sum = textbookTerms(given);
  const terms = costs ? costTerms(given, sum, costs) : sum;
  const interval = leastOfTerms(terms, low, high);
  if (interval === undefined || sumAt(sum, interval) > 1) return undefined;
  const point = { interval, unavailability: sumAt(sum, interval) };
  return costs ? { ...point, costPerYear: sumAt(terms, interval) } : point;
}

/** Where the curve leaves the flat region on the way from the best to an end; the end where it does not. */
function crossing(over: (t: number) => number, end: number, best: number): number {
  if (over(end) <= 0) return Math.exp(end);
  const found = findRoot(over, Math.min(end, best), Math.max(end, best), { rootTolerance: 1e-10 });
  return Math.exp(found.kind === "not-bracketed" ? end : found.root);
}

function costTerms(given: Case, sum: readonly PowerTerm[], costs: IntervalCosts): readonly PowerTerm[] {
  const { testTime, repairTime, demandFailure, harm = 0, life } = given;
  const night = costs.failureOnTheNight * costs.callsPerYear;
  const day = (costs.perDayNotReady * YEAR) / DAY;
  return [
    ...sum.map(({ factor, power }) => ({ factor: factor * night, power })),
    { factor: costOfTest(costs) * YEAR + day * (testTime + (demandFailure + harm) * repairTime), power: -1 },
    { factor: day * repairTime * life.scale ** -life.shape, power: life.shape - 1 },
  ];
}
