import { useNow } from "../../timing/index.ts";
import { duesOf, type Due } from "./due.ts";
import { useHeld } from "./held.ts";
import { soundingClocks } from "./sounding-clocks.ts";
import { useSheet } from "./use-sheet.ts";

/** What is due on this sheet, and the wall clock it is read by [ms]. */
export function useDues(): { readonly dues: readonly Due[]; readonly now: number } {
  const { casualty } = useSheet();
  const now = useNow(true);
  return { now, dues: duesOf(casualty, useHeld(soundingClocks), now) };
}
