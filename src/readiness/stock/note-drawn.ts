import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { Drawn } from "../kinds/stock-kinds.ts";
import type { DrawnUse } from "../state.ts";

interface Taking {
  readonly item: string;
  readonly count: number;
  readonly turnaround?: string;
  readonly finding?: string;
  readonly drawn?: Drawn;
}

/**
 * Notes a part taken off a shelf. Fitted again in the same turnaround in sight of the first, it is the first put right;
 * fitted on two devices without sight of each other, both were taken.
 */
export function noteDrawn(draft: KitDraft, taking: Taking, entry: Entry): void {
  const { kit } = draft;
  const { drawn, item, count, turnaround, finding } = taking;
  if (drawn === undefined && kit.drawn === undefined) return;
  const uses = draft.list(kit.drawn);
  const before = uses.findLastIndex((use) => isPutRight(draft, use, taking, entry));
  if (before >= 0) uses.splice(before, 1);
  const of = { ...(turnaround !== undefined && { turnaround }), ...(finding !== undefined && { finding }) };
  if (drawn) uses.push({ ...markOf(entry), ...drawn, item, count, ...of });
  kit.drawn = uses;
}

function isPutRight(draft: KitDraft, use: DrawnUse, { item, turnaround }: Taking, entry: Entry): boolean {
  if (use.entry === entry.id) return true;
  const isSame = turnaround !== undefined && use.turnaround === turnaround && use.item === item;
  return isSame && !draft.isBlindTo(use, entry);
}
