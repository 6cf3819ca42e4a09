import { formatDate, formatMonth, isMonth } from "#base";
import type { Value } from "#readiness";

/** A reading in words, as it was entered. */
export function valueWords(value: Value): string {
  switch (value.kind) {
    case "quantity":
      return value.text;
    case "count":
      return String(value.count);
    case "match":
      return value.first === value.second ? value.first : `${value.first} / ${value.second}`;
    case "date":
      return dateWords(value.date);
    case "text":
      return value.text;
  }
}

/** A date as it was read: a month stays a month. */
export function dateWords(date: string): string {
  return isMonth(date) ? formatMonth(date) : formatDate(date);
}

/** A wall-clock instant as it was written on the device: day and minute. */
export function instantWords(at: string): string {
  return `${at.slice(0, 10)} ${at.slice(11, 16)}`;
}
