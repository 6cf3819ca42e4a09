import { addSpan, dayWritten, earlierDate, isDate, isMonth, parseDate, type PlainDate } from "#base";
import type { Item, Pattern } from "#kit";
import { strictest, type StationPolicy } from "./people-fold.ts";
import type { FittedItem, KitState, Turnaround } from "./state.ts";

/**
 * Last day on which a fitted item is good: its printed date, or its life counted from the day it was fitted. Fuel is
 * also held to the station's own age.
 *
 * @returns the day, "never" for an item without a life, or "unknown" where the log has no date to go by
 */
export function lastGoodDay(
  item: Item,
  fitted: FittedItem | undefined,
  fuelAge: StationPolicy["fuelAge"] | undefined,
): PlainDate | "never" | "unknown" {
  const { life } = item;
  if (life.kind === "none" || life.kind === "single-use") return "never";
  if (!fitted) return "unknown";
  const printed = fitted.printed === undefined ? undefined : readDay(fitted.printed);
  if (life.kind === "printed") return earlierDate(printed, agedOut(fitted, fuelAge)) ?? "unknown";
  const anchor = readDay(fitted.fitted);
  if (anchor === undefined) return "unknown";
  return earlierDate(addSpan(anchor, strictest(life.span, fuelAge) ?? life.span), printed) ?? "unknown";
}

/** The fuel of the kit's engine, if it has one that is an item of the pattern. */
export function fuelItemOf(pattern: Pattern): Item | undefined {
  return pattern.items.find((item) => item.id === pattern.engine?.fuel);
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

function agedOut(fitted: FittedItem, fuelAge: StationPolicy["fuelAge"] | undefined): PlainDate | undefined {
  const anchor = readDay(fitted.fitted);
  return fuelAge && anchor !== undefined ? addSpan(anchor, fuelAge) : undefined;
}

function readDay(text: string): PlainDate | undefined {
  return isDate(text) || isMonth(text) ? parseDate(text) : undefined;
}
