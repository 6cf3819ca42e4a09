import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import { fitSeal } from "../kit/seal-fold.ts";
import { drillAt } from "./drill-fold.ts";
import type { Drill } from "./drill-state.ts";

export const subject = "kit";
/** By somebody who is not drilled: see the acts. */
export const writers = HANDS;

/**
 * Faults were planted, unseen: only the hash of what was planted is written, so that nobody can read it here and nobody
 * can change it afterwards.
 */
export const schema = ({ faultsPlanted }: Shapes) => faultsPlanted;
export type Body = BodyOf<typeof schema>;

/** Hidden until what was planted is revealed. */
export function fold(draft: KitDraft, { drill: id, ...said }: Body, entry: Entry): void {
  const drill = drillAt(draft, id, entry);
  if (said.seal !== undefined && !draft.kit.turnaround) fitSeal(draft, said.seal, entry);
  if (drill.plants[said.commitment]) return;
  const plants = draft.part(drill.plants as Record<string, Drill["plants"][string]>);
  plants[said.commitment] = { ...markOf(entry), ...said };
  drill.plants = plants;
  if (!drill.revealed[said.commitment]) drill.hidden += 1;
}
