import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { CasualtyDraft } from "../drafts/casualty-draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ROLES } from "../kinds/writers.ts";

export const subject = "casualty";
/** Whoever was there, or watched. */
export const writers = ROLES;

/** What somebody adds afterwards, when the closed sheet is gone through. */
export const schema = ({ reviewNoted }: Shapes) => reviewNoted;
export type Body = BodyOf<typeof schema>;

/** It stands beside what was added before it. */
export function fold(draft: CasualtyDraft, body: Body, entry: Entry): void {
  draft.addReviewNote({ ...markOf(entry), ...body });
}
