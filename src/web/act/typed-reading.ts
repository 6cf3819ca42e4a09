import { isInputError, parseQuantity, type Dimension, type UnitSystem } from "#base";
import type { Check } from "#kit";
import type { TimerState, Value } from "#readiness";
import { sayDuration } from "#words";
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
export function assembleReading(check: Check | undefined, typed: Typed, around: Circumstances): Reading {
  if (!check || check.kind === "look" || check.kind === "prove") return { kind: "none" };
  const value = readValue(check, typed, around);
  const judgement = value && sayReading(check, value, around, around.units);
  return value && judgement ? { kind: "read", value, judgement } : { kind: "incomplete", missing: sayMissing(check) };
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

function sayMissing(check: Check): string {
  if (check.kind === "count") return `Count the ${check.of} and enter how many.`;
  if (check.kind === "match" && check.against) return `Read and enter: ${check.first}.`;
  if (check.kind === "match") return `Read and enter both: ${check.first}, and ${check.second}.`;
  if (check.kind === "date")
    return "Read and enter the date printed on it: the month from 1 to 12, the year in four figures.";
  return check.kind === "timed" ? "Time it first." : "Measure it and enter the reading.";
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
