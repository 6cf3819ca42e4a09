import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import { commitmentOf, inOrder } from "./commitment.ts";
import { closeFound } from "./drill-findings.ts";
import { drillAt } from "./drill-fold.ts";
import type { Drill } from "./drill-state.ts";

export const subject = "kit";
export const writers = HANDS;

/** What was planted, in the open. It counts only where it gives the hash that was written when it was planted. */
export const schema = ({ drillRevealed }: Shapes) => drillRevealed;
export type Body = BodyOf<typeof schema>;

/** Findings of what was planted are closed by it. */
export function fold(draft: KitDraft, body: Body, entry: Entry): void {
  const { drill: id, plant: name, nonce, faults } = body;
  const drill = drillAt(draft, id, entry);
  const commitment = commitmentOf({ kit: draft.kit.id, ...body });
  if (drill.revealed[commitment]) return;
  const revealed = draft.part(drill.revealed as Record<string, Drill["revealed"][string]>);
  revealed[commitment] = { ...markOf(entry), plant: name, nonce, faults: inOrder(faults) };
  drill.revealed = revealed;
  if (!drill.plants[commitment]) return;
  drill.hidden -= 1;
  closeFound(draft, drill, entry);
}
