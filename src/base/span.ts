import { addDays, addMonths, dateFault, type PlainDate } from "./calendar.ts";

/** Calendar time: months count from the anchor date and clamp to the month's end, days are days. */
export type Span = { readonly months: number } | { readonly days: number };

const SPAN_TEXT = /^([+-]?\d{1,5})\s*(day|week|month|year)s?$/i;
const SPAN_ISO = /^([+-]?)P(?:(\d{1,4})Y)?(?:(\d{1,5})M)?(?:(\d{1,4})W)?(?:(\d{1,5})D)?$/;

// Mean Gregorian month: 146 097 days in 4 800 months.
const MEAN_MONTH_DAYS = 146_097 / 4_800;

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

/**
 * What keeps a text from being a span that something takes or keeps for.
 *
 * @param text - as `parseSpan` reads it
 * @returns `none` for what is no span, or not longer than nothing; `too-long` beyond a hundred years: no later day has a name
 * @example lastingSpanFault("-2 days") // "none"
 */
export function lastingSpanFault(text: string): "none" | "too-long" | undefined {
  const read = readWordedSpan(text.trim()) ?? readIsoSpan(text.trim());
  const [long, most] = read && "days" in read ? [read.days, 36_525] : [read?.months ?? 0, 1200];
  if (long <= 0) return "none";
  return long > most ? "too-long" : undefined;
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

function count(number: number, unit: string): string {
  return `${number} ${unit}${Math.abs(number) === 1 ? "" : "s"}`;
}
