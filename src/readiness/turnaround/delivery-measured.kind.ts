import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";

export const subject = "kit";
export const writers = HANDS;

/** What a proof run moved, and what was expected of it. */
export const schema = ({ deliveryMeasured }: Shapes) => deliveryMeasured;
export type Body = BodyOf<typeof schema>;

/** It stands beside what was measured before, and its ratio is part of the turnaround's run. */
export function fold(draft: KitDraft, body: Body, entry: Entry): void {
  const turnaround = draft.turnaround(body.turnaround, entry);
  const measured = draft.list(turnaround.measured);
  measured.push({ ...body, mark: markOf(entry) });
  turnaround.measured = measured;
  draft.putRun(body.turnaround, { ratio: body.ratio }, entry);
}
