import { addDays, weekdayOf, type PlainDate } from "#base";
import type { Pattern } from "#kit";
import { flushDue } from "../after-use/index.ts";
import type { WorkKind } from "../kinds/work-parts.ts";
import type { Restoring } from "../standing/condition.ts";
import { stepsFor } from "../standing/steps-for.ts";
import type { Outlook } from "../standing/standing.ts";
import type { KitState } from "../state.ts";
import { partsFor } from "./work-parts.ts";
import { tasksOf, type SortedTask } from "./work-tasks.ts";
import type { PartNeed, WorkLine } from "./work-line.ts";

/** How far work is looked ahead to [d]. */
export const AHEAD_DAYS = 31;
/** Reading a seal and looking at the container [min]. @source common practice */
const MUSTER_MINUTES = 5;

const ORDER: readonly WorkKind[] = ["opening", "return", "muster", "settle"];

/**
 * The work due on one kit: overdue, this week, within a month. What one opening of the container can settle together is
 * one line; a muster that is due no sooner than it is settled by it too.
 *
 * @param kit - as its log tells it
 * @param pattern - the version it is built to
 * @param outlook - what bears on it
 * @param today - the day at its place
 * @returns its lines, at most one of each kind of work
 * @range looks {@link AHEAD_DAYS} days ahead
 * @source DERIVED: docs/methods/work-due.md
 */
export function workLinesOf(kit: KitState, pattern: Pattern, outlook: Outlook, today: PlainDate): readonly WorkLine[] {
  if (kit.retired) return [];
  const horizon = addDays(today, AHEAD_DAYS);
  const groups = grouped(tasksOf(outlook, today, horizon));
  const flush = flushDue(kit, pattern);
  const planned = kit.planned?.openings.find(({ week }) => week <= horizon)?.week;
  if (flush !== undefined || planned !== undefined) groups.opening ??= [];
  joinMuster(groups, { planned, today, putOff: kit.work?.opening?.putOff?.until });
  // A kit that is away can only be fetched.
  if (groups.return !== undefined && kit.custody.kind === "away")
    return [lineOf("return", groups.return, { kit, outlook, today })];
  return ORDER.flatMap((work) => {
    const tasks = groups[work];
    if (tasks === undefined) return [];
    const isOpening = work === "opening";
    const about = {
      kit,
      outlook,
      today,
      ...(isOpening && flush && { flush }),
      ...(isOpening && planned && { planned }),
    };
    return [lineOf(work, tasks, about)];
  });
}

/**
 * The parts that an opening of the kit uses if it is opened today: what work due says of it, and where none is due what
 * every opening uses up.
 *
 * @param kit - as its log tells it
 * @param pattern - the version it is built to
 * @param outlook - what bears on it
 * @param today - the day at its place
 */
export function partsOfOpening(
  kit: KitState,
  pattern: Pattern,
  outlook: Outlook,
  today: PlainDate,
): readonly PartNeed[] {
  const due = workLinesOf(kit, pattern, outlook, today).find(({ work }) => work === "opening");
  return due?.parts ?? partsFor(outlook.lookup, []);
}

type Groups = Partial<Record<WorkKind, SortedTask[]>>;

function grouped(tasks: readonly SortedTask[]): Groups {
  const groups: Groups = {};
  for (const one of tasks) (groups[one.work] ??= []).push(one);
  return groups;
}

interface Joining {
  readonly planned: PlainDate | undefined;
  readonly today: PlainDate;
  /** Day to which the opening was put off. */
  readonly putOff: PlainDate | undefined;
}

/**
 * Sealing the container anew counts as seeing it. What wants to be seen only in weeks is no part of what is overdue; what
 * wants to be seen before an opening that was put off waits for none.
 */
function joinMuster(groups: Groups, { planned, today, putOff }: Joining): void {
  const { opening, muster } = groups;
  if (opening === undefined || muster === undefined) return;
  const first = [firstDay(opening), planned].reduce(earlier, undefined);
  const isNow = opening.some(({ task }) => task.day === undefined);
  const day = firstDay(muster);
  const isGrounding = opening.some(({ task }) => task.effect === "grounds" && task.day === undefined);
  if (!isGrounding && putOff !== undefined && putOff > (day ?? today)) return;
  if (!isNow && (day === undefined || first === undefined || first > day)) return;
  delete groups.muster;
  if (isNow && bucketOf(day ?? today, today) === "month") return;
  opening.push(...muster.map((one) => ({ ...one, work: "opening" as const })));
}

interface About extends Pick<WorkLine, "flush" | "planned"> {
  readonly kit: KitState;
  readonly outlook: Outlook;
  readonly today: PlainDate;
}

