import type { Entry } from "#log";
import type { CasualtyDraft } from "../drafts/casualty-draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ON_SCENE } from "../kinds/writers.ts";

export const subject = "casualty";
export const writers = ON_SCENE;

/** Level above the lowest point of the space [m]. */
export const schema = ({ soundingTaken }: Shapes) => soundingTaken;
export type Body = BodyOf<typeof schema>;

/** It stands at the time at which it was read. */
export function fold(draft: CasualtyDraft, body: Body, entry: Entry): void {
  draft.addSounding(body, entry);
}
