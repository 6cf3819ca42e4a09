import { formatNumber, sayCount } from "#base";

/**
 * How a length of time is said. Every style has a use of its own:
 *
 * - `exact`: measured, to the second: "2 min 5 s"
 * - `face`: a running clock, full seconds: "2:05", "1:02:05"
 * - `minutes`: how long something took, to the nearest minute: "95 min", "2 h 5 min"
 * - `elapsed`: an age or what a tank lasts, full minutes and never more than it is: "2 h 5 min"
 * - `needed`: work or time asked for, full minutes and never less than it is: "2 h 5 min"
 * - `estimate`: no finer than a forecast is known: whole minutes to ten, then fives, from two hours on tens
 * - `wait`: until something may be tried again, rounded up: "45 s", "15 min", "12 h"
 * - `apart`: how far two instants lie apart, never more than it is: "3 h 10 min", from two days on in days
 * - `clocks`: how far two clocks differ, to the nearest minute, since it is measured no better than to half a second:
 *   "3 h", from two days on in days
 * - `long`: a life or an age on the calendar: "50 days", "8 months", "2.5 years"
 * - `figures`: a computed length of days, to three figures: "12.2 days", "3.28 years"; under two days "14 h 5 min"
 */
export type DurationStyle =
  "exact" | "face" | "minutes" | "elapsed" | "needed" | "estimate" | "wait" | "apart" | "clocks" | "long" | "figures";

const MINUTE = 60;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;
/** The Julian year; a month is its twelfth. */
const YEAR = 365.25 * DAY;
const MONTH = YEAR / 12;
/** Between a figure and its unit, so that no line breaks there. */
const JOIN = "\u00a0";

/**
 * A length of time in words: the one place that says how.
 *
 * @param seconds - [s]; a negative one counts as none
 * @param style - what it is said for
 * @source DERIVED
 * @example sayDuration(125) // "2 min 5 s"
 */
export function sayDuration(seconds: number, style: DurationStyle = "exact"): string {
  return STYLES[style](Math.max(0, seconds));
}

const STYLES: Readonly<Record<DurationStyle, (seconds: number) => string>> = {
  exact: sayExact,
  face: sayFace,
  minutes: (seconds) => sayMinutes(Math.round(seconds / MINUTE)),
  elapsed: (seconds) => sayMinutes(Math.floor(seconds / MINUTE)),
  // An hour worked out from tenths of minutes may lie a rounding above it.
  needed: (seconds) => sayMinutes(Math.ceil(seconds / MINUTE - 1e-9)),
  estimate: (seconds) => sayMinutes(coarse(seconds / MINUTE)),
  wait: sayWait,
  apart: sayApart,
  clocks: (seconds) => sayApart(Math.round(seconds / MINUTE) * MINUTE),
  long: sayLong,
  figures: sayFigures,
};

function sayExact(seconds: number): string {
  const whole = Math.round(seconds);
  const parts = [
    [Math.floor(whole / HOUR), "h"],
    [Math.floor((whole % HOUR) / MINUTE), "min"],
    [whole % MINUTE, "s"],
  ] as const;
  const shown = parts.filter(([count]) => count > 0).map(([count, unit]) => figure(count, unit));
  return shown.length === 0 ? figure(0, "s") : shown.join(" ");
}

function sayFace(seconds: number): string {
  const whole = Math.floor(seconds);
  const [h, m, s] = [Math.floor(whole / HOUR), Math.floor(whole / MINUTE) % 60, whole % MINUTE];
  return h > 0 ? `${h}:${twoFigures(m)}:${twoFigures(s)}` : `${m}:${twoFigures(s)}`;
}

/** Under two hours in minutes, as people count them; from there on hours with what is over. */
function sayMinutes(minutes: number): string {
  if (minutes < 120) return figure(minutes, "min");
  const rest = minutes % 60;
  const hours = figure(Math.floor(minutes / 60), "h");
  return rest === 0 ? hours : `${hours} ${figure(rest, "min")}`;
}

function coarse(minutes: number): number {
  const step = minutes < 10 ? 1 : minutes < 120 ? 5 : 10;
  return Math.max(1, Math.round(minutes / step) * step);
}

function sayWait(seconds: number): string {
  if (seconds < 100) return figure(Math.ceil(seconds), "s");
  return seconds < 2 * HOUR ? figure(Math.ceil(seconds / MINUTE), "min") : figure(Math.ceil(seconds / HOUR), "h");
}

function sayApart(seconds: number): string {
  return seconds < 2 * DAY ? STYLES.elapsed(seconds) : sayCount(Math.floor(seconds / DAY), "day");
}

function sayLong(seconds: number): string {
  const days = Math.round(seconds / DAY);
  if (days < 60) return sayCount(days, "day");
  return days < 730 ? sayCount(Math.round(seconds / MONTH), "month") : `${(seconds / YEAR).toFixed(1)} years`;
}

function sayFigures(seconds: number): string {
  if (seconds < 2 * DAY) return STYLES.minutes(seconds);
  return seconds < 2 * YEAR ? threeFigures(seconds / DAY, "days") : threeFigures(seconds / YEAR, "years");
}

function threeFigures(value: number, unit: string): string {
  return `${Number.isInteger(value) ? value : formatNumber(value, 3)}${JOIN}${unit}`;
}

function figure(count: number, unit: string): string {
  return `${count}${JOIN}${unit}`;
}

function twoFigures(part: number): string {
  return String(part).padStart(2, "0");
}
