import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import { raise } from "../findings/raise.ts";
import { breakSeal, isBehindSeal } from "../kit/seal-fold.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import type { FittedItem } from "../state.ts";

export const subject = "kit";
export const writers = HANDS;

/** Taken from one kit for another: a finding on the one it was taken from, raised with this line and struck with it. */
export const schema = ({ itemRobbed }: Shapes) => itemRobbed;
export type Body = BodyOf<typeof schema>;

/**
 * A finding says that it is missing, and its dates count no more. Out of a closed kit it came by its seal being broken,
 * whatever was said of that.
 */
export function fold(draft: KitDraft, body: Body, entry: Entry): void {
  const { kit } = draft;
  const { item, quantity, to: _to, ...found } = body;
  raise(draft, { ...found, item, photos: [] }, entry);
  const robbed = draft.list(kit.robbed);
  robbed.push({ ...markOf(entry), ...body });
  kit.robbed = robbed;
  takeOut(draft, item, quantity);
  if (isBehindSeal(kit, draft.patternAt(entry), item)) breakSeal(draft, entry);
}

function takeOut(draft: KitDraft, item: string, quantity: number): void {
  const fitted = draft.kit.contents[item];
  if (fitted === undefined) return;
  const contents = draft.part(draft.kit.contents as Record<string, FittedItem>);
  if (quantity >= fitted.quantity) delete contents[item];
  else contents[item] = { ...fitted, quantity: fitted.quantity - quantity };
  draft.kit.contents = contents;
}
