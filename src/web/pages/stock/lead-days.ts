import { addSpan, daysBetween, parseSpan } from "#base";

/** A span of the calendar from a day on, in days: "3 months" is 92 from 1 June. */
export function daysOfSpan(span: string, from: string): number {
  return daysBetween(from, addSpan(from, parseSpan(span)));
}
