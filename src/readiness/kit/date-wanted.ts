import { addSpan, type PlainDate } from "#base";
import type { Check, Pattern } from "#kit";
import { strictest } from "../standing/strictest.ts";
import type { StationPolicy } from "../station/station-state.ts";

/**
 * Day by which a turnaround done today is to be done again: what must outlast it is good beyond that day.
 *
 * @returns the day, or undefined where neither pattern nor station says how long a turnaround holds
 */
export function nextTurnaround(pattern: Pattern, policy: StationPolicy, today: PlainDate): PlainDate | undefined {
  const span = strictest(pattern.policy.turnaround, policy.turnaround);
  return span && addSpan(today, span);
}

/** The day that a printed date must reach to be right: today, or where the check says so the next turnaround. */
export function dateWantedBy(check: Check, pattern: Pattern, policy: StationPolicy, today: PlainDate): PlainDate {
  if (check.kind !== "date" || check.beyond === undefined) return today;
  return nextTurnaround(pattern, policy, today) ?? today;
}
