import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";

export const subject = "kit";
export const writers = KEEPING_ROLES;

/** The kit's openings of the year, each anew; none where the list is empty. */
export const schema = ({ z, planned }: Shapes) =>
  z.strictObject({
    openings: z
      .array(planned)
      .max(110)
      .refine((all) => new Set(all.map((one) => one.id)).size === all.length, { error: "each opening by its own id" }),
  });
export type Body = BodyOf<typeof schema>;

/** What is planned last stands. */
export function fold(draft: KitDraft, { openings }: Body, entry: Entry): void {
  if (openings.length === 0) delete draft.kit.planned;
  else draft.kit.planned = { ...markOf(entry), openings };
}
