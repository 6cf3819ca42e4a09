import { addDays, type PlainDate } from "#base";
import type { Effect } from "#kit";
import type { WorkKind } from "../kinds/work-parts.ts";
import type { Condition, Restoring } from "../standing/condition.ts";
import type { Outlook } from "../standing/standing.ts";
import type { WorkTask } from "./work-line.ts";

/** A task with what it takes, and the line it goes to. */
export interface SortedTask {
  readonly work: WorkKind;
  readonly task: WorkTask;
  readonly restore: Restoring;
}

/**
 * What is to be done on a kit up to a day, each thing once: what bears on it now, and what will by then.
 *
 * @param outlook - what bears on the kit
 * @param today - the day asked about
 * @param until - last day looked ahead to
 */
export function tasksOf({ conditions }: Outlook, today: PlainDate, until: PlainDate): readonly SortedTask[] {
  const near = conditions.filter((one) => isNear(one, today, until));
  const isOpen = near.some(({ bears }) => bears === "open");
  // The turnaround that is open is the one that is wanted.
  const wanted = isOpen ? near.filter((one) => sortOf(one) !== "turnaround") : near;
  return wanted.flatMap((one) => sorted(one, today) ?? []);
}

function isNear({ from, until: ends }: Condition, today: PlainDate, until: PlainDate): boolean {
  return (from === undefined || addDays(from, -1) <= until) && (ends === undefined || today < ends);
}

function sorted(condition: Condition, today: PlainDate): SortedTask | undefined {
  const { restore, reason, from, ends, bears } = condition;
  if (restore === undefined) return undefined;
  const isAhead = from !== undefined && from > today;
  const task: WorkTask = {
    rule: reason.rule,
    sort: sortOf(condition),
    what: restore.what,
    why: (isAhead ? ends : undefined) ?? reason.said,
    ...(isAhead && { day: addDays(from, -1) }),
    effect: effectOf(bears),
    ...(reason.item !== undefined && { item: reason.item }),
    ...(reason.finding !== undefined && { finding: reason.finding }),
    ...(restore.proveAt && { proveAt: restore.proveAt }),
  };
  return { work: workOf(condition), task, restore };
}

function effectOf(bears: Condition["bears"]): Effect {
  return bears === "open" || bears === "away" ? "grounds" : bears;
}

function workOf({ reason, bears, restore }: Condition): WorkKind {
  if (bears === "away" || reason.rule === "lent") return "return";
  if (reason.rule === "to-settle") return "settle";
  return reason.rule === "muster" && restore?.opens !== true ? "muster" : "opening";
}

function sortOf({ reason, bears, restore }: Condition): WorkTask["sort"] {
  if (reason.rule === "lent") return "lent";
  if (bears === "away") return "fetch";
  if (bears === "open") return "finish";
  if (reason.rule === "muster" && restore?.opens !== true) return "muster";
  if (restore?.proveAt) return "prove";
  return SORTS[reason.rule] ?? "other";
}

const SORTS: Readonly<Record<string, WorkTask["sort"]>> = {
  custody: "turnaround",
  turnaround: "turnaround",
  "proof-run": "proof-run",
  date: "renew",
  "single-use": "renew",
  finding: "mend",
  "to-settle": "settle",
};
