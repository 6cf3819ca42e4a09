import { addSpan, dayWritten, earlierDate, isDate, isMonth, parseDate, type PlainDate, type Span } from "#base";
import { isCalledFor, type Item, type Pattern } from "#kit";
import type { DateRead } from "../kinds/schema-parts.ts";
import type { FittedItem, KitState, Turnaround } from "../state.ts";

/** What the log says of an item's dates. */
export interface Dates {
  /** Day fitted, if it is on record. */
  readonly fitted?: PlainDate;
  /** Last day printed on it, as last fitted or read off it. */
  readonly printed?: PlainDate;
  /** Day it was made, where that was read off it: rubber ages from then. */
  readonly made?: PlainDate;
  /** True where somebody looked for a date and could not read one. */
  readonly cannot?: true;
}

/** The dates of an item: those it was fitted with, and those read off it since. */
export function datesOf(kit: KitState, item: Item, pattern: Pattern): Dates {
  const known = kit.contents[item.id];
  const own = kit.dates?.[item.id];
  const look = lastDateLook(kit, item, pattern);
  const looked = look && (!known || Date.parse(look.at) > Date.parse(known.mark.at)) ? look : undefined;
  const printed = newest([
    { date: known?.printed, at: known?.mark.at },
    { date: own?.printed, at: own?.mark.at },
    { date: looked?.date, at: looked?.at },
  ]);
  const dates = {
    fitted: firstDay(own?.fitted) ?? readDay(known?.fitted),
    printed: readDay(printed),
    made: firstDay(own?.made),
  };
  const cannot = own?.cannot === true || (looked !== undefined && looked.date === undefined);
  return { ...stripped(dates), ...(cannot && { cannot }) };
}

interface Told {
  readonly date: string | undefined;
  readonly at: string | undefined;
}

/** The date of the newest that has one. */
function newest(told: readonly Told[]): string | undefined {
  const dated = told.filter(({ date, at }) => date !== undefined && at !== undefined);
  return dated.toSorted((one, other) => Date.parse(other.at ?? "") - Date.parse(one.at ?? ""))[0]?.date;
}

/** Without what is not known. */
function stripped(dates: Readonly<Record<"fitted" | "printed" | "made", PlainDate | undefined>>): Dates {
  return Object.fromEntries(Object.entries(dates).filter(([, day]) => day !== undefined));
}

/**
 * Last day on which an item is good: its printed date, or its life counted from the day it was fitted, or from the day it
 * was made where that is known and earlier. Fuel is also held to the station's own age.
 *
 * @source life of rubber counted from its cure: FED-STD-793 and DoD 4140.27 (meaning only)
 * @returns the day, "never" for an item without a life, or "unknown" where the log has no date to go by
 */
export function lastGoodDay(
  item: Item,
  { fitted, printed, made }: Dates,
  fuelAge?: Span,
): PlainDate | "never" | "unknown" {
  const { life } = item;
  const aged = fuelAge && fitted !== undefined ? addSpan(fitted, fuelAge) : undefined;
  if (life.kind === "printed") return printed === undefined ? "unknown" : (earlierDate(printed, aged) ?? "unknown");
  if (life.kind === "fitted") {
    const since = earlierDate(fitted, made);
    if (since === undefined) return "unknown";
    return earlierDate(addSpan(since, life.span), earlierDate(printed, aged)) ?? "unknown";
  }
  return aged ?? "never";
}

/** What one date read off an item tells: a month alone is its first day, or its last where it is the last good day. */
export function datesRead({ of, date }: DateRead): Dates {
  const day = of === "printed" ? readDay(date) : firstDay(date);
  return day === undefined ? {} : { [of]: day };
}

/**
 * Items whose life goes by a date that nobody has read off them: none is on record, or a sheet alone tells one. Not those of
 * which somebody found that it cannot be read.
 */
export function datesUnknown(kit: KitState, pattern: Pattern): readonly Item[] {
  return pattern.items.filter((item) => {
    const dates = datesOf(kit, item, pattern);
    return !dates.cannot && (lastGoodDay(item, dates) === "unknown" || isToldAlone(kit, item, pattern));
  });
}

/** True where a sheet tells the date and nobody has looked at the thing since. */
export function isToldAlone(kit: KitState, item: Item, pattern: Pattern): boolean {
  const own = kit.dates?.[item.id];
  if (own?.told !== true || item.life.kind === "none" || item.life.kind === "single-use") return false;
  const look = lastDateLook(kit, item, pattern);
  return look === undefined || Date.parse(look.at) < Date.parse(own.mark.at);
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

/** The last turnaround that ended with a seal. */
export function lastSealed(kit: Pick<KitState, "turnarounds">): Turnaround | undefined {
  return kit.turnarounds.findLast(({ closed }) => closed?.how === "sealed");
}

/** The last turnaround that was closed with a seal or as grounded. */
export function lastClosed(kit: KitState): Turnaround | undefined {
  return kit.turnarounds.findLast((turnaround) => turnaround.closed?.how !== "set-aside");
}

function proofRunDay(turnaround: Turnaround, pattern: Pattern): PlainDate | undefined {
  const running = pattern.stages.filter((stage) => stage.id === "run").flatMap((stage) => stage.steps);
  const needed = running.filter((step) => !step.optional && isCalledFor(step, turnaround.met ?? []));
  const timed = needed.filter((step) => step.timer?.kind === "run");
  const marks =
    timed.length > 0
      ? timed.map((step) => (turnaround.timers[step.id]?.reached ? turnaround.timers[step.id]?.mark : undefined))
      : needed.flatMap((step) => lineKeys(step).map((key) => seenMark(turnaround, key)));
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

/** The newest look for a printed date at a line: the date, or that it was not possible to read it. */
function lastDateLook(kit: KitState, item: Item, pattern: Pattern): { date?: string; at: string } | undefined {
  const checks = pattern.checks.filter((check) => check.kind === "date" && check.item === item.id);
  if (checks.length === 0) return undefined;
  const ids = new Set(checks.map((check) => check.id));
  for (const turnaround of turnaroundsNewestFirst(kit)) {
    const answers = Object.values(turnaround.answers).filter((one) => one.check !== undefined && ids.has(one.check));
    const looks = answers.flatMap(({ answer, value, mark }) => {
      if (value?.kind === "date") return [{ date: value.date, at: mark.at }];
      return answer === "not-possible" ? [{ at: mark.at }] : [];
    });
    if (looks.length > 0)
      return looks.reduce((one, other) => (Date.parse(other.at) > Date.parse(one.at) ? other : one));
  }
  return undefined;
}

/** The day from which a life is counted: a month alone means its first day, so that nothing lasts longer than it may. */
function firstDay(text: string | undefined): PlainDate | undefined {
  return readDay(text !== undefined && isMonth(text) ? `${text}-01` : text);
}

function readDay(text: string | undefined): PlainDate | undefined {
  return text !== undefined && (isDate(text) || isMonth(text)) ? parseDate(text) : undefined;
}
