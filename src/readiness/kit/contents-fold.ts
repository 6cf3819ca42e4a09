import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { FittedItem } from "../state.ts";
import { forgetDates } from "./date-fold.ts";

/** Records what is fitted now. */
export function putItem(draft: KitDraft, item: Omit<FittedItem, "mark">, entry: Entry): void {
  draft.kit.contents = draft.part(draft.kit.contents as Record<string, FittedItem>);
  (draft.kit.contents as Record<string, FittedItem>)[item.item] = { ...item, mark: markOf(entry) };
  forgetDates(draft, item.item);
}
