import { instantOf } from "./instant.ts";

/** How far a device's clock may run ahead of the judge's [ms]. Common practice: covers drift of an unset clock. */
export const CLOCK_AHEAD_MS = 5 * 60_000;
/** How long before its device joined an entry may claim to be made [ms]: set-up may run on a clock just put right. */
export const BEFORE_JOINING_MS = 24 * 3_600_000;

export type ClockVerdict =
  { readonly kind: "plausible" } | { readonly kind: "ahead" | "before-joining"; readonly because: string };

/**
 * Judges whether an entry's time can be true. An entry may be as late in arriving as it likes, but it cannot have
 * been made in the future, nor before the device that made it was there.
 *
 * @param at - the entry's time, RFC 3339 with offset
 * @param now - the judge's clock, RFC 3339 with offset
 * @param earliest - when the device joined, RFC 3339 with offset; not judged when absent
 * @returns plausible, or which way it is off with the reason in the person's words
 * @range no more than 5 min ahead of `now` and no more than 24 h before `earliest`
 */
export function judgeClock(at: string, now: string, earliest?: string): ClockVerdict {
  const made = instantOf(at);
  const ahead = made - instantOf(now);
  if (ahead > CLOCK_AHEAD_MS) return { kind: "ahead", because: describeAhead(at, now, ahead) };
  if (earliest === undefined || made >= instantOf(earliest) - BEFORE_JOINING_MS) return { kind: "plausible" };
  return { kind: "before-joining", because: describeEarly(at, earliest) };
}

function describeAhead(at: string, now: string, ahead: number): string {
  return (
    `The line is dated ${at}, ${describeSpan(ahead)} ahead of the station's clock (${now}). ` +
    `Set this device's date, time and time zone to automatic, then write the line again.`
  );
}

function describeEarly(at: string, earliest: string): string {
  return (
    `The line is dated ${at}, before this device joined the station (${earliest}). ` +
    `Set this device's date, time and time zone to automatic, then write the line again.`
  );
}

function describeSpan(ms: number): string {
  const minutes = Math.floor(ms / 60_000);
  if (minutes < 120) return `${minutes} minutes`;
  const hours = Math.floor(minutes / 60);
  return hours < 48 ? `${hours} hours` : `${Math.floor(hours / 24)} days`;
}
