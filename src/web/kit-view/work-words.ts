import { sayDuration } from "#words";
import { daysBetween, formatDate } from "#base";
import type { WorkLine, WorkTask } from "#readiness";
import type { DueLine } from "#station";
import { sayCount } from "../parts/words/say-count.ts";
import { sayFlushLeft } from "./flush-words.ts";

const SORT_WORDS: Readonly<Record<WorkTask["sort"], string>> = {
  finish: "Turnaround to finish",
  turnaround: "Turnaround",
  fetch: "Away: to fetch",
  lent: "Lent with it, not back",
  settle: "Difference to settle",
  other: "To put right",
  "proof-run": "Proof run",
  mend: "Finding to mend",
  renew: "Item to renew",
  muster: "Muster",
};
/** The order in which they are named: what takes in the rest comes first. */
const SORTS = Object.keys(SORT_WORDS) as WorkTask["sort"][];

/** What a line of work is, in a few words: "Turnaround, 2 items to renew". */
export function sayWork({ tasks, planned }: Pick<WorkLine, "tasks" | "planned">): string {
  const named = SORTS.flatMap((sort) => {
    const count = tasks.filter((one) => one.sort === sort).length;
    return count === 0 ? [] : [count === 1 ? SORT_WORDS[sort] : `${SORT_WORDS[sort]}, ${count}`];
  });
  if (named.length === 0 && planned === undefined) return "Flush";
  // What an opening settles beside is no name for it: a muster alone would read as one.
  const isUnnamed = planned !== undefined && tasks.every(({ sort }) => sort === "muster");
  return [...(isUnnamed ? ["Planned opening"] : []), ...named]
    .map((words, at) => (at === 0 ? words : words.toLowerCase()))
    .join("; ");
}

/** By when, or since when, in words. */
export function sayBy(line: Pick<DueLine, "by" | "flush" | "isGrounding">, today: string, now: number): string {
  if (line.flush) return sayFlushLeft(line.flush, now);
  if (line.by === undefined) return line.isGrounding ? "Now: it grounds the kit." : "Now: it is overdue.";
  const days = daysBetween(today, line.by);
  if (days < 0) return `Was to be done by ${formatDate(line.by)}, ${sayCount(-days, "day")} ago.`;
  return `By ${formatDate(line.by)} (${days === 0 ? "today" : sayCount(days, "day")}).`;
}

/** Minutes and hands: "About 95 min, 2 people at once." Nothing where the pattern gives no time. */
export function sayEffort({ minutes, people }: Pick<WorkLine, "minutes" | "people">): string {
  if (minutes === 0) return "";
  return `About ${sayDuration(60 * minutes, "needed")}, ${sayCount(people, "person", "people at once")}.`;
}

/** Parts by name with how many, and what lies on the shelf where that is known. */
export function sayParts(parts: DueLine["parts"]): string {
  return parts.map(sayPart).join(", ");
}

function sayPart({ name, part, count, onShelf }: DueLine["parts"][number]): string {
  const words = part === undefined || part === name ? name : `${name} (${part})`;
  const shelf = onShelf === undefined ? "" : onShelf >= count ? ", on the shelf" : `, ${onShelf} on the shelf`;
  return `${words} × ${count}${shelf}`;
}

/** How many lines of each kind: "1 back and wet, 3 overdue, 2 this week, 4 this month". */
export function sayCounts(lines: readonly Pick<DueLine, "bucket">[]): string {
  const count = (bucket: DueLine["bucket"]) => lines.filter((one) => one.bucket === bucket).length;
  const said = (["wet", "overdue", "week", "month"] as const).flatMap((bucket) =>
    count(bucket) === 0 ? [] : [`${count(bucket)} ${BUCKET_WORDS[bucket]}`],
  );
  return said.length === 0 ? "Nothing is due within a month" : said.join(", ");
}

const BUCKET_WORDS: Readonly<Record<DueLine["bucket"], string>> = {
  wet: "back and not flushed",
  overdue: "overdue",
  week: "this week",
  month: "within a month",
};
