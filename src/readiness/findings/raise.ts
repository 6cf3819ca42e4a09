import type { Entry } from "#log";
import type { KitDraft } from "../draft.ts";
import { closeFinding } from "../drill/drill-findings.ts";
import { isHiding } from "../drill/drill-now.ts";
import type { Drill } from "../drill/drill-state.ts";
import { markOf } from "../draft.ts";
import type { FindingRaised, FindingProved, Remedy } from "../kinds/kit-parts.ts";
import { noteMeanwhile } from "../turnaround/timers.ts";
import { fold as prove } from "./finding-proved.kind.ts";
import { fold as noteRemedy } from "./remedy-made.kind.ts";

/** Opens a finding, and takes up what was done about it by lines that sorted before. */
export function raise(draft: KitDraft, body: FindingRaised, entry: Entry): void {
  const { finding: id, ...said } = body;
  const drill = drillOf(draft, body.turnaround);
  const finding = { ...said, id, raised: markOf(entry), remedies: [], ...(drill && { drill: drill.id }) };
  if (!draft.addFinding(finding)) return;
  if (said.effect === "grounds") noteMeanwhile(draft, id);
  takeUpWaiting(draft, id);
  if (drill) closeFinding(draft, drill, id, undefined);
}

/** The drill that a finding raised now belongs to: as long as nobody was told what was planted. */
function drillOf(draft: KitDraft, turnaround: string | undefined): Drill | undefined {
  const own = turnaround === undefined ? undefined : draft.knownTurnaround(turnaround)?.drill;
  const id = own ?? draft.drillOn();
  const drill = id === undefined ? undefined : draft.drill(id);
  return drill && isHiding(drill) ? drill : undefined;
}

/** Applies remedies and proofs that sorted before their finding, in their own order. */
function takeUpWaiting(draft: KitDraft, finding: string): void {
  const due = draft.waiting.take(finding);
  if (draft.waiting.size === 0) delete draft.kit.waiting;
  for (const entry of due) {
    if (entry.kind === "remedy-made") noteRemedy(draft, entry.body as Remedy, entry);
    else prove(draft, entry.body as FindingProved, entry);
  }
}
