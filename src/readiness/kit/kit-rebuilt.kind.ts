import type { Entry } from "#log";
import type { KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";

export const subject = "kit";
export const writers = KEEPING_ROLES;

/** Built to another version of its pattern: the one that the line names. */
export const schema = ({ z, reason }: Shapes) => z.strictObject({ reason });
export type Body = BodyOf<typeof schema>;

/** From here on it is that version. */
export function fold(draft: KitDraft, _body: Body, entry: Entry): void {
  if (entry.pattern !== undefined) draft.kit.pattern = entry.pattern;
}
