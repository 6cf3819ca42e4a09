import { daysInMonth } from "#base";
import type { Words } from "#words";
import { sayDate } from "../words/say-time.ts";

/** The three boxes of a date, as typed. */
export interface DateParts {
  readonly day: string;
  readonly month: string;
  readonly year: string;
}

export type PrintedDate =
  | { readonly kind: "incomplete" }
  | { readonly kind: "date"; readonly date: string }
  | { readonly kind: "fault"; readonly fault: string };

type PartWords = Words["parts"];

const [FIRST_YEAR, LAST_YEAR] = [1990, 2100];

/** Reads the boxes into "YYYY-MM-DD" or, without a day, "YYYY-MM"; incomplete while the year is being typed. */
export function readPrintedDate({ day, month, year }: DateParts, mayBeMonth: boolean, words: PartWords): PrintedDate {
  if (month.trim() === "" || !/^\d{4}$/.test(year.trim())) return { kind: "incomplete" };
  if (day.trim() === "" && !mayBeMonth) return { kind: "incomplete" };
  const [y, m] = [Number(year), Number(month)];
  if (!Number.isInteger(m) || m < 1 || m > 12) return { kind: "fault", fault: words.monthFault() };
  if (y < FIRST_YEAR || y > LAST_YEAR)
    return { kind: "fault", fault: words.yearFault({ first: String(FIRST_YEAR), last: String(LAST_YEAR) }) };
  const monthText = `${year.trim()}-${String(m).padStart(2, "0")}`;
  return day.trim() === ""
    ? { kind: "date", date: monthText }
    : withDay(monthText, Number(day), daysInMonth(y, m), words);
}

function withDay(month: string, day: number, last: number, words: PartWords): PrintedDate {
  if (!Number.isInteger(day) || day < 1 || day > last) return { kind: "fault", fault: words.dayFault({ last }) };
  return { kind: "date", date: `${month}-${String(day).padStart(2, "0")}` };
}

/** "14 March 2027", or "March 2027, to its last day" for a month. */
export function sayPrinted(date: string, words: PartWords): string {
  return /^\d{4}-\d{2}$/.test(date) ? words.wholeMonth({ month: sayDate(date) }) : sayDate(date);
}
