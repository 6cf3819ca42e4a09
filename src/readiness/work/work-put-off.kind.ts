import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import { keepSaid, saidOf } from "./work-said.ts";

export const subject = "kit";
export const writers = HANDS;

/** It may wait until the end of this day. It never waits past the last day before the kit is grounded. */
export const schema = ({ z, day, reason, work }: Shapes) => z.strictObject({ work, until: day, reason });
export type Body = BodyOf<typeof schema>;

/** Of two days given without sight of each other the earlier stands. */
export function fold(draft: KitDraft, { work, until, reason }: Body, entry: Entry): void {
  const { putOff: before, ...said } = saidOf(draft, work);
  const stands = before && draft.isBlindTo(before, entry) && before.until < until;
  keepSaid(draft, work, { ...said, putOff: stands ? before : { ...markOf(entry), until, reason } });
}
