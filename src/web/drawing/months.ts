import { dateOf, dateParts, type PlainDate } from "#base";
import type { Words } from "#words";

/** A month named under an axis, at its first day. */
export interface MonthTick {
  readonly day: PlainDate;
  readonly label: string;
}

const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"] as const;
/** Steps that keep January among the months named, so that the year can stand there. */
const STEPS = [1, 2, 3, 4, 6, 12] as const;

/**
 * First days of months within a range, as many as are asked for at most. January carries its year.
 *
 * @param most - greatest number of months to name, 1 or more
 */
export function monthTicks(from: PlainDate, to: PlainDate, most: number, words: Words["bands"]): readonly MonthTick[] {
  const all = monthStarts(from, to);
  const step = STEPS.find((months) => Math.ceil(all.length / months) <= most) ?? 12;
  return all
    .filter((day) => (dateParts(day).month - 1) % step === 0)
    .map((day) => ({ day, label: sayMonth(day, words) }));
}

function monthStarts(from: PlainDate, to: PlainDate): readonly PlainDate[] {
  const first = dateParts(from);
  const last = dateParts(to);
  const count = (last.year - first.year) * 12 + (last.month - first.month) + 1;
  const starts = Array.from({ length: Math.max(0, count) }, (_, index) => monthAfter(first.year, first.month, index));
  return starts.filter((day) => day >= from && day <= to);
}

function monthAfter(year: number, month: number, months: number): PlainDate {
  const whole = month - 1 + months;
  return dateOf({ year: year + Math.floor(whole / 12), month: (whole % 12) + 1, day: 1 });
}

function sayMonth(day: PlainDate, words: Words["bands"]): string {
  const { year, month } = dateParts(day);
  return month === 1 ? words.janOf({ year: String(year) }) : words[MONTHS[month - 1]!]();
}
