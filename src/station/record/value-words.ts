import { formatDate, isMonth, lastDayOf } from "#base";
import type { Value } from "#readiness";

/** A reading in words, as it was entered. */
export function valueWords(value: Value): string {
  switch (value.kind) {
    case "quantity":
      return value.text;
    case "count":
      return String(value.count);
    case "match":
      return `${value.first} / ${value.second}`;
    case "date":
      return dateWords(value.date);
    case "text":
      return value.text;
  }
}

/** A printed month means its last day. */
export function dateWords(date: string): string {
  return formatDate(isMonth(date) ? lastDayOf(date) : date);
}

/** A wall-clock instant as it was written on the device: day and minute. */
export function instantWords(at: string): string {
  return `${at.slice(0, 10)} ${at.slice(11, 16)}`;
}

/** Seconds as minutes and seconds. */
export function secondsWords(seconds: number): string {
  const whole = Math.round(seconds);
  return whole < 120 ? `${whole} s` : `${Math.floor(whole / 60)} min ${whole % 60} s`;
}
