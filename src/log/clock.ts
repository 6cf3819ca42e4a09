import { sayDuration } from "#words";
import { instantOf } from "./instant.ts";

/** Up to here the seconds are told too: a clock that is six minutes ahead must not seem to be within the five [ms]. */
const EXACT_MS = 2 * 3600_000;

/** How far a device's clock may run ahead of the judge's [ms]. Common practice: covers drift of an unset clock. */
export const CLOCK_AHEAD_MS = 5 * 60_000;
/** How long before what preceded it an entry may claim to be made [ms]: set-up may run on a clock just put right. */
export const CLOCK_BEHIND_MS = 24 * 3_600_000;

export type ClockVerdict =
  { readonly kind: "plausible" } | { readonly kind: "ahead" | "too-early"; readonly because: string };

/** What cannot have come after an entry, such as its device's joining: when, RFC 3339 with offset, and in words. */
export interface Earlier {
  readonly at: string;
  readonly what: string;
}

/**
 * Judges whether an entry's time can be true. An entry may be as late in arriving as it likes, but it cannot have
 * been made in the future, nor before the device that made it was there or before what its writer already had. What is
 * itself dated ahead of now, by a clock that was wrong once, orders nothing.
 *
 * @param at - the entry's time, RFC 3339 with offset
 * @param now - the judge's clock, RFC 3339 with offset
 * @param earlier - what must have come before it
 * @returns plausible, or which way it is off with the reason in the person's words
 * @range no more than 5 min ahead of `now` and no more than 24 h before anything in `earlier`
 */
export function judgeClock(at: string, now: string, earlier: readonly Earlier[] = []): ClockVerdict {
  const made = instantOf(at);
  const ahead = made - instantOf(now);
  if (ahead > CLOCK_AHEAD_MS) return { kind: "ahead", because: describeAhead(at, now, ahead) };
  const latest = instantOf(now) + CLOCK_AHEAD_MS;
  const contradicted = earlier.map(placeOf).find(({ when }) => when <= latest && made < when - CLOCK_BEHIND_MS);
  if (contradicted === undefined) return { kind: "plausible" };
  return { kind: "too-early", because: describeEarly(at, contradicted.one) };
}

function placeOf(one: Earlier): { readonly one: Earlier; readonly when: number } {
  return { one, when: instantOf(one.at) };
}

function describeAhead(at: string, now: string, ahead: number): string {
  const by = sayDuration(ahead / 1000, ahead < EXACT_MS ? "exact" : "apart");
  return (
    `The line is dated ${at}, ${by} ahead of the station's clock (${now}). ` +
    `Set this device's date, time and time zone to automatic, then write the line again.`
  );
}

function describeEarly(at: string, earlier: Earlier): string {
  return (
    `The line is dated ${at}, before ${earlier.what} (${earlier.at}). ` +
    `Set this device's date, time and time zone to automatic, then write the line again.`
  );
}
