import { daysBetween, type PlainDate } from "#base";
import type { PartShelf } from "./shelves.ts";

/** Days of a year on average. */
const YEAR_DAYS = 365.25;
/** Fewer days of record than this say nothing of a year; common practice. */
const LEAST_DAYS = 90;

/**
 * How many of a part a year are taken off these shelves, as the log tells it: what was used, over the days since the first
 * line of any of them.
 *
 * @returns [1/year], or undefined where the record is shorter than 90 days
 */
export function usedPerYear(shelves: readonly PartShelf[], today: PlainDate): number | undefined {
  const lines = shelves.flatMap((shelf) => shelf.lines);
  const first = lines.map(({ day }) => day).toSorted()[0];
  const days = first === undefined ? 0 : daysBetween(first, today);
  if (days < LEAST_DAYS) return undefined;
  const used = lines.reduce((sum, line) => (line.what === "used" ? sum + line.count : sum), 0);
  return (used * YEAR_DAYS) / days;
}
