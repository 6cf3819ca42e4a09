import type { Span } from "#base";

/** Mean Gregorian month: 146 097 days in 4 800 months. */
const MONTH = 146_097 / 4_800;

/** A span in days, months at their mean length. */
export function daysIn(span: Span): number {
  return "days" in span ? span.days : span.months * MONTH;
}

/** Whole months in so many days: at least one, never more than it is. */
export function monthsIn(days: number): Span {
  return { months: Math.min(1200, Math.max(1, Math.floor(days / MONTH))) };
}
