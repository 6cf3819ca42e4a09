import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import { putSeal } from "../kit/seal-fold.ts";
import { putBackDrawn } from "../stock/note-drawn.ts";
import { differClosing } from "./closed-twice.ts";

export const subject = "kit";
export const writers = HANDS;

/** The turnaround is closed, and the kit may not go. */
export const schema = ({ z, id, reason, sealNumber }: Shapes) =>
  z.strictObject({ turnaround: id, reason, seal: sealNumber.exactOptional() });
export type Body = BodyOf<typeof schema>;

/** Closed before, both lines differ. Closed without a number no seal was fitted: none came off a shelf for it. */
export function fold(draft: KitDraft, body: Body, entry: Entry): void {
  const { kit } = draft;
  const turnaround = draft.turnaround(body.turnaround, entry);
  const { reason, seal: number } = body;
  if (turnaround.closed) return differClosing(draft, turnaround.closed, "grounded", entry);
  const how = { ...markOf(entry), how: "grounded" as const, reason };
  draft.closeTurnaround(turnaround, number === undefined ? how : { ...how, seal: number });
  if (kit.custody.kind === "back") kit.custody = { kind: "here" };
  if (number !== undefined) putSeal(draft, number, entry);
  else putBackDrawn(draft, body.turnaround, sealsOf(draft, entry));
}

/** The items whose number a look holds against the seal on record. */
function sealsOf(draft: KitDraft, entry: Entry): ReadonlySet<string> {
  const checks = draft.patternAt(entry)?.checks ?? [];
  return new Set(checks.flatMap((one) => (one.kind === "match" && one.against === "recorded-seal" ? [one.item] : [])));
}
