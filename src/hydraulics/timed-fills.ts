import { InputError, printGiven, type Fault } from "#base";
import { READING_UNCERTAINTY } from "./proof-run.ts";

/** Several timings of the same drum, taken together. */
export interface TimedFills {
  /** Mean [s]. */
  readonly seconds: number;
  /** Standard uncertainty of the mean [s]. */
  readonly uncertainty: number;
}

/** More timings than anybody takes of one run. */
const MOST_TIMINGS = 20;

/**
 * The mean of one or more timings of the same fill, and how well it is known.
 *
 * t = Σ t_i / n; u(t) = max(u_hand, s) / √n, s² = Σ (t_i − t)² / (n − 1)
 *
 * Few timings show too little spread by luck; the hand on the watch is never taken to be better than common.
 *
 * @param timings - each [s], more than 0 and at most 3600; 1 to 20 of them
 * @returns mean and its standard uncertainty, [s]
 * @range timings of the same drum at the same throttle
 * @source JCGM 100:2008 (GUM), 4.2.1 to 4.2.3 for mean and spread; u_hand is common practice
 * @throws InputError HY-169 with every timing out of its limits
 * @example meanOfFills([29.6, 30.4]).seconds // 30
 */
export function meanOfFills(timings: readonly number[]): TimedFills {
  requireTimings(timings);
  const count = timings.length;
  const seconds = timings.reduce((sum, one) => sum + one, 0) / count;
  const squares = timings.reduce((sum, one) => sum + (one - seconds) ** 2, 0);
  const spread = count > 1 ? Math.sqrt(squares / (count - 1)) : 0;
  return { seconds, uncertainty: Math.max(READING_UNCERTAINTY.seconds, spread) / Math.sqrt(count) };
}

function requireTimings(timings: readonly number[]): void {
  const faults: Fault[] = timings
    .map((given, at) => ({ given, at }))
    .filter(({ given }) => !(given > 0 && given <= 3600))
    .map(({ given, at }) => timingFault(`timings[${at}]`, given, "more than 0 s and at most 3600 s"));
  if (timings.length < 1 || timings.length > MOST_TIMINGS)
    faults.push(timingFault("timings", timings.length, `1 to ${MOST_TIMINGS} timings`));
  if (faults.length > 0) throw new InputError(faults);
}

function timingFault(field: string, got: number, allowed: string): Fault {
  return { code: "HY-169", field, got: printGiven(got), allowed, remedy: "Give the seconds each fill took." };
}
