import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { CasualtyDraft } from "../drafts/casualty-draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ON_SCENE } from "../kinds/writers.ts";

export const subject = "casualty";
export const writers = ON_SCENE;

/** She is taken in tow, or the tow is cast off: way through the water changes what comes in. */
export const schema = ({ towSet }: Shapes) => towSet;
export type Body = BodyOf<typeof schema>;

/** The last line about a tow stands. */
export function fold({ state }: CasualtyDraft, body: Body, entry: Entry): void {
  state.tow = { ...markOf(entry), ...body };
}
