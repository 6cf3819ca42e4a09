import { addSpan, daysBetween, parseSpan } from "#base";
import type { LotUsed } from "#readiness";

/** A span of the calendar from a day on, in days: "3 months" is 92 from 1 June. */
export function daysOfSpan(span: string, from: string): number {
  return daysBetween(from, addSpan(from, parseSpan(span)));
}

/** Larger lots, and more sizes, the question does not take. */
const LARGEST = 100;
const MOST_SIZES = 20;

/** In which sizes a part is wanted, as `spares` takes it; nothing where all were used one at a time. */
export function lotsAsked(used: readonly LotUsed[]) {
  if (used.every(({ size }) => size === 1)) return {};
  const told = used.toSorted((one, other) => other.times - one.times).slice(0, MOST_SIZES);
  return { lots: told.map(({ size, times }) => ({ size: Math.min(LARGEST, size), share: times })) };
}
