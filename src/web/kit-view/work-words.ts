import { sayDuration, type Words } from "#words";
import { daysBetween } from "#base";
import type { WorkLine, WorkTask } from "#readiness";
import type { DueLine } from "#station";
import { sayDate } from "../parts/words/say-time.ts";
import { sayFlushLeft } from "./flush-words.ts";

type LineWords = Words["kitLine"];

/** The order in which they are named: what takes in the rest comes first. */
const SORTS = {
  finish: "finish",
  turnaround: "turnaround",
  fetch: "fetch",
  lent: "lent",
  settle: "settle",
  other: "other",
  "proof-run": "proofRun",
  mend: "mend",
  prove: "prove",
  renew: "renew",
  muster: "muster",
} as const satisfies Readonly<Record<WorkTask["sort"], keyof LineWords>>;

/** What a line of work is, in a few words: "Turnaround, 2 items to renew". */
export function sayWork({ tasks, planned }: Named, words: LineWords): string {
  const named = Object.entries(SORTS).flatMap(([sort, key]) => {
    const those = tasks.filter((one) => one.sort === sort);
    if (those.length === 0) return [];
    const what = key === "prove" ? sayProof(those, words) : words[key]();
    return [those.length === 1 ? what : words.severalOf({ what, count: those.length })];
  });
  if (named.length === 0 && planned === undefined) return words.flush();
  // What an opening settles beside is no name for it: a muster alone would read as one.
  const isUnnamed = planned !== undefined && tasks.every(({ sort }) => sort === "muster");
  return [...(isUnnamed ? [words.plannedOpening()] : []), ...named].reduce((first, next) =>
    words.andAlso({ first, next: next.toLowerCase() }),
  );
}

/** What is named of a line of work. */
type Named = Pick<WorkLine, "planned"> & { readonly tasks: readonly Pick<WorkTask, "sort" | "proveAt">[] };

/** What was mended is only proved now: at which lines, each once and in order. */
function sayProof(tasks: Named["tasks"], words: LineWords): string {
  const lines = [...new Set(tasks.flatMap(({ proveAt = [] }) => proveAt))].toSorted((one, other) => one - other);
  return words.prove({ count: lines.length, lines: lines.join(", ") });
}

/** By when, or since when, in words. */
export function sayBy(
  line: Pick<DueLine, "by" | "flush" | "isGrounding">,
  { today, now, words }: { readonly today: string; readonly now: number; readonly words: LineWords },
): string {
  if (line.flush) return sayFlushLeft(line.flush, now, words);
  if (line.by === undefined) return line.isGrounding ? words.nowGrounds() : words.nowOverdue();
  const days = daysBetween(today, line.by);
  const day = sayDate(line.by);
  return days < 0 ? words.wasDueBy({ day, days: -days }) : words.dueBy({ day, days });
}

/** Minutes and hands: "About 95 min, 2 people at once." Nothing where the pattern gives no time. */
export function sayEffort({ minutes, people }: Pick<WorkLine, "minutes" | "people">, words: LineWords): string {
  if (minutes === 0) return "";
  return words.effort({ duration: sayDuration(60 * minutes, "needed"), people });
}

/** One part with how many, and what lies on the shelf where that is known. */
export function sayPart({ name: item, part, count, onShelf }: DueLine["parts"][number], words: LineWords): string {
  const name = part === undefined || part === item ? item : `${item} (${part})`;
  if (onShelf === undefined) return words.part({ name, count });
  if (onShelf >= count) return words.partOnShelf({ name, count });
  return words.partSomeOnShelf({ name, count, there: onShelf });
}

/** How many lines of each kind: "1 back and wet, 3 overdue, 2 this week, 4 this month". */
export function sayCounts(lines: readonly Pick<DueLine, "bucket">[], words: LineWords): string {
  const said = Object.entries(BUCKETS).flatMap(([bucket, key]) => {
    const count = lines.filter((one) => one.bucket === bucket).length;
    return count === 0 ? [] : [words[key]({ count })];
  });
  return said.length === 0 ? words.nothingDue() : said.join(", ");
}

const BUCKETS = { wet: "countWet", overdue: "countOverdue", week: "countWeek", month: "countMonth" } as const;
