import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { CasualtyDraft } from "../drafts/casualty-draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ON_SCENE } from "../kinds/writers.ts";

export const subject = "casualty";
export const writers = ON_SCENE;

/** Something seen or heard, in the words of who writes it. */
export const schema = ({ casualtyNoted }: Shapes) => casualtyNoted;
export type Body = BodyOf<typeof schema>;

/** It stands beside the notes before it. */
export function fold(draft: CasualtyDraft, body: Body, entry: Entry): void {
  draft.addNote({ ...markOf(entry), ...body });
}
