import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import type { Mark } from "../state.ts";
import { closeFound } from "./drill-findings.ts";
import { drillAt } from "./drill-fold.ts";
import { removalKey } from "./drill-now.ts";

export const subject = "kit";
export const writers = HANDS;

/** One planted fault was taken out. */
export const schema = ({ plantedRemoved }: Shapes) => plantedRemoved;
export type Body = BodyOf<typeof schema>;

/** Findings of it are closed. */
export function fold(draft: KitDraft, body: Body, entry: Entry): void {
  const drill = drillAt(draft, body.drill, entry);
  const key = removalKey(body.plant, body.fault);
  if (drill.removed[key]) return;
  const removed = draft.part(drill.removed as Record<string, Mark>);
  removed[key] = markOf(entry);
  drill.removed = removed;
  closeFound(draft, drill, entry);
}
