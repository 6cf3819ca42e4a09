import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import { keepSaid, saidOf } from "./work-said.ts";

export const subject = "kit";
export const writers = HANDS;

/** The day it is to be done; no day any more where absent. */
export const schema = ({ z, day, work }: Shapes) => z.strictObject({ work, day: day.exactOptional() });
export type Body = BodyOf<typeof schema>;

/** Of two days given without sight of each other the earlier stands. */
export function fold(draft: KitDraft, { work, day }: Body, entry: Entry): void {
  const { day: before, ...said } = saidOf(draft, work);
  const stands = before && draft.isBlindTo(before, entry) && (day === undefined || before.day < day);
  const given = stands ? before : day === undefined ? undefined : { ...markOf(entry), day };
  keepSaid(draft, work, { ...said, ...(given && { day: given }) });
}
