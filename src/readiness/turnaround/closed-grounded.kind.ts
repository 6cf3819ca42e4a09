import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import { putSeal } from "../kit/seal-fold.ts";
import { differClosing } from "./closed-twice.ts";

export const subject = "kit";
export const writers = HANDS;

/** The turnaround is closed, and the kit may not go. */
export const schema = ({ z, id, reason, sealNumber }: Shapes) =>
  z.strictObject({ turnaround: id, reason, seal: sealNumber.exactOptional() });
export type Body = BodyOf<typeof schema>;

/** Closed before, both lines differ. */
export function fold(draft: KitDraft, body: Body, entry: Entry): void {
  const { kit } = draft;
  const turnaround = draft.turnaround(body.turnaround, entry);
  const { reason, seal: number } = body;
  if (turnaround.closed) return differClosing(draft, turnaround.closed, "grounded", entry);
  const how = { ...markOf(entry), how: "grounded" as const, reason };
  draft.closeTurnaround(turnaround, number === undefined ? how : { ...how, seal: number });
  if (kit.custody.kind === "back") kit.custody = { kind: "here" };
  if (number !== undefined) putSeal(draft, number, entry);
}
