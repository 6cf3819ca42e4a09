import { workingAt, type Belief } from "#reliability";
import type { KitStartRecord } from "./start-book.ts";

const DAY = 86_400;

/** What is believed of the chance that a kit works, so long after it was last proved. */
export interface Tonight {
  /** Days since it was last proved. */
  readonly days: number;
  readonly working: Belief;
}

/**
 * The chance that a kit starts, primes and delivers now: what it was when last proved, less what came unseen since.
 *
 * @param record - of the kit
 * @param now - RFC 3339
 * @returns undefined where it was never proved, or nothing is known of faults that come unseen
 * @source as `workingAt`
 */
export function tonightOf(record: KitStartRecord, now: string): Tonight | undefined {
  const days = daysSinceProof(record, now);
  return days === undefined ? undefined : workingAfter(record, days);
}

/**
 * The chance over time since the last proof: at the proof and so many even steps after it.
 *
 * @param record - of the kit
 * @param days - to where, above 0
 * @param steps - how many
 */
export function workingCurve(record: KitStartRecord, days: number, steps: number): readonly Tonight[] {
  const ages = Array.from({ length: steps + 1 }, (_, i) => (days * i) / steps);
  return ages.flatMap((age) => workingAfter(record, age) ?? []);
}

/** Whole and part days since a kit last started and gave water; undefined where it never did. */
export function daysSinceProof({ proved }: KitStartRecord, now: string): number | undefined {
  return proved === undefined ? undefined : Math.max(0, Date.parse(now) - Date.parse(proved)) / 1000 / DAY;
}

function workingAfter({ asked, hidden }: KitStartRecord, days: number): Tonight | undefined {
  return hidden && { days, working: workingAt({ asked, hidden: hidden.spread }, days * DAY) };
}
