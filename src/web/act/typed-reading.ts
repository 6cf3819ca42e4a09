import { isInputError, parseQuantity, type Dimension, type UnitSystem } from "#base";
import type { Check } from "#kit";
import type { TimerState, Value } from "#readiness";
import { sayDuration, type Words } from "#words";
import { matchRecord, sayReading, type Judgement } from "./reading.ts";

/** What stands in the boxes of a check, by box; `quantity` is `typed` with its unit. Kept until the answer is given. */
export type Typed = Readonly<Partial<Record<"typed" | "quantity" | "count" | "first" | "second" | "date", string>>>;

/** A check's reading so far. */
export type Reading =
  /** Judged by eye: nothing to enter. */
  | { readonly kind: "none" }
  /** Something is still to be read; `missing` says what. */
  | { readonly kind: "incomplete"; readonly missing: string }
  | { readonly kind: "read"; readonly value: Value; readonly judgement: Judgement };

interface Circumstances {
  readonly today: string;
  readonly units: UnitSystem;
  /** The clock of the step, where the check is timed. */
  readonly timer?: TimerState | undefined;
  /** What stands on record for a check that is held against it, where something does. */
  readonly recorded?: string | undefined;
  /** The day that a printed date must reach, where that is later than today. */
  readonly wanted?: string;
}

/** Puts what was typed together into a reading and holds it against the limits. */
export function assembleReading(
  check: Check | undefined,
  typed: Typed,
  around: Circumstances,
  words: Words["act"],
): Reading {
  if (!check || check.kind === "look" || check.kind === "prove") return { kind: "none" };
  const value = readValue(check, typed, around);
  const judgement = value && sayReading(check, value, around, { units: around.units, words });
  if (value && judgement) return { kind: "read", value, judgement };
  return { kind: "incomplete", missing: sayMissing(check, words) };
}

function readValue(check: Check, typed: Typed, { timer, recorded }: Circumstances): Value | undefined {
  if (check.kind === "measure") return readMeasure(typed.quantity, check.dimension as Dimension);
  if (check.kind === "timed") return readSeconds(timer?.seconds);
  if (check.kind === "count") return typed.count ? { kind: "count", count: Number(typed.count) } : undefined;
  if (check.kind === "match" && check.against) return matchRecord(typed.first ?? "", recorded);
  if (check.kind === "match") return readMatch(typed);
  return typed.date ? { kind: "date", date: typed.date } : undefined;
}

function readMeasure(text: string | undefined, dimension: Dimension): Value | undefined {
  if (!text) return undefined;
  try {
    return { kind: "quantity", si: parseQuantity(text, dimension), dimension, text };
  } catch (cause) {
    if (isInputError(cause)) return undefined;
    throw cause;
  }
}

function readSeconds(seconds: number | undefined): Value | undefined {
  if (seconds === undefined) return undefined;
  return { kind: "quantity", si: seconds, dimension: "time", text: sayDuration(seconds) };
}

function readMatch({ first = "", second = "" }: Typed): Value | undefined {
  if (first.trim() === "" || second.trim() === "") return undefined;
  return { kind: "match", first: first.trim(), second: second.trim() };
}

function sayMissing(check: Check, words: Words["act"]): string {
  if (check.kind === "count") return words.countThem({ things: check.of });
  if (check.kind === "match" && check.against) return words.readOne({ what: check.first });
  if (check.kind === "match") return words.readBoth(check);
  if (check.kind === "date") return words.readDate();
  return check.kind === "timed" ? words.timeIt() : words.measureIt();
}

/** Why "seen" cannot be taken: something is not read yet, or reads outside what is allowed. */
export function holdsBack(reading: Reading): string | undefined {
  if (reading.kind === "incomplete") return reading.missing;
  return reading.kind === "read" && !reading.judgement.right ? reading.judgement.words : undefined;
}

/** What a reading means is said beside it: not a second time as the reason why "seen" is not taken. */
export function isSaid(reading: Reading, words: string): boolean {
  return reading.kind === "read" && reading.judgement.words === words;
}
