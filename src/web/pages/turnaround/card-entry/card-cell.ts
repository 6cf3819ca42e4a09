import { isDate, isMonth, isQuantity, parseQuantity, type Dimension } from "#base";
import type { Check, StepTimer } from "#kit";
import { judgeReading, stepGate, type Answer, type Value } from "#readiness";
import { sayDuration, type Words } from "#words";
import { matchRecord } from "#web/act/reading.ts";

/** What a typed box means, or what to type instead. */
export type Cell<Meaning> =
  { readonly kind: "read"; readonly meaning: Meaning } | { readonly kind: "fault"; readonly fault: SayFault };

type CardWords = Words["turnaroundRecord"];

/** What is wrong with a box, and what to type instead. */
export type SayFault = (words: CardWords) => string;

/** An answer as typed up from a card. */
export interface CardAnswer {
  readonly answer: Answer;
  readonly why?: string;
  readonly value?: Value;
}

interface Circumstances {
  readonly today: string;
  /** The seal on record that a check against it is compared with, where there is one. */
  readonly recorded?: string | undefined;
  /** The day that a printed date must reach, where that is later than today. */
  readonly wanted?: string;
}

/**
 * Reads a box of the card: "s" seen, "w" found wrong, "n" and why not possible; where the check wants a reading, the
 * reading itself, which answers by its limits ("55 mm", "4", "07 / 07", "2027-03").
 *
 * @param check - the check of the line; undefined where the step itself is answered
 * @param text - as typed
 * @param around - today, and what the check is held against
 */
export function readCell(check: Check | undefined, text: string, around: Circumstances): Cell<CardAnswer> {
  const typed = text.trim();
  if (/^n\b/i.test(typed)) return readWhy(typed.slice(1).trim());
  if (/^w$/i.test(typed)) return read({ answer: "wrong" });
  if (!check || check.kind === "look" || check.kind === "prove") {
    return /^s$/i.test(typed) ? read({ answer: "seen" }) : fault((words) => words.typeLook());
  }
  if (isLookedAt(check) && /^s$/i.test(typed)) return read({ answer: "seen" });
  const value = readValue(check, typed, around.recorded);
  const judged = value && judgeReading(check, value, around);
  if (!value || !judged) return fault((words) => sayWanted(check, words));
  return read({ answer: judged.right ? "seen" : "wrong", value });
}

/** Measured when new and looked at afterwards; the station refuses a look where nothing was measured yet. */
function isLookedAt(check: Check): boolean {
  return check.kind === "measure" && check.once === true;
}

function readWhy(why: string): Cell<CardAnswer> {
  return why === "" ? fault((words) => words.typeWhy()) : read({ answer: "not-possible", why });
}

function readValue(check: Check, typed: string, recorded: string | undefined): Value | undefined {
  if (check.kind === "measure") return readQuantity(typed, check.dimension as Dimension, check.unit);
  if (check.kind === "timed") return readQuantity(typed, "time", "s");
  if (check.kind === "count") return /^\d{1,4}$/.test(typed) ? { kind: "count", count: Number(typed) } : undefined;
  if (check.kind === "date") return isDate(typed) || isMonth(typed) ? { kind: "date", date: typed } : undefined;
  if (check.kind === "match" && check.against) return matchRecord(typed, recorded);
  const [first = "", second = ""] = typed.split(betweenSides(check)).map((side) => side.trim());
  return first !== "" && second !== "" ? { kind: "match", first, second } : undefined;
}

/** A quarter is written with a stroke of its own: there the one between the two sides has blanks. */
function betweenSides(check: Check): string | RegExp {
  return check.kind === "match" && check.reads !== undefined ? /\s\/\s/ : "/";
}

function readQuantity(typed: string, dimension: Dimension, unit: string): Value | undefined {
  const text = isQuantity(typed, dimension) ? typed : `${typed} ${unit}`;
  return isQuantity(text, dimension)
    ? { kind: "quantity", si: parseQuantity(text, dimension), dimension, text }
    : undefined;
}

function sayWanted(check: Check, words: CardWords): string {
  if (check.kind === "measure") return words.typeReading({ unit: check.unit });
  if (check.kind === "timed") return words.typeTime();
  if (check.kind === "count") return words.typeCount({ things: check.of });
  if (check.kind === "match" && check.against) return words.typeAsRead({ what: check.first });
  if (check.kind === "match" && check.reads) return words.typeQuarters();
  return check.kind === "date" ? words.typeDate() : words.typeBoth();
}

/** A clock's box: how long a wait, run or prime took, or how many pulls to the start. */
export type CardClock =
  { readonly kind: "time"; readonly seconds: number } | { readonly kind: "pulls"; readonly pulls: number };

/** Reads the box of a clock: "2 min 5 s", "45 s", "130", or a number of pulls. */
export function readClockCell(timer: StepTimer, text: string): Cell<CardClock> {
  if (timer.kind === "pulls") {
    return /^\d{1,2}$/.test(text.trim())
      ? read({ kind: "pulls", pulls: Number(text) })
      : fault((words) => words.typePulls());
  }
  const seconds = readSeconds(text);
  if (seconds === undefined) return fault((words) => words.typeHowLong());
  const isOver = stepGate({ timer }, { seconds, mark: NOT_WRITTEN }).open;
  if (!isOver && timer.kind !== "prime") return fault((words) => words.atLeast({ time: sayDuration(timer.atLeast) }));
  return read({ kind: "time", seconds });
}

/** What the card says of a clock is not in the log yet. */
const NOT_WRITTEN = { entry: "", at: "", by: "", device: "" } as const;

function readSeconds(text: string): number | undefined {
  const parts = /^\s*(?:(\d+)\s*min)?\s*(?:(\d+)\s*s?)?\s*$/i.exec(text);
  if (!parts || (parts[1] === undefined && parts[2] === undefined)) return undefined;
  return Number(parts[1] ?? 0) * 60 + Number(parts[2] ?? 0);
}

/** Reads the box of a thing fitted: "s" where it has no date, else the date printed on it. */
export function readFittingCell(needsDate: boolean, text: string): Cell<{ readonly printed?: string }> {
  const typed = text.trim();
  if (isDate(typed) || isMonth(typed)) return read({ printed: typed });
  if (!needsDate && /^s$/i.test(typed)) return read({});
  return fault((words) => (needsDate ? words.typePrinted() : words.typeFitted()));
}

/** What a box may hold, beside the box. */
export function sayBox(check: Check | undefined, words: CardWords): string {
  if (!check || check.kind === "look" || check.kind === "prove") return words.hintLook();
  if (check.kind === "match" && check.against) return words.hintAsRead();
  const hints = {
    measure: words.hintReading,
    timed: words.hintTimed,
    count: words.hintCount,
    match: words.hintMatch,
    date: words.hintDate,
  };
  return hints[check.kind]();
}

function read<Meaning>(meaning: Meaning): Cell<Meaning> {
  return { kind: "read", meaning };
}

function fault<Meaning>(say: SayFault): Cell<Meaning> {
  return { kind: "fault", fault: say };
}
