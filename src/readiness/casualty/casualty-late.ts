import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { Mark } from "../state.ts";

/* Lines that may be written down later than what they tell of. */

/** A line's mark at the time it tells of, with when it was written down where that was later. */
export type MarkWhenTaken = Mark & { readonly written?: string };

/** The mark of a line, at the time it tells of. Nothing was seen or done after it was written down. */
export function markWhenTaken(taken: string | undefined, entry: Entry): MarkWhenTaken {
  const isEarlier = taken !== undefined && Date.parse(taken) < Date.parse(entry.at);
  return { ...markOf(entry), ...(isEarlier && { at: taken, written: entry.at }) };
}
