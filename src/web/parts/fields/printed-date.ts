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

/** What may be typed on the way to a month from 1 to 12, and to a year from 1990 to 2100. */
const MONTH_SO_FAR = /^(0?[1-9]?|1[0-2])$/;
const YEAR_SO_FAR = /^(1|19|199\d?|2|20\d{0,2}|21|210|2100)?$/;
const [FIRST_YEAR, LAST_YEAR] = [1990, 2100];

/**
 * Reads the boxes into "YYYY-MM-DD" or, without a day, "YYYY-MM"; incomplete while the year is being typed, and a fault as
 * soon as what stands there cannot become a month or a year.
 */
export function readPrintedDate({ day, month, year }: DateParts, mayBeMonth: boolean, words: PartWords): PrintedDate {
  if (!MONTH_SO_FAR.test(month.trim())) return { kind: "fault", fault: words.monthFault() };
  if (!YEAR_SO_FAR.test(year.trim()))
    return { kind: "fault", fault: words.yearFault({ first: String(FIRST_YEAR), last: String(LAST_YEAR) }) };
  const [y, m] = [Number(year), Number(month)];
  if (m === 0 || year.trim().length < 4) return { kind: "incomplete" };
  if (day.trim() === "" && !mayBeMonth) return { kind: "incomplete" };
  const monthText = `${year.trim()}-${String(m).padStart(2, "0")}`;
  return day.trim() === ""
    ? { kind: "date", date: monthText }
    : withDay(monthText, Number(day), daysInMonth(y, m), words);
}

function withDay(month: string, day: number, last: number, words: PartWords): PrintedDate {
  if (!Number.isInteger(day) || day < 1 || day > last) return { kind: "fault", fault: words.dayFault({ last }) };
  return { kind: "date", date: `${month}-${String(day).padStart(2, "0")}` };
}

/**
 * "14 March 2027". A month is meant "to its last day" where it is the last good day printed on a thing, and "from its first
 * day" where a life is counted from it.
 */
export function sayPrinted(date: string, words: PartWords, isLastDay = true): string {
  if (!/^\d{4}-\d{2}$/.test(date)) return sayDate(date);
  return isLastDay ? words.wholeMonth({ month: sayDate(date) }) : words.fromMonth({ month: sayDate(date) });
}
