import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";
import type { PartDraft } from "./part-draft.ts";

export const subject = "part";
export const writers = KEEPING_ROLES;

/** What a part is: written whole each time it is set. */
export const schema = ({ partSetting }: Shapes) => partSetting;
export type Body = BodyOf<typeof schema>;

/** Set again it is back. */
export function fold(draft: PartDraft, body: Body): void {
  draft.own = { id: draft.own.id, ...body };
}
