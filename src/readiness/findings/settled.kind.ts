import type { Entry } from "#log";
import type { KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";
import { letStand, type Apply } from "./settle-fold.ts";

export const subject = "kit";
export const writers = KEEPING_ROLES;

/** A difference between two devices looked at and decided; names the entry that stands. */
export const schema = ({ z, id, reason }: Shapes) =>
  z.strictObject({ entries: z.array(id).min(2).max(50), stands: id, reason });
export type Body = BodyOf<typeof schema>;

/**
 * Closes the differences whose entries were all looked at, and lets the entry that stands say its piece last.
 * A difference to which a further entry has come since stays to be settled.
 */
export function fold(draft: KitDraft, body: Body, _entry: Entry, apply: Apply): void {
  const settled = draft.takeSettled(body.stands, new Set(body.entries));
  const stands = draft.history.entry(body.stands);
  if (stands) for (const difference of settled) letStand(draft, difference, stands, apply);
}
