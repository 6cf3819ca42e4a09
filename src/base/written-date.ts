import { dateOf, dateOfNumber, daysInMonth, formatDate, isDate, isMonth, type PlainDate } from "./calendar.ts";
import { printGiven, type Fault } from "./errors.ts";

/** Which comes first in a date such as 03/04/2026. */
export type DateOrder = "day-first" | "month-first";

/** A date as somebody wrote it: the day or month it means, two days that it may mean, or why it is none. */
export type WrittenDate =
  | { readonly kind: "date"; readonly date: string }
  | { readonly kind: "either"; readonly dayFirst: PlainDate; readonly monthFirst: PlainDate; readonly fault: Fault }
  | { readonly kind: "no-date"; readonly fault: Fault };

const FIGURES = /^(\d{1,2})\s?[./-]\s?(\d{1,2})\s?[./-]\s?(\d{4})$/;
const YEAR_FIRST = /^(\d{4})[./](\d{1,2})[./](\d{1,2})$/;
const MONTH_FIGURES = /^(\d{1,2})[./-](\d{4})$/;
const SHORT_YEAR = /^\d{1,2}\s?[./-]\s?\d{1,2}\s?[./-]\s?\d{2}$|^\d{1,2}[\s-][a-z]{3,}[\s-]\d{2}$/i;
const DAY_NAMED = /^(\d{1,2})[\s.-]+([a-z]{3,})[\s.,-]+(\d{4})$/i;
const MONTH_NAMED = /^([a-z]{3,})[\s.-]+(\d{1,2})[\s,]+(\d{4})$/i;
const MONTH_ALONE = /^([a-z]{3,})[\s.-]+(\d{4})$/i;
const WITH_CLOCK = /^(\d{4}-\d{2}-\d{2})[T ]\d{2}:\d{2}(?::\d{2}(?:\.\d+)?)?(?:Z|[+-]\d{2}:\d{2})?$/;
const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
const NAMES = [
  "january",
  "february",
  "march",
  "april",
  "may",
  "june",
  "july",
  "august",
  "september",
  "october",
  "november",
  "december",
];

/** Day of serial number 0 counted back from those after February 1900, as a day number. */
const SERIAL_ZERO = 25_569;
const LEAST_SERIAL = 25_569;
const MOST_SERIAL = 109_574;

/**
 * Reads a date as people write it in lists: "2026-03-04", "4 March 2026", "03/04/2026", "03/2026".
 * A year of two figures is refused: it may be this century's or the last's.
 *
 * @param order - which comes first where only figures stand; where it is not known and both are days, both are returned
 * @param field - name of the field, for the message
 * @returns BA-118 a year of two figures, BA-119 day and month in an order not known, BA-120 no date
 * @example readWrittenDate("25/03/2026") // { kind: "date", date: "2026-03-25" }
 */
export function readWrittenDate(text: string, order?: DateOrder, field = "date"): WrittenDate {
  const trimmed = text.trim();
  if (isDate(trimmed) || isMonth(trimmed)) return { kind: "date", date: trimmed };
  if (SHORT_YEAR.test(trimmed)) return { kind: "no-date", fault: shortYear(field, text) };
  const figures = FIGURES.exec(trimmed);
  if (figures) return readFigures(figures, order, { field, text });
  const date = readNamed(trimmed);
  return date === undefined ? { kind: "no-date", fault: noDate(field, text) } : { kind: "date", date };
}

/**
 * The day of a serial number of a spreadsheet, 1970 to 2199; undefined for any other number.
 *
 * @param serial - days since the end of 1899; a part of a day is left out
 * @param system - 1904 where the workbook says that it counts from then
 * @source ECMA-376, part 1, section 18.17.4.1 | FROM MEMORY
 * @example dateOfSerial(46085) // "2026-03-04"
 */
export function dateOfSerial(serial: number, system: 1900 | 1904 = 1900): PlainDate | undefined {
  const days = Math.floor(serial) + (system === 1904 ? 1462 : 0);
  return days >= LEAST_SERIAL && days <= MOST_SERIAL ? dateOfNumber(days - SERIAL_ZERO) : undefined;
}

interface Given {
  readonly field: string;
  readonly text: string;
}

function readFigures(figures: RegExpExecArray, order: DateOrder | undefined, { field, text }: Given): WrittenDate {
  const [first, second, year] = [Number(figures[1]), Number(figures[2]), Number(figures[3])];
  const dayFirst = dayIn(year, second, first);
  const monthFirst = dayIn(year, first, second);
  const read = order === undefined ? (dayFirst ?? monthFirst) : order === "day-first" ? dayFirst : monthFirst;
  if (read === undefined) return { kind: "no-date", fault: noDate(field, text) };
  const isEither = order === undefined && dayFirst !== undefined && monthFirst !== undefined && dayFirst !== monthFirst;
  if (!isEither) return { kind: "date", date: read };
  return { kind: "either", dayFirst, monthFirst, fault: twoOrders(field, text, dayFirst, monthFirst) };
}

function readNamed(text: string): string | undefined {
  const yearFirst = YEAR_FIRST.exec(text);
  if (yearFirst) return dayIn(Number(yearFirst[1]), Number(yearFirst[2]), Number(yearFirst[3]));
  const clock = WITH_CLOCK.exec(text)?.[1];
  if (clock !== undefined) return isDate(clock) ? clock : undefined;
  const day = DAY_NAMED.exec(text);
  if (day) return dayIn(Number(day[3]), monthNamed(day[2]), Number(day[1]));
  const month = MONTH_NAMED.exec(text);
  if (month) return dayIn(Number(month[3]), monthNamed(month[1]), Number(month[2]));
  return readMonth(text);
}

function readMonth(text: string): string | undefined {
  const figures = MONTH_FIGURES.exec(text);
  const named = MONTH_ALONE.exec(text);
  const month = figures ? Number(figures[1]) : monthNamed(named?.[1]);
  const year = figures?.[2] ?? named?.[2];
  const read = `${year}-${String(month).padStart(2, "0")}`;
  return isMonth(read) ? read : undefined;
}

/** 1 to 12, or 0 where no month is called so. */
function monthNamed(name = ""): number {
  const plain = name.toLowerCase();
  const short = plain.length === 3 || plain === "sept" ? MONTHS.indexOf(plain.slice(0, 3)) : NAMES.indexOf(plain);
  return short + 1;
}

function dayIn(year: number, month: number, day: number): PlainDate | undefined {
  const exists = month >= 1 && month <= 12 && day >= 1 && day <= daysInMonth(year, month);
  return exists && year >= 1 ? dateOf({ year, month, day }) : undefined;
}

function shortYear(field: string, text: string): Fault {
  const remedy = "Write the year with four figures: two may be of this century or of the last.";
  return { code: "BA-118", field, got: printGiven(text), allowed: "a year of four figures", remedy };
}

function twoOrders(field: string, text: string, dayFirst: PlainDate, monthFirst: PlainDate): Fault {
  const allowed = `${formatDate(dayFirst)} or ${formatDate(monthFirst)}, not either`;
  const remedy = "Say whether the day or the month comes first.";
  return { code: "BA-119", field, got: printGiven(text), allowed, remedy };
}

function noDate(field: string, text: string): Fault {
  const allowed = 'a day such as "2027-03-14" or "14 March 2027", or a month such as "2027-03"';
  return {
    code: "BA-120",
    field,
    got: printGiven(text),
    allowed,
    remedy: "Write a day that there is, or leave it empty.",
  };
}
