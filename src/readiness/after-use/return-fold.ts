import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import { raise } from "../findings/finding-fold.ts";
import type { KitBodies } from "../kinds/kinds.ts";
import { flush, meet } from "./met-fold.ts";

/** Kinds that say that a kit came back from use, and that it was flushed. */
export const returnFolds = { returned: takeBack, flushed: flush };

/** Back, with what it met and how it was counted; what is missing or damaged is a finding from then on. */
function takeBack(draft: KitDraft, body: KitBodies["returned"], entry: Entry): void {
  const { exposure, counted, findings = [] } = body;
  draft.kit.custody = { ...markOf(entry), kind: "back", exposure, ...(counted && { counted }) };
  meet(draft, body, entry);
  for (const found of findings) raise(draft, { ...found, photos: [] }, entry);
}
