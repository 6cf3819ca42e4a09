import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import { raise } from "../findings/finding-fold.ts";
import type { ItemRobbed } from "../kinds/stock-kinds.ts";
import type { FittedItem } from "../state.ts";

/** Something was taken out for another kit: a finding says that it is missing, and its dates count no more. */
export function rob(draft: KitDraft, body: ItemRobbed, entry: Entry): void {
  const { kit } = draft;
  const { item, quantity, to: _to, ...found } = body;
  raise(draft, { ...found, item, photos: [] }, entry);
  const robbed = draft.list(kit.robbed);
  robbed.push({ ...markOf(entry), ...body });
  kit.robbed = robbed;
  takeOut(draft, item, quantity);
}

function takeOut(draft: KitDraft, item: string, quantity: number): void {
  const fitted = draft.kit.contents[item];
  if (fitted === undefined) return;
  const contents = draft.part(draft.kit.contents as Record<string, FittedItem>);
  if (quantity >= fitted.quantity) delete contents[item];
  else contents[item] = { ...fitted, quantity: fitted.quantity - quantity };
  draft.kit.contents = contents;
}
