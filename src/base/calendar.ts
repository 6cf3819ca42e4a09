import { InputError, printGiven, type Fault } from "./errors.ts";

/** A calendar day, "YYYY-MM-DD", in the proleptic Gregorian calendar, years 0001 to 9999. Days compare as text. */
export type PlainDate = string;

/** Calendar time: months count from the anchor date and clamp to the month's end, days are days. */
export type Span = { readonly months: number } | { readonly days: number };

const DAY_TEXT = /^(\d{4})-(\d{2})-(\d{2})$/;
const MONTH_TEXT = /^(\d{4})-(\d{2})$/;
const SPAN_TEXT = /^([+-]?\d{1,5})\s*(day|week|month|year)s?$/i;
const SPAN_ISO = /^([+-]?)P(?:(\d{1,4})Y)?(?:(\d{1,5})M)?(?:(\d{1,4})W)?(?:(\d{1,5})D)?$/;
const GS1_TEXT = /^(\d{2})(\d{2})(\d{2})$/;
const INSTANT_TEXT =
  /^(\d{4}-\d{2}-\d{2})T([01]\d|2[0-3]):[0-5]\d:([0-5]\d|60)(\.\d{1,9})?(Z|[+-]([01]\d|2[0-3]):[0-5]\d)$/;
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
// Mean Gregorian month: 146 097 days in 4 800 months.
const MEAN_MONTH_DAYS = 146_097 / 4_800;

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
 * Reads a span of calendar time.
 *
 * @param text - "90 days", "6 weeks", "12 months", "2 years", or ISO 8601 with months or days alone ("P6M", "P90D")
 * @param field - name of the field, for the message
 * @returns months for months and years, days for days and weeks
 * @throws InputError BA-112 where it is no span
 * @example parseSpan("2 years") // { months: 24 }
 */
export function parseSpan(text: string, field = "span"): Span {
  const span = readWordedSpan(text.trim()) ?? readIsoSpan(text.trim());
  if (span) return span;
  throw dateFault("BA-112", field, text, '"90 days", "6 weeks", "12 months" or "2 years"');
}

/** A span in words, largest whole unit first: "2 years", "90 days". */
export function formatSpan(span: Span): string {
  if ("days" in span) return count(span.days, "day");
  return span.months !== 0 && span.months % 12 === 0 ? count(span.months / 12, "year") : count(span.months, "month");
}

/**
 * The day a span after (or, if negative, before) another. Months count from the given day and clamp to the end of the
 * month, so that always counting from the anchor never drifts: 31 January + 1 month = 28 or 29 February, + 2 = 31 March.
 *
 * @source W3C XML Schema Part 2, Appendix E (rule FROM MEMORY, checked against python-dateutil 2.9.0)
 * @example addSpan("2024-02-29", { months: 12 }) // "2025-02-28"
 */
export function addSpan(date: PlainDate, span: Span): PlainDate {
  return "days" in span ? addDays(date, span.days) : addMonths(date, span.months);
}

