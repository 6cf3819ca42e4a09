import { formatDate, isDate, isMonth, parseDate, type Dimension, type UnitSystem } from "#base";
import type { Check } from "#kit";
import { judgeReading, saysItsCount, type Against, type Judged, type Turnaround, type Value } from "#readiness";
import { sayAsRead, sayDuration, sayLimit } from "#words";
import type { Answered } from "./lines.ts";

/** A reading held against what the check allows, with why in one sentence a person can say aloud. */
export interface Judgement {
  readonly right: boolean;
  readonly words: string;
}

/**
 * Holds a reading against its check and says how it stands.
 *
 * @param check - a check of kind measure, timed, count, match or date
 * @param value - the reading, quantities in SI
 * @param against - "YYYY-MM-DD" today, the day that a printed date must reach, and the seal on record
 * @param units - how the person reads quantities
 */
export function sayReading(check: Check, value: Value, against: Against, units: UnitSystem): Judgement | undefined {
  const judged = judgeReading(check, value, against);
  return judged && { right: judged.right, words: sayJudged(check, judged, units) };
}

function sayJudged<Why extends Judged["because"]>(check: Check, judged: Because<Why>, units: UnitSystem): string {
  return WORDS[judged.because as Why](judged, check, units);
}

type Because<Why extends Judged["because"]> = Extract<Judged, { readonly because: Why }>;

const WORDS: {
  readonly [Why in Judged["because"]]: (judged: Because<Why>, check: Check, units: UnitSystem) => string;
} = {
  "no-limit": () => "No limit is set.",
  within: () => "Within limits.",
  counted: (_, check) => `All ${sayWanted(check)} counted.`,
  agrees: () => "The two agree.",
  "none-on-record": () => "None stands on record to compare with: what was read is kept.",
  "in-date": ({ lastDay, beyond }) =>
    beyond === undefined
      ? `In date through ${formatDate(lastDay)}.`
      : `In date through ${formatDate(lastDay)}, beyond the next turnaround (${formatDate(beyond)}).`,
  "too-low": ({ limit }, check, units) => `Too low: at least ${writeLimit(check, limit, units)}.`,
  "too-high": ({ limit }, check, units) => `Too high: at most ${writeLimit(check, limit, units)}.`,
  missing: ({ by }, check) => `${by} missing: ${sayWanted(check)} belong there.`,
  "too-many": ({ by }, check) => `${by} too many: ${sayWanted(check)} belong there.`,
  differs: (_, check) => (check.kind === "match" ? `They differ: ${check.first} and ${check.second}.` : "They differ."),
  passed: ({ lastDay }) => `Passed: its last day was ${formatDate(lastDay)}.`,
  "too-soon": ({ lastDay, wanted }) =>
    `Too soon: it ends on ${formatDate(lastDay)}, and the next turnaround is due by ${formatDate(wanted)}.`,
};

function sayWanted(check: Check): string {
  return check.kind === "count" ? `${check.exactly} ${check.of}` : "";
}

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

/** The limits of a check in words, or nothing where it has none. */
export function sayLimits(check: Check, units: UnitSystem): string | undefined {
  if (check.kind === "count") return saysItsCount(check) ? undefined : sayWanted(check);
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
  return sayLimit(si, check.dimension as Dimension, { unit: check.unit, units });
}

/** A reading as it is shown beside an answer; of what was read before, in the reader's own unit too. */
export function writeValue(value: Value, units?: UnitSystem): string {
  if (value.kind === "quantity") return units === undefined ? value.text : sayQuantity(value, units);
  if (value.kind === "count") return String(value.count);
  if (value.kind === "match") return `${value.first} / ${value.second}`;
  return value.kind === "date" ? writePrinted(value.date) : value.text;
}

function sayQuantity({ dimension, ...read }: Value & { readonly kind: "quantity" }, units: UnitSystem): string {
  return sayAsRead({ ...read, dimension: dimension as Dimension }, units);
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
