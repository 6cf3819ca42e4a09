import { parseDate } from "#base";
import type { Item } from "#kit";
import type { Entry } from "#log";
import type { KitDraft } from "../draft.ts";
import type { Fitted } from "../kinds/schema-parts.ts";
import type { FittedItem } from "../state.ts";
import { putItem } from "../kit/contents-fold.ts";
import { keepDates } from "../kit/date-fold.ts";
import { datesOf } from "../kit/life.ts";

/**
 * Records what is fitted in place of an item. Where it is fewer than the item has, such as one of two gaskets, the others
 * stay in, and the oldest date of all of them governs: it is that of before, unless the new one's is earlier.
 */
export function putAllOrSome(draft: KitDraft, fitted: Omit<FittedItem, "mark">, entry: Entry): void {
  const item = draft.patternAt(entry)?.items.find(({ id }) => id === fitted.item);
  if (item === undefined || fitted.quantity >= item.quantity) putItem(draft, fitted, entry);
  else putSome(draft, item, fitted, entry);
}

function putSome(draft: KitDraft, item: Item, { printed, quantity }: Fitted, entry: Entry): void {
  const before = datesOf(draft.kit, item, draft.patternAt(entry)!).printed;
  addCount(draft, item, quantity);
  if (before === undefined || printed === undefined || parseDate(printed) >= before) return;
  keepDates(draft, { item: item.id, of: "printed", date: printed }, entry);
}

/** What was missing of it is there again; what was changed like for like adds nothing. */
function addCount(draft: KitDraft, { id, quantity: whole }: Item, quantity: number): void {
  const before = draft.kit.contents[id];
  if (before === undefined || before.quantity >= whole) return;
  const contents = draft.part(draft.kit.contents as Record<string, FittedItem>);
  contents[id] = { ...before, quantity: Math.min(whole, before.quantity + quantity) };
  draft.kit.contents = contents;
}
