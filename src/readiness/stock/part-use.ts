import { daysBetween, type PlainDate } from "#base";
import type { PartShelf } from "./shelves.ts";

/** Days of a year on average. */
const YEAR_DAYS = 365.25;
/** Fewer days of record than this say nothing of a year; common practice. */
const LEAST_DAYS = 90;

/** So many of a part were used at once, so often. */
export interface LotUsed {
  /** At least 1 [parts]. */
  readonly size: number;
  readonly times: number;
}

/**
 * How many of a part are used at once, as the log tells it: what went into one kit in one turnaround, or for one finding, was
 * wanted together, as an opening that renews three. What is written down without a kit counts one by one: such a line may
 * stand for months of work.
 *
 * @returns smallest first; empty where none was used
 */
export function lotsUsed(shelves: readonly PartShelf[]): readonly LotUsed[] {
  const together = new Map<string, number>();
  const times = new Map<number, number>();
  const add = (size: number, by: number) => times.set(size, (times.get(size) ?? 0) + by);
  for (const line of shelves.flatMap(({ lines }) => lines)) {
    if (line.what !== "used" || line.count < 1) continue;
    const occasion = `${line.kit} ${line.work ?? line.day}`;
    if (line.kit === undefined) add(1, line.count);
    else together.set(occasion, (together.get(occasion) ?? 0) + line.count);
  }
  for (const size of together.values()) add(size, 1);
  return [...times].map(([size, count]) => ({ size, times: count })).toSorted((one, other) => one.size - other.size);
}

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
