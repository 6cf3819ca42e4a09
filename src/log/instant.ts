import { assert } from "#base";

const MS_PER_DAY = 86_400_000;
const NUL = 48;

/**
 * Reads an RFC 3339 date-time with offset into milliseconds since 1970-01-01T00:00:00Z.
 *
 * Digits beyond the millisecond are cut off, not rounded. A leap second (":60") is not read: no device clock shows
 * one. Written by hand because a board loads some 200,000 of these and `Date.parse` accepts days that do not exist.
 *
 * @param text - such as "2027-03-14T09:26:53.589+01:00"; capital T and Z
 * @returns milliseconds since the epoch [ms], or undefined where the text is no such instant
 * @range years 0000 to 9999, offsets up to 23:59 either way
 * @source IETF RFC 3339, Date and Time on the Internet, section 5.6, 2002
 * @example parseInstant("1970-01-01T01:00:00+01:00"); // 0
 */
export function parseInstant(text: string): number | undefined {
  const day = readDay(text);
  const clock = readClock(text);
  if (day === undefined || clock === undefined) return undefined;
  const fraction = readFraction(text);
  const offset = fraction === undefined ? undefined : readOffset(text, fraction.end);
  if (fraction === undefined || offset === undefined) return undefined;
  return day * MS_PER_DAY + clock + fraction.ms - offset;
}

/**
 * The instant of an entry that has been validated.
 *
 * @param at - RFC 3339 with offset, as in a valid entry
 * @returns milliseconds since the epoch [ms]
 * @throws Error when the text is no instant: a bug, since entries are judged at the door
 */
export function instantOf(at: string): number {
  const ms = parseInstant(at);
  assert(ms !== undefined, `"${at}" in an entry is no RFC 3339 instant`);
  return ms;
}

function readDay(text: string): number | undefined {
  const year = digits(text, 0, 4);
  const month = digits(text, 5, 2);
  const day = digits(text, 8, 2);
  const shaped = text[4] === "-" && text[7] === "-" && text[10] === "T";
  if (!shaped || year < 0 || month < 1 || month > 12 || day < 1 || day > daysIn(year, month)) return undefined;
  return daysFromEpoch(year, month, day);
}

function readClock(text: string): number | undefined {
  const hour = digits(text, 11, 2);
  const minute = digits(text, 14, 2);
  const second = digits(text, 17, 2);
  const shaped = text[13] === ":" && text[16] === ":";
  if (!shaped || hour < 0 || hour > 23 || minute < 0 || minute > 59 || second < 0 || second > 59) return undefined;
  return ((hour * 60 + minute) * 60 + second) * 1000;
}

/** Milliseconds of the fraction, and where the text goes on after it. At least one digit must follow the point. */
function readFraction(text: string): { ms: number; end: number } | undefined {
  if (text[19] !== ".") return { ms: 0, end: 19 };
  let end = 20;
  let ms = 0;
  for (let weight = 100; digit(text, end) >= 0; weight = Math.floor(weight / 10), end++)
    ms += digit(text, end) * weight;
  return end === 20 ? undefined : { ms, end };
}

function readOffset(text: string, from: number): number | undefined {
  const sign = text[from];
  if (sign === "Z") return text.length === from + 1 ? 0 : undefined;
  const hours = digits(text, from + 1, 2);
  const minutes = digits(text, from + 4, 2);
  const shaped = (sign === "+" || sign === "-") && text[from + 3] === ":" && text.length === from + 6;
  if (!shaped || hours < 0 || hours > 23 || minutes < 0 || minutes > 59) return undefined;
  const ms = (hours * 60 + minutes) * 60_000;
  return sign === "+" ? ms : -ms;
}

function digit(text: string, at: number): number {
  const value = text.charCodeAt(at) - NUL;
  return value >= 0 && value <= 9 ? value : -1;
}

/** The number that `count` digits spell, or -1 where one of them is no digit. */
function digits(text: string, from: number, count: number): number {
  let value = 0;
  for (let at = from; at < from + count; at++) {
    const next = digit(text, at);
    if (next < 0) return -1;
    value = value * 10 + next;
  }
  return value;
}

function daysIn(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

/** Days since 1970-01-01 in the Gregorian calendar; the year is counted from March so that the leap day comes last. */
function daysFromEpoch(year: number, month: number, day: number): number {
  const shifted = month > 2 ? year : year - 1;
  const era = Math.floor(shifted / 400);
  const yearOfEra = shifted - era * 400;
  const dayOfYear = Math.floor((153 * (month > 2 ? month - 3 : month + 9) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146_097 + dayOfEra - 719_468;
}
