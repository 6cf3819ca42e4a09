import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";
import type { PartDraft } from "./part-draft.ts";

export const subject = "part";
export const writers = KEEPING_ROLES;

/** It is kept no more. */
export const schema = ({ z, reason }: Shapes) => z.strictObject({ reason });
export type Body = BodyOf<typeof schema>;

/** What lies on shelves stays counted. */
export function fold(draft: PartDraft, { reason }: Body, entry: Entry): void {
  draft.own = { ...draft.own, retired: { ...markOf(entry), reason } };
}
