import type { Span } from "#base";

/** Mean Gregorian month: 146 097 days in 4 800 months. */
const MONTH = 146_097 / 4_800;

/** A span in days, months at their mean length. */
export function daysIn(span: Span): number {
  return "days" in span ? span.days : span.months * MONTH;
}

const WEEK = 7;
/** From here on in weeks, and from here on in months: finer than that nobody plans an opening (judgement) [d]. */
const FORTNIGHT = 2 * WEEK;
const HALF_YEAR = 6 * MONTH;

/** So many days as people plan them, never more than it is: days to a fortnight, weeks to half a year, then months. */
export function wholeSpan(days: number): Span {
  if (days < FORTNIGHT) return { days: Math.max(1, Math.floor(days)) };
  if (days < HALF_YEAR) return { days: WEEK * Math.floor(days / WEEK) };
  return { months: Math.min(1200, Math.floor(days / MONTH)) };
}
