import type { StandbyParts } from "./standby-case.ts";

/** What testing and not being there cost; any one unit of cost. */
export interface IntervalCosts {
  /** Of one test: the hours, or all of it where parts and wear are not told beside it. */
  readonly test: number;
  /** Parts used up in one test. */
  readonly parts?: number;
  /** Of one start: what it wears off the engine. */
  readonly wearPerStart?: number;
  /** Starts in one test [1]. */
  readonly startsPerTest?: number;
  readonly failureOnTheNight: number;
  readonly callsPerYear: number;
  /** Of one day out of service for test or repair. */
  readonly perDayNotReady: number;
}

/** What a year costs; the parts add up to it. */
export interface CostsAYear {
  readonly tests: number;
  readonly parts: number;
  readonly wear: number;
  readonly notReady: number;
  readonly night: number;
}

const YEAR = 365.25 * 86_400;
const DAY = 86_400;

/**
 * What one test costs: hours, parts, and the wear of its starts.
 *
 * test + parts + starts · wear
 *
 * @param costs - of one test, all at least 0
 * @returns in the unit of the costs
 * @source DERIVED: a sum
 * @example costOfTest({ test: 6, parts: 2, wearPerStart: 0.5, startsPerTest: 2, failureOnTheNight: 0, callsPerYear: 0, perDayNotReady: 0 }) // 9
 */
export function costOfTest({ test, parts = 0, wearPerStart = 0, startsPerTest = 0 }: IntervalCosts): number {
  return test + parts + startsPerTest * wearPerStart;
}

/** One interval between tests, and what comes of it. */
interface Lived {
  /** [s] */
  readonly interval: number;
  /** [1] */
  readonly unavailability: number;
  /** Out for test or repair [d/year]. */
  readonly daysOut: number;
}

/** What a year costs at one interval. */
export function costsAYear(costs: IntervalCosts, { interval, unavailability, daysOut }: Lived): CostsAYear {
  const { test, parts = 0, wearPerStart = 0, startsPerTest = 0 } = costs;
  const times = YEAR / interval;
  return {
    tests: times * test,
    parts: times * parts,
    wear: times * startsPerTest * wearPerStart,
    notReady: costs.perDayNotReady * daysOut,
    night: costs.failureOnTheNight * costs.callsPerYear * unavailability,
  };
}

/** Days of a year out for test or repair. */
export function daysOutAYear({ testing, repair }: StandbyParts): number {
  return ((testing + repair) * YEAR) / DAY;
}
