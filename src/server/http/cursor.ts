import type { KeptEntry } from "#log";
import type { Cursor } from "#station";

/** Where a reader stands after these entries. */
export function advance(cursor: Cursor, entries: readonly KeptEntry[]): Cursor {
  const next: Record<string, number> = { ...cursor };
  for (const { entry, seq } of entries) next[entry.place] = Math.max(seq, next[entry.place] ?? 0);
  return next;
}
