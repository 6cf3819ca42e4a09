import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import { drillAt } from "./drill-fold.ts";

export const subject = "kit";
export const writers = HANDS;

/** `not-compared`: what was planted cannot be shown any more, or nothing was; the reason says why. */
export const schema = ({ drillEnded }: Shapes) => drillEnded;
export type Body = BodyOf<typeof schema>;

/** The first end stands. */
export function fold(draft: KitDraft, { drill: id, ...said }: Body, entry: Entry): void {
  const drill = drillAt(draft, id, entry);
  if (drill.ended) return;
  drill.ended = { ...markOf(entry), ...said };
  draft.endDrill(id);
}
