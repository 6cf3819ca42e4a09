import { daysInMonth } from "#base";

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

/** Reads the boxes into "YYYY-MM-DD" or, without a day, "YYYY-MM"; incomplete while the year is being typed. */
export function readPrintedDate({ day, month, year }: DateParts, mayBeMonth: boolean): PrintedDate {
  if (month.trim() === "" || !/^\d{4}$/.test(year.trim())) return { kind: "incomplete" };
  if (day.trim() === "" && !mayBeMonth) return { kind: "incomplete" };
  const [y, m] = [Number(year), Number(month)];
  if (!Number.isInteger(m) || m < 1 || m > 12) return { kind: "fault", fault: "The month is a number from 1 to 12." };
  if (y < 1990 || y > 2100) return { kind: "fault", fault: "The year is one from 1990 to 2100." };
  const monthText = `${year.trim()}-${String(m).padStart(2, "0")}`;
  return day.trim() === "" ? { kind: "date", date: monthText } : withDay(monthText, Number(day), daysInMonth(y, m));
}

function withDay(month: string, day: number, last: number): PrintedDate {
  if (!Number.isInteger(day) || day < 1 || day > last)
    return { kind: "fault", fault: `That month has days 1 to ${last}.` };
  return { kind: "date", date: `${month}-${String(day).padStart(2, "0")}` };
}

/** "14 March 2027", or "March 2027, to its last day" for a month. */
export function sayDate(date: string): string {
  const [year, month, day] = date.split("-").map(Number) as [number, number, number?];
  const at = new Date(Date.UTC(year, month - 1, day ?? 1));
  const format = new Intl.DateTimeFormat("en-GB", {
    timeZone: "UTC",
    year: "numeric",
    month: "long",
    ...(day !== undefined && { day: "numeric" as const }),
  });
  return day === undefined ? `${format.format(at)}, to its last day` : format.format(at);
}
