import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { Drawn } from "../kinds/stock-parts.ts";
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
  const { drawn, item, count, turnaround, finding } = taking;
  if (drawn === undefined && draft.drawn.isNone) return;
  const before = draft.drawn.lastOf(putRight(draft, taking, entry));
  if (before) draft.drawn.remove(before);
  const of = { ...(turnaround !== undefined && { turnaround }), ...(finding !== undefined && { finding }) };
  if (drawn) draft.drawn.add({ ...markOf(entry), ...drawn, item, count, ...of });
}

/** Puts back what was written down as taken for these items in a turnaround: it was not fitted after all. */
export function putBackDrawn(draft: KitDraft, turnaround: string, items: ReadonlySet<string>): void {
  const back = [...items].flatMap((item) => draft.drawn.byWork(turnaround, item));
  for (const use of back) draft.drawn.remove(use);
}

/**
 * So many uses of the same work are looked at, the last ones: that many devices that each fit one item in one turnaround
 * without sight of each other are no honest work, and one more use left standing takes a part too many, never too few.
 */
const LOOKED_AT = 8;

/** What this line puts right: itself, where it was folded before, or the last of the same work that it was made in sight of. */
function putRight(draft: KitDraft, { item, turnaround }: Taking, entry: Entry): readonly DrawnUse[] {
  const own = draft.drawn.byLine(entry.id);
  const same = turnaround === undefined ? [] : draft.drawn.byWork(turnaround, item);
  const seen = same.slice(-LOOKED_AT).findLast((use) => !draft.isBlindTo(use, entry));
  return [...(own ? [own] : []), ...(seen ? [seen] : [])];
}
