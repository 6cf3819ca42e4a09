import type { Entry } from "#log";
import type { Bodies } from "#readiness";
import type { TimelineLog } from "./lines.ts";

/** Where she was, as somebody told it. */
export interface PositionTold {
  /** RFC 3339 */
  readonly at: string;
  readonly position: string;
  /** Id of who wrote it down. */
  readonly by: string;
}

/** Every position told of a casualty, in order; a struck line tells none. */
export function positionsTold(lines: TimelineLog["lines"]): readonly PositionTold[] {
  return lines.flatMap(({ entry, struck }) => {
    const position = struck === undefined ? positionIn(entry) : undefined;
    return position === undefined ? [] : [{ at: entry.at, position, by: entry.by }];
  });
}

function positionIn({ kind, body }: Entry): string | undefined {
  if (kind !== "casualty-opened" && kind !== "casualty-changed") return undefined;
  return (body as Bodies["casualty-changed"]).situation?.position;
}

/** Everybody who wrote a line, with how many, the busiest first. */
export function writersOf(lines: TimelineLog["lines"]): readonly { readonly by: string; readonly lines: number }[] {
  const counts = new Map<string, number>();
  for (const { entry } of lines) counts.set(entry.by, (counts.get(entry.by) ?? 0) + 1);
  return [...counts].map(([by, count]) => ({ by, lines: count })).toSorted((one, other) => other.lines - one.lines);
}
