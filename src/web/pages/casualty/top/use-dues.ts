import { useNow } from "#web/timing/index.ts";
import { duesOf, type Due } from "../calls/due.ts";
import { useWatched } from "#web/watched/index.ts";
import { soundingClocks } from "../soundings/sounding-clocks.ts";
import { useSheet } from "../sheet/use-sheet.ts";

/** What is due on this sheet, and the wall clock it is read by [ms]. */
export function useDues(): { readonly dues: readonly Due[]; readonly now: number } {
  const { casualty } = useSheet();
  const now = useNow(true);
  return { now, dues: duesOf(casualty, useWatched(soundingClocks), now) };
}
