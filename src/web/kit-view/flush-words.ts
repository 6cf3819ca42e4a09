import { sayDuration, type Words } from "#words";
import { sayMet, type FlushDue } from "#readiness";
import { sayInstant, sayTime } from "../parts/words/say-time.ts";

const MINUTE = 60_000;

/**
 * How long is left until the first flush, by the clock on the wall.
 *
 * @param due - as the kit's log and pattern say
 * * @param now - [ms]
 * @param words - of a kit in a line
 * @returns "First flush: 1 h 20 min left, by 16:05."; once past, how long it is overdue
 */
export function sayFlushLeft({ by }: FlushDue, now: number, words: Words["kitLine"]): string {
  const time = sayWhen(by, now);
  if (by >= now) return words.flushLeft({ duration: sayDuration((by - now) / 1000, "elapsed"), time });
  return words.flushOverdue({ duration: sayDuration((now - by) / 1000, "needed"), time });
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

/** What a first flush is told in. */
interface FlushWords {
  readonly view: Words["kitView"];
  readonly standing: Words["standing"];
}

/**
 * Why that time: what was met, how long the pattern gives and where that is from, and from when it is counted, with its day
 * where that is not today.
 *
 * @param now - [ms]
 */
export function sayFlushWhy({ all, first, from, isFromStop }: FlushDue, now: number, words: FlushWords): string {
  const told = {
    what: sayMet(
      all.map(({ what }) => what),
      words.standing,
    ),
    within: sayDuration(first.flushWithin, "needed"),
    time: isSameDay(from, now) ? sayTime(from) : sayInstant(new Date(from).toISOString()),
    source: first.source,
  };
  return isFromStop ? words.view.flushFromStop(told) : words.view.flushFromReturn(told);
}

/** On the reader's clock. */
function isSameDay(one: number, other: number): boolean {
  return new Date(one).toDateString() === new Date(other).toDateString();
}
