import { tagOf, type Speech, type Words } from "#words";
import { preferences } from "#web/theme/index.ts";

const SHAPES = {
  month: { year: "numeric", month: "short", timeZone: "UTC" },
  wholeMonth: { year: "numeric", month: "long", timeZone: "UTC" },
  day: { year: "numeric", month: "short", day: "numeric", timeZone: "UTC" },
  date: { year: "numeric", month: "long", day: "numeric", timeZone: "UTC" },
  dayHere: { year: "numeric", month: "short", day: "numeric" },
  timeHere: { hour: "2-digit", minute: "2-digit" },
} as const;

const made = new Map<string, Intl.DateTimeFormat>();

/** Made once: making one takes many times as long as using it, and a sheet says a hundred times at every tap. */
function form(shape: keyof typeof SHAPES, language: Speech = preferences.now().language): Intl.DateTimeFormat {
  const key = `${language} ${shape}`;
  const form = made.get(key) ?? new Intl.DateTimeFormat(tagOf(language), SHAPES[shape]);
  made.set(key, form);
  return form;
}

/** "14 Mar 2027", or "Mar 2027" for a month. An instant gives its day on the reader's clock. */
export function sayDay(at: string): string {
  const isMonth = /^\d{4}-\d{2}$/.test(at);
  const isDay = /^\d{4}-\d{2}-\d{2}$/.test(at);
  return form(isMonth ? "month" : isDay ? "day" : "dayHere").format(new Date(at));
}

/** "14 March 2027", of a day without a clock, or "March 2027" for a month. */
export function sayDate(day: string): string {
  return form(/^\d{4}-\d{2}$/.test(day) ? "wholeMonth" : "date").format(new Date(day));
}

/** "14:02" on the reader's clock. */
export function sayTime(at: string | number): string {
  return form("timeHere").format(new Date(at));
}

/** "14 Mar 2027, 14:02" on the reader's clock. */
export function sayInstant(at: string): string {
  return `${sayDay(at)}, ${sayTime(at)}`;
}

/**
 * "08:00 today", "08:00 tomorrow", "08:00 on 16 Mar 2027" on the reader's clock.
 *
 * @param until - [ms since 1970-01-01 UTC]
 * * @param now - the same, no later
 * @param words - of a kit in a line
 */
export function sayUntil(until: number, now: number, words: Words["kitLine"]): string {
  const time = sayTime(until);
  const day = sayDay(new Date(until).toISOString());
  if (day === sayDay(new Date(now).toISOString())) return words.timeToday({ time });
  const tomorrow = new Date(now);
  tomorrow.setDate(tomorrow.getDate() + 1);
  return day === sayDay(tomorrow.toISOString()) ? words.timeTomorrow({ time }) : words.timeOn({ time, day });
}
