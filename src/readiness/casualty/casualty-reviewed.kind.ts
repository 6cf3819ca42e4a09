import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { CasualtyDraft } from "../drafts/casualty-draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";

export const subject = "casualty";
export const writers = KEEPING_ROLES;

/** The closed sheet was gone through; what had been forecast and what came, kept for the scores. */
export const schema = ({ casualtyReviewed }: Shapes) => casualtyReviewed;
export type Body = BodyOf<typeof schema>;

/** The last line that says so stands. */
export function fold({ state }: CasualtyDraft, body: Body, entry: Entry): void {
  state.reviewed = { ...markOf(entry), ...body };
}
