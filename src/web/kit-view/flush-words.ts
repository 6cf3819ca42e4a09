import { sayDuration } from "#words";
import { sayMet, type FlushDue } from "#readiness";
import { sayInstant, sayTime } from "../parts/words/say-time.ts";

const MINUTE = 60_000;

/**
 * How long is left until the first flush, by the clock on the wall.
 *
 * @param due - as the kit's log and pattern say
 * @param now - [ms]
 * @returns "First flush: 1 h 20 min left, by 16:05."; once past, how long it is overdue
 */
export function sayFlushLeft({ by }: FlushDue, now: number): string {
  if (by >= now) return `First flush: ${sayDuration((by - now) / 1000, "elapsed")} left, by ${sayWhen(by, now)}.`;
  return `First flush overdue by ${sayDuration((now - by) / 1000, "needed")}: it was due by ${sayWhen(by, now)}. Flush now.`;
}

const HALF_A_DAY = 12 * 60 * MINUTE;

/** The time, with its day where that may be another one. */
function sayWhen(at: number, now: number): string {
  return Math.abs(now - at) < HALF_A_DAY ? sayTime(at) : sayInstant(new Date(at).toISOString());
}

/** True once the time for the first flush has passed. */
export function isOverdue({ by }: FlushDue, now: number): boolean {
  return now > by;
}

/** Why that time: what was met, how long the pattern gives and where that is from, and from when it is counted. */
export function sayFlushWhy({ all, first, from, isFromStop }: FlushDue): string {
  const within = sayDuration(first.flushWithin, "needed");
  const since = isFromStop
    ? `from when it last pumped, ${sayTime(from)}`
    : `from its return, ${sayTime(from)}; it stopped pumping before that, so sooner is better`;
  return `It met ${sayMet(all.map(({ what }) => what))}. ${within} ${since}. ${first.source}`;
}
