import { isDate, isMonth, parseDate, type Dimension, type UnitSystem } from "#base";
import type { Check } from "#kit";
import { judgeReading, saysItsCount, type Against, type Judged, type Turnaround, type Value } from "#readiness";
import { sayAsRead, sayDuration, sayLimit, type Words } from "#words";
import { sayDate } from "../parts/words/say-time.ts";
import type { Answered } from "./lines.ts";

/** A reading held against what the check allows, with why in one sentence a person can say aloud. */
export interface Judgement {
  readonly right: boolean;
  readonly words: string;
}

/** How a person reads quantities, and in which language. */
export interface Reader {
  readonly units: UnitSystem;
  readonly words: Words["act"];
}

/**
 * Holds a reading against its check and says how it stands.
 *
 * @param check - a check of kind measure, timed, count, match or date
 * @param value - the reading, quantities in SI
 * @param against - "YYYY-MM-DD" today, the day that a printed date must reach, and the seal on record
 * @param reader - how the person reads quantities, and the words for them
 */
export function sayReading(check: Check, value: Value, against: Against, reader: Reader): Judgement | undefined {
  const judged = judgeReading(check, value, against);
  return judged && { right: judged.right, words: sayJudged(check, judged, reader) };
}

function sayJudged<Why extends Judged["because"]>(check: Check, judged: Because<Why>, reader: Reader): string {
  return SAYINGS[judged.because as Why](judged, check, reader);
}

type Because<Why extends Judged["because"]> = Extract<Judged, { readonly because: Why }>;

const SAYINGS: {
  readonly [Why in Judged["because"]]: (judged: Because<Why>, check: Check, reader: Reader) => string;
} = {
  "no-limit": (_, __, { words }) => words.noLimit(),
  within: (_, __, { words }) => words.within(),
  counted: (_, check, { words }) => words.counted({ wanted: sayWanted(check) }),
  agrees: (_, __, { words }) => words.agrees(),
  "none-on-record": (_, __, { words }) => words.noneOnRecord(),
  "in-date": ({ lastDay, beyond }, _, { words }) => {
    const day = sayDate(lastDay);
    return beyond === undefined ? words.inDate({ day }) : words.inDateBeyond({ day, next: sayDate(beyond) });
  },
  "too-low": ({ limit }, check, { units, words }) => words.tooLow({ limit: writeLimit(check, limit, units) }),
  "too-high": ({ limit }, check, { units, words }) => words.tooHigh({ limit: writeLimit(check, limit, units) }),
  missing: ({ by }, check, { words }) => words.missing({ by, wanted: sayWanted(check) }),
  "too-many": ({ by }, check, { words }) => words.tooMany({ by, wanted: sayWanted(check) }),
  differs: (_, check, { words }) => (check.kind === "match" ? words.differsNamed(check) : words.differs()),
  passed: ({ lastDay }, _, { words }) => words.passed({ day: sayDate(lastDay) }),
  "too-soon": ({ lastDay, wanted }, _, { words }) => words.tooSoon({ day: sayDate(lastDay), due: sayDate(wanted) }),
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
export function sayLimits(check: Check, { units, words }: Reader): string | undefined {
  if (check.kind === "count") return saysItsCount(check) ? undefined : sayWanted(check);
  if (check.kind !== "measure" && check.kind !== "timed") return undefined;
  const write = (si: number) => writeLimit(check, si, units);
  const { atLeast, atMost } = check;
  if (atLeast !== undefined && atMost !== undefined) {
    return words.between({ least: write(atLeast), most: write(atMost) });
  }
  if (atLeast !== undefined) return words.atLeast({ least: write(atLeast) });
  return atMost === undefined ? undefined : words.atMost({ most: write(atMost) });
}

function writeLimit(check: Check, si: number, units: UnitSystem): string {
  if (check.kind === "timed") return sayDuration(si);
  if (check.kind !== "measure") return String(si);
  return sayLimit(si, check.dimension as Dimension, { unit: check.unit, units });
}

/** A reading as it is shown beside an answer; of what was read before, in the reader's own unit too. */
export function writeValue(value: Value, words: Words["parts"], units?: UnitSystem): string {
  if (value.kind === "quantity") return units === undefined ? value.text : sayQuantity(value, units);
  if (value.kind === "count") return String(value.count);
  if (value.kind === "match") return `${value.first} / ${value.second}`;
  return value.kind === "date" ? writePrinted(value.date, words) : value.text;
}

function sayQuantity({ dimension, ...read }: Value & { readonly kind: "quantity" }, units: UnitSystem): string {
  return sayAsRead({ ...read, dimension: dimension as Dimension }, units);
}

/** A printed date in words; a month keeps saying that it is one. */
export function writePrinted(date: string, words: Words["parts"]): string {
  if (isDate(date)) return sayDate(date);
  return isMonth(date) ? words.monthTo({ month: date, day: sayDate(parseDate(date)) }) : date;
}

/** The answer to the same ask in the newest closed turnaround that read a value there. */
export function lastTime(closed: readonly Turnaround[], key: string): Answered | undefined {
  const answers = closed.map((turnaround) => turnaround.answers[key]);
  return answers.findLast((answered) => answered?.value !== undefined);
}
