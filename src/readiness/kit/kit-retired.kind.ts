import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";

export const subject = "kit";
export const writers = KEEPING_ROLES;

/** It is no kit any more. */
export const schema = ({ z, reason }: Shapes) => z.strictObject({ reason });
export type Body = BodyOf<typeof schema>;

/** For good. */
export function fold(draft: KitDraft, { reason }: Body, entry: Entry): void {
  draft.kit.retired = { ...markOf(entry), reason };
}
