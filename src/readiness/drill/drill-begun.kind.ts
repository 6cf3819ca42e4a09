import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";
import { breakSeal, seeSeal } from "../kit/seal-fold.ts";
import { drillAt } from "./drill-fold.ts";

export const subject = "kit";
export const writers = KEEPING_ROLES;

/** The kit is set aside and opened for a drill. */
export const schema = ({ drillBegun }: Shapes) => drillBegun;
export type Body = BodyOf<typeof schema>;

/** A turnaround that is open while a drill is on belongs to it, whether its writer knew of the drill or not. */
export function fold(draft: KitDraft, { drill: id, ...said }: Body, entry: Entry): void {
  const drill = drillAt(draft, id, entry);
  drill.begun = { ...markOf(entry), ...said };
  const open = draft.kit.turnaround && draft.knownTurnaround(draft.kit.turnaround.id);
  if (open) open.drill ??= id;
  seeSeal(draft, said.sealSeen, entry);
  breakSeal(draft, entry);
}
