import type { KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";

export const subject = "kit";
export const writers = KEEPING_ROLES;

/** Another name for the same container. */
export const schema = ({ z, line }: Shapes) => z.strictObject({ name: line(80) });
export type Body = BodyOf<typeof schema>;

/** The last name stands. */
export function fold(draft: KitDraft, { name }: Body): void {
  draft.kit.name = name;
}
