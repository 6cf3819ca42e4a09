import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { KitBodies } from "../kinds/kinds.ts";

/** The kind that tells of a turnaround before this log. It stands beside those that were done here, never among them. */
export const toldFolds = { "turnaround-told": tell };

function tell(draft: KitDraft, body: KitBodies["turnaround-told"], entry: Entry): void {
  const told = draft.list(draft.kit.told);
  told.push({ ...markOf(entry), ...body });
  draft.kit.told = told;
}
