import type { Entry } from "#log";
import { isKindOf } from "../kinds/folds-of.ts";
import { partFolds } from "../registry/part.ts";
import type { PartDraft } from "./part-draft.ts";

/** True for a kind whose subject is a part. */
export function isStockKind(kind: string): kind is keyof typeof partFolds {
  return isKindOf(partFolds, kind);
}

/** Folds one more line into a part. */
export function applyToPart(draft: PartDraft, entry: Entry): void {
  if (isStockKind(entry.kind)) partFolds[entry.kind](draft, entry.body as never, entry);
}
