import { addSpan, dayWritten, earlierDate, isDate, isMonth, parseDate, type PlainDate, type Span } from "#base";
import type { Item, Pattern } from "#kit";
import type { FittedItem, KitState, Turnaround } from "./state.ts";

/** What the log says of an item's dates. */
export interface Dates {
  /** Day fitted, if it is on record. */
  readonly fitted?: PlainDate;
  /** Last day printed on it, as last fitted or read off it. */
  readonly printed?: PlainDate;
}

/** The dates of an item: those it was fitted with, and any printed date read off it since. */
export function datesOf(kit: KitState, item: Item, pattern: Pattern): Dates {
  const fitted = kit.contents[item.id];
  const read = lastDateRead(kit, item, pattern);
  const isNewer = read && (!fitted || Date.parse(read.at) > Date.parse(fitted.mark.at));
  const printed = readDay(isNewer ? read.date : fitted?.printed);
  const day = readDay(fitted?.fitted);
  return { ...(day === undefined ? {} : { fitted: day }), ...(printed === undefined ? {} : { printed }) };
}

/**
 * Last day on which an item is good: its printed date, or its life counted from the day it was fitted. Fuel is also
 * held to the station's own age.
 *
 * @returns the day, "never" for an item without a life, or "unknown" where the log has no date to go by
 */
export function lastGoodDay(item: Item, { fitted, printed }: Dates, fuelAge?: Span): PlainDate | "never" | "unknown" {
  const { life } = item;
  const aged = fuelAge && fitted !== undefined ? addSpan(fitted, fuelAge) : undefined;
  if (life.kind === "printed") return printed === undefined ? "unknown" : (earlierDate(printed, aged) ?? "unknown");
  if (life.kind === "fitted") {
    return fitted === undefined
      ? "unknown"
      : (earlierDate(addSpan(fitted, life.span), earlierDate(printed, aged)) ?? "unknown");
  }
  return aged ?? "never";
}

/** The fuel of the kit's engine, if it has one that is an item of the pattern. */
export function fuelItemOf(pattern: Pattern): Item | undefined {
  return pattern.items.find((item) => item.id === pattern.engine?.fuelItem);
}

/**
 * Day of the last proof run: the last turnaround in which every timed run the pattern demands went its full time, or,
 * in a pattern without timed runs, every line of its run stage was seen right.
 */
export function lastProofRun(kit: KitState, patternOf: (turnaround: Turnaround) => Pattern): PlainDate | undefined {
  for (const turnaround of turnaroundsNewestFirst(kit)) {
    const day = proofRunDay(turnaround, patternOf(turnaround));
    if (day !== undefined) return day;
  }
  return undefined;
}

/** The turnarounds of a kit, the open one first, then the closed from the newest. */
export function turnaroundsNewestFirst(kit: KitState): readonly Turnaround[] {
  const open = kit.turnaround ? [kit.turnaround] : [];
  return [...open, ...kit.turnarounds.toReversed()];
}

/** The last turnaround that was closed with a seal or as grounded. */
export function lastClosed(kit: KitState): Turnaround | undefined {
  return kit.turnarounds.findLast((turnaround) => turnaround.closed?.how !== "set-aside");
}

function proofRunDay(turnaround: Turnaround, pattern: Pattern): PlainDate | undefined {
  const running = pattern.stages.filter((stage) => stage.id === "run").flatMap((stage) => stage.steps);
  const timed = running.filter((step) => step.timer?.kind === "run" && !step.optional);
  const marks =
    timed.length > 0
      ? timed.map((step) => (turnaround.timers[step.id]?.reached ? turnaround.timers[step.id]?.mark : undefined))
      : running
          .filter((step) => !step.optional)
          .flatMap((step) => lineKeys(step).map((key) => seenMark(turnaround, key)));
  if (marks.length === 0 || marks.some((mark) => mark === undefined)) return undefined;
  return marks.map((mark) => dayWritten(mark?.at ?? "")).reduce((last, day) => (day > last ? day : last));
}

function seenMark(turnaround: Turnaround, key: string): FittedItem["mark"] | undefined {
  const answer = turnaround.answers[key];
  return answer?.answer === "seen" ? answer.mark : undefined;
}

/** Keys under which a step's answers are kept: one for each check, or the step's own where it has none. */
export function lineKeys(step: { readonly id: string; readonly checks: readonly string[] }): readonly string[] {
  return step.checks.length === 0 ? [step.id] : step.checks.map((check) => `${step.id}/${check}`);
}

function lastDateRead(kit: KitState, item: Item, pattern: Pattern): { date: string; at: string } | undefined {
  const checks = pattern.checks.filter((check) => check.kind === "date" && check.item === item.id);
  if (checks.length === 0) return undefined;
  const ids = new Set(checks.map((check) => check.id));
  for (const turnaround of turnaroundsNewestFirst(kit)) {
    const answers = Object.values(turnaround.answers).filter((one) => one.check !== undefined && ids.has(one.check));
    const read = answers.flatMap(({ value, mark }) =>
      value?.kind === "date" ? [{ date: value.date, at: mark.at }] : [],
    );
    if (read.length > 0)
      return read.reduce((newest, one) => (Date.parse(one.at) > Date.parse(newest.at) ? one : newest));
  }
  return undefined;
}

function readDay(text: string | undefined): PlainDate | undefined {
  return text !== undefined && (isDate(text) || isMonth(text)) ? parseDate(text) : undefined;
}