/** The shorter of two spans, months taken at their mean length; of one where the other is absent. */
export function shorterSpan(one: Span | undefined, other: Span | undefined): Span | undefined {
  if (!one || !other) return one ?? other;
  return meanDays(other) < meanDays(one) ? other : one;
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
 * Calendar day at which an instant falls in a zone.
 *
 * @param zone - IANA time zone, such as "Pacific/Auckland"
 * @param instant - RFC 3339 with offset
 * @throws InputError BA-114 unknown zone, BA-115 no instant
 * @example dayIn("Pacific/Auckland", "2026-03-14T20:00:00Z") // "2026-03-15"
 */
export function dayIn(zone: string, instant: string): PlainDate {
  if (!isInstant(instant)) throw dateFault("BA-115", "instant", instant, "an instant with its offset");
  const parts = zoneFormat(zone).formatToParts(new Date(instant));
  const read = (type: string) => Number(parts.find((part) => part.type === type)?.value);
  return dateOf({ year: read("year"), month: read("month"), day: read("day") });
}

/** True for an IANA time zone that this runtime knows. */
export function isZone(zone: string): boolean {
  try {
    zoneFormat(zone);
    return true;
  } catch (thrown) {
    if (thrown instanceof InputError) return false;
    throw thrown;
  }
}

/** True for an RFC 3339 instant with offset on a day that exists. */
export function isInstant(text: string): boolean {
  const parts = INSTANT_TEXT.exec(text);
  return parts !== null && isDate(parts[1]!) && !Number.isNaN(Date.parse(text));
}

/** The day an instant was written under, on the clock of whoever wrote it: the part before "T". */
export function dayWritten(instant: string): PlainDate {
  return instant.slice(0, 10);
}

/** Whole and part seconds from one instant to another, as wall clocks that were right would tell. */
export function secondsBetween(from: string, to: string): number {
  return (Date.parse(to) - Date.parse(from)) / 1000;
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
 * Reads the date of a GS1 element string: YYMMDD, day 00 meaning the month's last. The century is the one that puts the
 * year at most 49 years back and 50 ahead.
 *
 * @param text - six digits
 * @param currentYear - year it is read in
 * @throws InputError BA-113 where it is no such date
 * @source GS1 General Specifications, AI (17), section 7.12 (window FROM MEMORY)
 * @example gs1Date("130200", 2025) // "2013-02-28"
 */
export function gs1Date(text: string, currentYear: number): PlainDate {
  const parts = GS1_TEXT.exec(text.trim());
  const year = parts ? gs1Year(Number(parts[1]), currentYear) : 0;
  const month = `${String(year).padStart(4, "0")}-${parts?.[2] ?? ""}`;
  const date = parts?.[3] === "00" && isMonth(month) ? lastDayOf(month) : `${month}-${parts?.[3] ?? ""}`;
  if (!isDate(date)) throw dateFault("BA-113", "date", text, "six digits YYMMDD, day 00 for the month's last");
  return date;
}

function gs1Year(twoDigits: number, currentYear: number): number {
  const century = currentYear - (currentYear % 100);
  const difference = twoDigits - (currentYear % 100);
  if (difference >= 51) return century - 100 + twoDigits;
  return difference <= -50 ? century + 100 + twoDigits : century + twoDigits;
}

function addMonths(date: PlainDate, months: number): PlainDate {
  const { year, month, day } = dateParts(date);
  const total = year * 12 + (month - 1) + months;
  const target = { year: Math.floor(total / 12), month: (((total % 12) + 12) % 12) + 1 };
  return dateOf({ ...target, day: Math.min(day, daysInMonth(target.year, target.month)) });
}

function readWordedSpan(text: string): Span | undefined {
  const parts = SPAN_TEXT.exec(text);
  if (!parts) return undefined;
  const number = Number(parts[1]);
  const unit = parts[2]!.toLowerCase();
  if (unit === "day" || unit === "week") return { days: unit === "week" ? number * 7 : number };
  return { months: unit === "year" ? number * 12 : number };
}

function readIsoSpan(text: string): Span | undefined {
  const parts = SPAN_ISO.exec(text);
  if (!parts || parts.slice(2).every((part) => part === undefined)) return undefined;
  const sign = parts[1] === "-" ? -1 : 1;
  const [years, months, weeks, days] = parts.slice(2).map((part) => Number(part ?? 0));
  const inMonths = years! * 12 + months!;
  const inDays = weeks! * 7 + days!;
  if (inMonths !== 0 && inDays !== 0) return undefined;
  return inDays !== 0 ? { days: sign * inDays } : { months: sign * inMonths };
}

function meanDays(span: Span): number {
  return "days" in span ? span.days : span.months * MEAN_MONTH_DAYS;
}

function zoneFormat(zone: string): Intl.DateTimeFormat {
  try {
    return new Intl.DateTimeFormat("en-u-ca-iso8601-nu-latn", {
      timeZone: zone,
      year: "numeric",
      month: "numeric",
      day: "numeric",
    });
  } catch (thrown) {
    if (!(thrown instanceof RangeError)) throw thrown;
    throw dateFault("BA-114", "zone", zone, 'an IANA time zone such as "Pacific/Auckland"');
  }
}

function exists(year: number, month: number, day: number): boolean {
  return year >= 1 && month >= 1 && month <= 12 && day >= 1 && day <= daysInMonth(year, month);
}

function count(number: number, unit: string): string {
  return `${number} ${unit}${Math.abs(number) === 1 ? "" : "s"}`;
}

function two(number: number): string {
  return number < 10 ? `0${number}` : String(number);
}

function dateFault(code: string, field: string, got: unknown, allowed: string): InputError {
  const one: Fault = { code, field, got: printGiven(got), allowed, remedy: "Correct it and try again." };
  return new InputError([one]);
}