function lineOf(work: WorkKind, sorted: readonly SortedTask[], about: About): WorkLine {
  const { kit, outlook, today, flush, planned } = about;
  const tasks = eachOnce(sorted);
  const said = kit.work?.[work] ?? { takers: [] };
  const isNow = sorted.some(({ task }) => task.day === undefined);
  const latest = isNow ? undefined : firstDay(sorted);
  const grounding = sorted.filter(({ task }) => task.effect === "grounds");
  const groundsAfter = firstDay(grounding);
  const isGrounding = grounding.some(({ task }) => task.day === undefined);
  const mayWait = work !== "muster" && !isGrounding;
  const dates = { latest, groundsAfter, isNow, mayWait };
  const expected = work === "return" && kit.custody.kind === "away" ? kit.custody.back : undefined;
  const due = dueBy(dates, { putOff: said.putOff?.until, day: said.day?.day, planned });
  // Nobody fetches a kit before the day on which it is expected, unless somebody said so.
  const by = due ?? expected;
  return {
    kit: kit.id,
    work,
    tasks,
    ...(latest !== undefined && { latest }),
    ...(groundsAfter !== undefined && { groundsAfter }),
    isGrounding,
    ...(by !== undefined && { by }),
    bucket: flush ? "wet" : bucketOf(by, today),
    ...effort(work, sorted, outlook),
    parts: work === "opening" ? partsFor(outlook.lookup, tasks) : [],
    ...(flush && { flush }),
    said,
    ...(planned !== undefined && { planned }),
  };
}

function eachOnce(sorted: readonly SortedTask[]): WorkLine["tasks"] {
  const seen = new Map(sorted.map(({ task }) => [JSON.stringify([task.what, task.why]), task]));
  return [...seen.values()].toSorted((one, other) => (dayOrNow(one.day) < dayOrNow(other.day) ? -1 : 1));
}

interface Dates {
  readonly latest: PlainDate | undefined;
  readonly groundsAfter: PlainDate | undefined;
  readonly isNow: boolean;
  readonly mayWait: boolean;
}

/** Put off it waits past its latest day, never past the day that grounds, and a muster not at all; a day given or planned comes sooner, never later. */
function dueBy(
  { latest, groundsAfter, isNow, mayWait }: Dates,
  said: Readonly<Record<"putOff" | "day" | "planned", PlainDate | undefined>>,
): PlainDate | undefined {
  const waits = mayWait && said.putOff !== undefined;
  const end = waits ? [said.putOff, groundsAfter].reduce(earlier, undefined) : latest;
  if (isNow && !waits) return undefined;
  const chosen = said.day ?? (said.planned === undefined ? undefined : addDays(said.planned, 6));
  return [end, chosen].reduce(earlier, undefined);
}

/** The Sunday that ends the week of a day. */
export function sundayOf(day: PlainDate): PlainDate {
  return addDays(day, 7 - weekdayOf(day));
}

function bucketOf(by: PlainDate | undefined, today: PlainDate): WorkLine["bucket"] {
  if (by === undefined || by < today) return "overdue";
  return by <= sundayOf(today) ? "week" : "month";
}

function effort(
  work: WorkKind,
  sorted: readonly SortedTask[],
  { lookup }: Outlook,
): Pick<WorkLine, "minutes" | "people"> {
  if (work === "muster") return { minutes: MUSTER_MINUTES, people: 1 };
  if (work !== "opening") return { minutes: 0, people: 1 };
  const needed = sorted.map(({ restore }) => restore);
  const ids = stepsFor(lookup, needed.length > 0 ? needed : [whole(lookup)]);
  const needs = [...ids].flatMap((id) => lookup.steps.get(id)?.needs ?? []);
  return {
    minutes: needs.reduce((sum, one) => sum + one.minutes, 0),
    people: needs.reduce((most, one) => Math.max(most, one.people), 1),
  };
}

/** An opening that is planned with nothing due yet is a turnaround. */
function whole({ steps }: Outlook["lookup"]): Restoring {
  const all = [...steps.values()].filter((step) => !step.optional).map((step) => step.id);
  return { what: { say: "doTurnaround" }, steps: all, opens: true };
}

function firstDay(sorted: readonly SortedTask[]): PlainDate | undefined {
  return sorted.map(({ task }) => task.day).reduce(earlier, undefined);
}

function earlier(one: PlainDate | undefined, other: PlainDate | undefined): PlainDate | undefined {
  if (one === undefined || other === undefined) return one ?? other;
  return one < other ? one : other;
}

function dayOrNow(day: PlainDate | undefined): string {
  return day ?? "";
}
