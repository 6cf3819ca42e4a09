import type { Entry } from "#log";
import type { KitDraft } from "../draft.ts";
import { compareDrill } from "./compare.ts";
import type { Drill, Judged } from "./drill-state.ts";
import { bareMark } from "../draft.ts";

/** Closes findings of faults that were planted and are named removed. */
export function closeFound(draft: KitDraft, drill: Drill, entry: Entry): void {
  for (const { found, removed } of compareDrill(draft.kit, drill, draft.patternAt(entry)).faults) {
    const finding = found && removed && !found.closed ? draft.finding(found.id) : undefined;
    if (finding && removed) finding.closed = bareMark(removed);
  }
}

/**
 * Closes a finding of a drill that is not real; opens one again that was closed by such a word alone.
 *
 * @param before - what was said of it before
 */
export function closeFinding(draft: KitDraft, drill: Drill, id: string, before: Judged | undefined): void {
  const finding = draft.finding(id);
  const judged = drill.judged[id];
  if (finding?.drill !== drill.id || !judged) return;
  if (!judged.real) finding.closed ??= bareMark(judged);
  else if (before && finding.closed?.entry === before.entry) delete finding.closed;
}
