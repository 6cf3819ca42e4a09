import { formatDate, formatQuantity, isDate, isMonth, parseDate, type Dimension, type UnitSystem } from "#base";
import type { Check } from "#kit";
import { isSameSeal, type Turnaround, type Value } from "#readiness";
import { sayDuration } from "../../timing/index.ts";
import type { Answered } from "./lines.ts";

/** A reading held against what the check allows. */
export interface Judgement {
  readonly right: boolean;
  /** Why, in one sentence a person can say aloud. */
  readonly words: string;
}

/**
 * Holds a reading against the limits of its check; looks and proofs have no reading and are judged by eye.
 *
 * @param check - a check of kind measure, timed, count, match or date
 * @param value - the reading, quantities in SI
 * @param today - "YYYY-MM-DD"; a printed date before it has passed
 * @param units - how the person reads quantities
 */
export function judgeReading(check: Check, value: Value, today: string, units: UnitSystem): Judgement | undefined {
  if ((check.kind === "measure" || check.kind === "timed") && value.kind === "quantity") {
    return judgeLimits(value.si, check, (si) => writeLimit(check, si, units));
  }
  if (check.kind === "count" && value.kind === "count") return judgeCount(check, value.count);
  if (check.kind === "match") return judgeMatch(check, value);
  if (check.kind === "date" && value.kind === "date") return judgeDate(value.date, today);
  return undefined;
}

interface Limits {
  readonly atLeast?: number;
  readonly atMost?: number;
}

function judgeLimits(si: number, { atLeast, atMost }: Limits, write: (si: number) => string): Judgement {
  if (atLeast !== undefined && si < atLeast)
    return { right: false, words: `Below the least allowed, ${write(atLeast)}.` };
  if (atMost !== undefined && si > atMost) return { right: false, words: `Above the most allowed, ${write(atMost)}.` };
  return { right: true, words: atLeast === undefined && atMost === undefined ? "No limit is set." : "Within limits." };
}

function judgeCount(check: Check & { readonly kind: "count" }, count: number): Judgement {
  if (count === check.exactly) return { right: true, words: `All ${check.exactly} ${check.of} counted.` };
  const [number, word] = [Math.abs(count - check.exactly), count < check.exactly ? "missing" : "too many"];
  return { right: false, words: `${number} ${word}: ${check.exactly} ${check.of} belong there.` };
}

type MatchCheck = Check & { readonly kind: "match" };

/**
 * Puts what was read together with what stands on record, for a check whose second side the program knows.
 *
 * @param read - as typed
 * @param recorded - the number on record; undefined where none stands there, and the reading is only kept
 */
export function matchRecord(read: string, recorded: string | undefined): Value | undefined {
  const first = read.trim();
  if (first === "") return undefined;
  return recorded === undefined ? { kind: "text", text: first } : { kind: "match", first, second: recorded };
}

function judgeMatch(check: MatchCheck, value: Value): Judgement | undefined {
  if (check.against !== undefined && value.kind === "text") {
    return { right: true, words: "None stands on record to compare with: what was read is kept." };
  }
  if (value.kind !== "match") return undefined;
  const right =
    check.against === undefined ? value.first.trim() === value.second.trim() : isSameSeal(value.first, value.second);
  return { right, words: right ? "The two agree." : `They differ: ${check.first} and ${check.second}.` };
}

function judgeDate(date: string, today: string): Judgement {
  const last = parseDate(date);
  return last < today
    ? { right: false, words: `Passed: its last day was ${formatDate(last)}.` }
    : { right: true, words: `In date through ${formatDate(last)}.` };
}

/** The limits of a check in words, or nothing where it has none. */
export function sayLimits(check: Check, units: UnitSystem): string | undefined {
  if (check.kind === "count") return `${check.exactly} ${check.of}`;
  if (check.kind !== "measure" && check.kind !== "timed") return undefined;
  const write = (si: number) => writeLimit(check, si, units);
  const { atLeast, atMost } = check;
  if (atLeast !== undefined && atMost !== undefined) return `${write(atLeast)} to ${write(atMost)}`;
  if (atLeast !== undefined) return `at least ${write(atLeast)}`;
  return atMost === undefined ? undefined : `at most ${write(atMost)}`;
}

function writeLimit(check: Check, si: number, units: UnitSystem): string {
  if (check.kind === "timed") return sayDuration(si);
  if (check.kind !== "measure") return String(si);
  const inWritten = formatQuantity(si, check.dimension as Dimension, { unit: check.unit });
  const inOwn = formatQuantity(si, check.dimension as Dimension, { system: units });
  return inWritten === inOwn ? inWritten : `${inWritten} (${inOwn})`;
}

/** A reading as it is shown beside an answer. */
export function writeValue(value: Value): string {
  if (value.kind === "quantity") return value.text;
  if (value.kind === "count") return String(value.count);
  if (value.kind === "match") return `${value.first} / ${value.second}`;
  return value.kind === "date" ? writePrinted(value.date) : value.text;
}

/** A printed date in words; a month keeps saying that it is one. */
export function writePrinted(date: string): string {
  if (isDate(date)) return formatDate(date);
  return isMonth(date) ? `${date} (to ${formatDate(parseDate(date))})` : date;
}

/** The answer to the same ask in the newest closed turnaround that read a value there. */
export function lastTime(closed: readonly Turnaround[], key: string): Answered | undefined {
  const answers = closed.map((turnaround) => turnaround.answers[key]);
  return answers.findLast((answered) => answered?.value !== undefined);
}
