import { plainName } from "#base";
import type { Item } from "#kit";
import { lookUp, type KitState, type Remedy } from "#readiness";
import type { ActContext } from "./draft.ts";
import { patternOf } from "./turnaround-acts.ts";

type Replaced = Extract<Remedy, { readonly how: "replaced" }>;

/**
 * True where the part is the whole item, by the name of its own part or its own name: then the item is renewed by it. What
 * stands behind a comma is the sort of it: "O-ring" is "O-ring, fuel grade, 8 mm".
 */
export function isItemItself({ name, part: own }: Item, part: string): boolean {
  return [own, name].some((one) => one !== undefined && withoutSort(one) === withoutSort(part));
}

function withoutSort(name: string): string {
  return plainName(name.split(",", 1)[0] ?? "");
}

/** The remedy with the item it renews, fitted today, where its part is the item itself and nothing was said of that. */
export function withRenewed(doing: ActContext, kit: KitState, item: string | undefined, body: Replaced): Replaced {
  const pattern = patternOf(doing, kit);
  const known = pattern && item !== undefined ? lookUp(pattern).items.get(item) : undefined;
  if (body.fitted || !known || !isItemItself(known, body.part)) return body;
  return { ...body, fitted: { item: known.id, fitted: doing.today, quantity: body.quantity } };
}
