import {
  addDays,
  dateFault,
  dateOf,
  dateParts,
  dayNumber,
  daysInMonth,
  isDate,
  isLeapYear,
  weekdayOf,
} from "./calendar.ts";
import type { DateParts, PlainDate } from "./calendar.ts";

/** A calendar rule, as far as whole days go. Weekdays are Monday 1 to Sunday 7. */
export interface Recurrence {
  readonly every: "day" | "week" | "month" | "year";
  readonly interval: number;
  readonly count?: number;
  readonly until?: PlainDate;
  readonly months: readonly number[];
  readonly monthDays: readonly number[];
  readonly yearDays: readonly number[];
  readonly weekDays: readonly { readonly day: number; readonly nth?: number }[];
  readonly positions: readonly number[];
  readonly weekStart: number;
  /** What becomes of a day that a month does not have. */
  readonly skip: "omit" | "backward" | "forward";
}

const FREQUENCIES: Readonly<Record<string, Recurrence["every"]>> = {
  DAILY: "day",
  WEEKLY: "week",
  MONTHLY: "month",
  YEARLY: "year",
};
const WEEKDAYS = ["MO", "TU", "WE", "TH", "FR", "SA", "SU"];
const SKIPS = ["omit", "backward", "forward"] as const;
const PARTS =
  /^(FREQ|INTERVAL|COUNT|UNTIL|BYMONTH|BYMONTHDAY|BYYEARDAY|BYDAY|BYSETPOS|WKST|SKIP|RSCALE)=([A-Z0-9,+-]+)$/;
/** Periods looked through in search of the next date: a rule that gives none for so long gives none. */
const FRUITLESS_PERIODS = 1_000;

/**
 * Reads an RFC 5545 recurrence rule, as far as whole days go.
 *
 * @param text - such as "FREQ=MONTHLY;INTERVAL=6;BYMONTHDAY=-1;COUNT=4"
 * @param field - name of the field, for the message
 * @throws InputError BA-116 for a part that is malformed, unknown, or about times of day or week numbers
 * @source IETF RFC 5545, section 3.3.10, 2009; SKIP and RSCALE: RFC 7529, sections 4 and 5, 2015
 */
export function parseRecurrence(text: string, field = "rule"): Recurrence {
  const parts = new Map(
    text
      .replace(/^RRULE:/i, "")
      .toUpperCase()
      .split(";")
      .map((part) => readPart(part, field)),
  );
  const every = FREQUENCIES[parts.get("FREQ") ?? ""];
  const skip = SKIPS.find((one) => one === (parts.get("SKIP") ?? "OMIT").toLowerCase());
  const weekStart = WEEKDAYS.indexOf(parts.get("WKST") ?? "MO") + 1;
  if (!every || !skip || weekStart === 0 || (parts.get("RSCALE") ?? "GREGORIAN") !== "GREGORIAN")
    throw unread(field, text);
  const numbers = (name: string, most: number) => readNumbers(parts.get(name), most, field);
  const [count] = numbers("COUNT", 100_000);
  const until = readUntil(parts.get("UNTIL"), field);
  return {
    every,
    interval: numbers("INTERVAL", 10_000)[0] ?? 1,
    ...(count === undefined ? {} : { count }),
    ...(until === undefined ? {} : { until }),
    months: numbers("BYMONTH", 12),
    monthDays: numbers("BYMONTHDAY", 31),
    yearDays: numbers("BYYEARDAY", 366),
    weekDays: (parts.get("BYDAY")?.split(",") ?? []).map((day) => readWeekDay(day, field)),
    positions: numbers("BYSETPOS", 366),
    weekStart,
    skip,
  };
}

/**
 * The days of a rule from its first day on, in order.
 *
 * @param start - first day; what the rule leaves open (weekday, day of the month, month) is taken from it
 * @param rule - the rule
 * @param most - the most days to give
 * @source IETF RFC 5545, section 3.3.10, 2009; RFC 7529, section 4.1, 2015
 * @example recurrenceDates("2023-08-31", parseRecurrence("FREQ=MONTHLY;INTERVAL=6;BYMONTHDAY=-1"), 2)
 *   // ["2023-08-31", "2024-02-29"]
 */
export function recurrenceDates(start: PlainDate, rule: Recurrence, most: number): readonly PlainDate[] {
  const full = completed(start, rule);
  const limit = Math.min(most, rule.count ?? most);
  const found: PlainDate[] = [];
  let fruitless = 0;
  for (let period = 0; found.length < limit && fruitless < FRUITLESS_PERIODS; period++) {
    const days = periodDays(start, full, period * rule.interval);
    if (days === undefined || (rule.until !== undefined && (days[0] ?? start) > rule.until)) break;
    const chosen = positioned(
      days.filter((day) => matches(day, full)),
      rule.positions,
    );
    const good = shifted(chosen, full).filter((day) => day >= start && day <= (rule.until ?? day));
    found.push(...good.filter((day) => day > (found.at(-1) ?? "")));
    fruitless = good.length > 0 ? 0 : fruitless + 1;
  }
  return found.slice(0, limit);
}

/** What the rule leaves open is what its first day has. */
function completed(start: PlainDate, rule: Recurrence): Recurrence {
  const { month, day } = dateParts(start);
  const says = rule.monthDays.length + rule.yearDays.length + rule.weekDays.length > 0;
  if (says || rule.every === "day") return rule;
  if (rule.every === "week") return { ...rule, weekDays: [{ day: weekdayOf(start) }] };
  const months = rule.every === "year" && rule.months.length === 0 ? [month] : rule.months;
  return { ...rule, months, monthDays: [day] };
}

