import { useNow } from "../../timing/index.ts";
import { duesOf, type Due } from "./due.ts";
import { instantOn } from "./on-scene-question.ts";
import type { Scene } from "./use-scene.ts";
import { useSheet } from "./use-sheet.ts";

/** What is due on this sheet, and the wall clock it is read by [ms]. */
export function useDues({ live }: Scene): { readonly dues: readonly Due[]; readonly now: number } {
  const { casualty, space } = useSheet();
  const now = useNow(true);
  const next = live.answer?.reading?.nextSounding;
  return { now, dues: duesOf(casualty, space, next === undefined ? undefined : instantOn(casualty, next), now) };
}
