import { ranSinceFilled, type CasualtyPump } from "#readiness";
import { sayDuration, type Words } from "#words";

/**
 * How long a pump has by the log run on beyond what one tank lasts.
 *
 * @param pump - with its runs
 * @param now - [ms]
 * @returns whole minutes; 0 where it stands, or nobody knows how long its tank lasts
 */
export function minutesPastFuel(pump: CasualtyPump, now: number): number {
  if (!pump.running || pump.runtime === undefined) return 0;
  return Math.max(0, Math.floor((ranSinceFilled(pump, now) - pump.runtime) / 60));
}

/** Nobody knows any more that it pumps: the log only says that nobody stopped it. */
export function sayPastFuel(minutes: number, words: Words["sheetPumps"]): string {
  return words.pastFuel({ duration: sayDuration(60 * minutes, "elapsed") });
}