/** Days of the period so many after the first; impossible days of a month are kept, as "2026-02-31", to be skipped. */
function periodDays(start: PlainDate, rule: Recurrence, ahead: number): readonly PlainDate[] | undefined {
  const { year, month } = dateParts(start);
  if (rule.every === "year") {
    return year + ahead > 9999 ? undefined : MONTHS.flatMap((each) => monthDays(year + ahead, each, rule));
  }
  if (rule.every === "month") {
    const total = year * 12 + month - 1 + ahead;
    return total >= 120_000 ? undefined : monthDays(Math.floor(total / 12), (total % 12) + 1, rule);
  }
  if (rule.every === "day") return [addDays(start, ahead)];
  const weekBegin = addDays(start, -((weekdayOf(start) - rule.weekStart + 7) % 7) + 7 * ahead);
  return Array.from({ length: 7 }, (_, day) => addDays(weekBegin, day));
}

const MONTHS = Array.from({ length: 12 }, (_, month) => month + 1);

function monthDays(year: number, month: number, rule: Recurrence): readonly PlainDate[] {
  const length = rule.skip === "omit" ? daysInMonth(year, month) : 31;
  return Array.from({ length }, (_, day) => dateOf({ year, month, day: day + 1 }));
}

function matches(date: PlainDate, rule: Recurrence): boolean {
  const parts = dateParts(date);
  const length = daysInMonth(parts.year, parts.month);
  if (rule.months.length > 0 && !rule.months.includes(parts.month)) return false;
  if (parts.day > length) return rule.monthDays.includes(parts.day);
  const { monthDays: days, yearDays, weekDays } = rule;
  if (days.length > 0 && !days.includes(parts.day) && !days.includes(parts.day - length - 1)) return false;
  if (yearDays.length > 0 && !matchesYearDay(date, parts.year, yearDays)) return false;
  return weekDays.length === 0 || weekDays.some((one) => matchesWeekDay(date, parts, one, rule));
}

function matchesYearDay(date: PlainDate, year: number, yearDays: readonly number[]): boolean {
  const day = dayNumber(date) - dayNumber(dateOf({ year, month: 1, day: 1 })) + 1;
  return yearDays.includes(day) || yearDays.includes(day - (isLeapYear(year) ? 367 : 366));
}

/** The nth such weekday of the month, or of the year where the rule counts years and names no month. */
function matchesWeekDay(
  date: PlainDate,
  parts: DateParts,
  { day, nth }: Recurrence["weekDays"][number],
  rule: Recurrence,
): boolean {
  if (weekdayOf(date) !== day) return false;
  if (nth === undefined || (rule.every !== "month" && rule.every !== "year")) return nth === undefined;
  const ofYear = rule.every === "year" && rule.months.length === 0;
  const length = ofYear ? (isLeapYear(parts.year) ? 366 : 365) : daysInMonth(parts.year, parts.month);
  const first = dateOf({ year: parts.year, month: ofYear ? 1 : parts.month, day: 1 });
  const index = dayNumber(date) - dayNumber(first);
  return nth > 0 ? Math.floor(index / 7) + 1 === nth : -Math.floor((length - 1 - index) / 7) - 1 === nth;
}

function positioned(days: readonly PlainDate[], positions: readonly number[]): readonly PlainDate[] {
  if (positions.length === 0) return days;
  return days.filter((_, at) => positions.includes(at + 1) || positions.includes(at - days.length));
}

/** Days that a month does not have: moved to its last day, or to the first of the next month. */
function shifted(days: readonly PlainDate[], rule: Recurrence): readonly PlainDate[] {
  if (rule.skip === "omit") return days;
  const moved = days.map((date) => {
    const { year, month, day } = dateParts(date);
    const last = daysInMonth(year, month);
    if (day <= last) return date;
    const lastDay = dateOf({ year, month, day: last });
    return rule.skip === "backward" ? lastDay : addDays(lastDay, 1);
  });
  return [...new Set(moved)].toSorted();
}

function readPart(part: string, field: string): readonly [string, string] {
  const read = PARTS.exec(part.trim());
  if (!read) throw unread(field, part);
  return [read[1]!, read[2]!];
}

function readNumbers(text: string | undefined, most: number, field: string): readonly number[] {
  return (text?.split(",") ?? []).map((word) => {
    const number = Number(word);
    if (!Number.isInteger(number) || number === 0 || Math.abs(number) > most) throw unread(field, word);
    return number;
  });
}

function readWeekDay(text: string, field: string): Recurrence["weekDays"][number] {
  const read = /^([+-]?\d{1,2})?(MO|TU|WE|TH|FR|SA|SU)$/.exec(text);
  if (!read || Number(read[1] ?? 1) === 0) throw unread(field, text);
  const day = WEEKDAYS.indexOf(read[2]!) + 1;
  return read[1] === undefined ? { day } : { day, nth: Number(read[1]) };
}

function readUntil(text: string | undefined, field: string): PlainDate | undefined {
  if (text === undefined) return undefined;
  const date = `${text.slice(0, 4)}-${text.slice(4, 6)}-${text.slice(6, 8)}`;
  if (!isDate(date)) throw unread(field, text);
  return date;
}

function unread(field: string, got: string): Error {
  const allowed =
    "FREQ=DAILY, WEEKLY, MONTHLY or YEARLY with INTERVAL, COUNT, UNTIL, BYMONTH, BYMONTHDAY, BYYEARDAY, BYDAY, BYSETPOS, WKST, SKIP";
  return dateFault("BA-116", field, got, allowed);
}
