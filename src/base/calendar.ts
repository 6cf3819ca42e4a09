import { InputError, printGiven, type Fault } from "./errors.ts";

/** A calendar day, "YYYY-MM-DD", in the proleptic Gregorian calendar, years 0001 to 9999. Days compare as text. */
export type PlainDate = string;

const DAY_TEXT = /^(\d{4})-(\d{2})-(\d{2})$/;
const MONTH_TEXT = /^(\d{4})-(\d{2})$/;
const GS1_TEXT = /^(\d{2})(\d{2})(\d{2})$/;
const MONTH_NAMES = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;
/** Year, month 1 to 12 and day of a date. */
export interface DateParts {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

/**
 * Reads a date as printed on a thing: a day, or a month that means its last day.
 *
 * @param text - "2027-03-14" or "2027-03"
 * @param field - name of the field, for the message
 * @returns the day
 * @throws InputError BA-111 where it is no date
 * @example parseDate("2027-03") // "2027-03-31"
 */
export function parseDate(text: string, field = "date"): PlainDate {
  const trimmed = text.trim();
  if (isMonth(trimmed)) return lastDayOf(trimmed);
  if (isDate(trimmed)) return trimmed;
  throw dateFault("BA-111", field, text, 'a day such as "2027-03-14" or a month such as "2027-03"');
}

/** True for a day that exists, written "YYYY-MM-DD". */
export function isDate(text: string): boolean {
  const parts = DAY_TEXT.exec(text);
  return parts !== null && exists(Number(parts[1]), Number(parts[2]), Number(parts[3]));
}

/** True for a month written "YYYY-MM". */
export function isMonth(text: string): boolean {
  const parts = MONTH_TEXT.exec(text);
  return parts !== null && exists(Number(parts[1]), Number(parts[2]), 1);
}

/**
 * Last day of a month.
 *
 * @throws InputError BA-111 where it is no month
 * @example lastDayOf("2027-03") // "2027-03-31"
 */
export function lastDayOf(month: string): PlainDate {
  if (!isMonth(month)) throw dateFault("BA-111", "month", month, 'a month such as "2027-03"');
  return `${month}-${two(daysInMonth(Number(month.slice(0, 4)), Number(month.slice(5))))}`;
}

/** Splits a day that is known to be one. */
export function dateParts(date: PlainDate): DateParts {
  return { year: Number(date.slice(0, 4)), month: Number(date.slice(5, 7)), day: Number(date.slice(8, 10)) };
}

/** Joins parts that are known to be a day. */
export function dateOf({ year, month, day }: DateParts): PlainDate {
  return `${String(year).padStart(4, "0")}-${two(month)}-${two(day)}`;
}

/** Days in a month of a year, 28 to 31. */
export function daysInMonth(year: number, month: number): number {
  if (month === 2) return isLeapYear(year) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

/** True where February has 29 days. */
export function isLeapYear(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}

/**
 * Whole days from one day to another, negative if it lies before.
 * @example daysBetween("2024-02-28", "2024-03-01") // 2
 */
export function daysBetween(from: PlainDate, to: PlainDate): number {
  return dayNumber(to) - dayNumber(from);
}

/** Negative where the first day is earlier, 0 where equal, positive where later. */
export function compareDates(one: PlainDate, other: PlainDate): number {
  return one < other ? -1 : one > other ? 1 : 0;
}

/** The earlier of two days; of one where the other is absent. */
export function earlierDate(one: PlainDate | undefined, other: PlainDate | undefined): PlainDate | undefined {
  if (one === undefined || other === undefined) return one ?? other;
  return other < one ? other : one;
}

/** Day so many days later. */
export function addDays(date: PlainDate, days: number): PlainDate {
  return dateOfNumber(dayNumber(date) + days);
}

/**
 * Days since 1 January 1970.
 * @source DERIVED: days of whole 400-year cycles, years counted from March so that the leap day comes last
 */
export function dayNumber(date: PlainDate): number {
  const { year, month, day } = dateParts(date);
  const marchYear = month > 2 ? year : year - 1;
  const marchMonth = month > 2 ? month - 3 : month + 9;
  const leapDays = Math.floor(marchYear / 4) - Math.floor(marchYear / 100) + Math.floor(marchYear / 400);
  return marchYear * 365 + leapDays + Math.floor((153 * marchMonth + 2) / 5) + day - 1 - 719_468;
}

/** The day with that number since 1 January 1970; inverse of {@link dayNumber}. */
export function dateOfNumber(number: number): PlainDate {
  const days = number + 719_468;
  const cycle = Math.floor(days / 146_097);
  const inCycle = days - cycle * 146_097;
  const yearInCycle = Math.floor(
    (inCycle - Math.floor(inCycle / 1_460) + Math.floor(inCycle / 36_524) - Math.floor(inCycle / 146_096)) / 365,
  );
  const inYear = inCycle - (365 * yearInCycle + Math.floor(yearInCycle / 4) - Math.floor(yearInCycle / 100));
  const marchMonth = Math.floor((5 * inYear + 2) / 153);
  const month = marchMonth < 10 ? marchMonth + 3 : marchMonth - 9;
  const year = cycle * 400 + yearInCycle + (month <= 2 ? 1 : 0);
  return dateOf({ year, month, day: inYear - Math.floor((153 * marchMonth + 2) / 5) + 1 });
}

/** Day of the week, Monday 1 to Sunday 7 (ISO 8601). */
export function weekdayOf(date: PlainDate): number {
  return ((((dayNumber(date) + 3) % 7) + 7) % 7) + 1;
}

/**
 * A day in words.
 * @example formatDate("2027-03-14") // "14 March 2027"
 */
export function formatDate(date: PlainDate): string {
  const { year, month, day } = dateParts(date);
  return `${day} ${MONTH_NAMES[month - 1] ?? ""} ${year}`;
}

/**
 * A month in words.
 * @param month - "YYYY-MM"
 * @example formatMonth("2027-03") // "March 2027"
 */
export function formatMonth(month: string): string {
  const { year, month: number } = dateParts(`${month}-01`);
  return `${MONTH_NAMES[number - 1] ?? ""} ${year}`;
}

/**
 * Reads the date of a GS1 element string: YYMMDD, day 00 meaning the month's last. The century is the one that puts the
 * year at most 49 years back and 50 ahead.
 *
 * @param text - six digits
 * @param currentYear - year it is read in
 * @param field - name of the field, for the message
 * @throws InputError BA-113 where it is no such date
 * @source GS1 General Specifications, AI (17), section 7.12 (window FROM MEMORY)
 * @example gs1Date("130200", 2025) // "2013-02-28"
 */
export function gs1Date(text: string, currentYear: number, field = "date"): PlainDate {
  const parts = GS1_TEXT.exec(text.trim());
  const year = parts ? gs1Year(Number(parts[1]), currentYear) : 0;
  const month = `${String(year).padStart(4, "0")}-${parts?.[2] ?? ""}`;
  const date = parts?.[3] === "00" && isMonth(month) ? lastDayOf(month) : `${month}-${parts?.[3] ?? ""}`;
  if (!isDate(date)) throw dateFault("BA-113", field, text, "six digits YYMMDD, day 00 for the month's last");
  return date;
}

function gs1Year(twoDigits: number, currentYear: number): number {
  const century = currentYear - (currentYear % 100);
  const difference = twoDigits - (currentYear % 100);
  if (difference >= 51) return century - 100 + twoDigits;
  return difference <= -50 ? century + 100 + twoDigits : century + twoDigits;
}

/** The day so many months later, clamped to the end of its month. */
export function addMonths(date: PlainDate, months: number): PlainDate {
  const { year, month, day } = dateParts(date);
  const total = year * 12 + (month - 1) + months;
  const target = { year: Math.floor(total / 12), month: (((total % 12) + 12) % 12) + 1 };
  return dateOf({ ...target, day: Math.min(day, daysInMonth(target.year, target.month)) });
}

function exists(year: number, month: number, day: number): boolean {
  return year >= 1 && month >= 1 && month <= 12 && day >= 1 && day <= daysInMonth(year, month);
}

function two(number: number): string {
  return number < 10 ? `0${number}` : String(number);
}

/** A date, span or instant that cannot be read. */
export function dateFault(code: string, field: string, got: unknown, allowed: string): InputError {
  const one: Fault = { code, field, got: printGiven(got), allowed, remedy: "Correct it and try again." };
  return new InputError([one]);
}
