import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { CasualtyDraft } from "../drafts/casualty-draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ON_SCENE } from "../kinds/writers.ts";

export const subject = "casualty";
export const writers = ON_SCENE;

/**
 * Another sheet is of this same casualty: both are read as one from here on. Striking this line parts them again. A kit
 * is known by its own id; spaces and other pumps are the same only where they are named here.
 */
export const schema = ({ casualtyJoined }: Shapes) => casualtyJoined;
export type Body = BodyOf<typeof schema>;

/** What comes of it is read from all lines of both sheets: see `join`. */
export function fold(draft: CasualtyDraft, body: Body, entry: Entry): void {
  draft.addJoin({ ...markOf(entry), ...body });
}
