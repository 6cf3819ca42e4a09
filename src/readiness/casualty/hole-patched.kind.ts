import type { Entry } from "#log";
import type { CasualtyDraft } from "../drafts/casualty-draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ON_SCENE } from "../kinds/writers.ts";

export const subject = "casualty";
export const writers = ON_SCENE;

/** Share of the hole still open after plugging or patching; 1 where a patch is lost. */
export const schema = ({ holePatched }: Shapes) => holePatched;
export type Body = BodyOf<typeof schema>;

/** It stands at the time at which it was put. */
export function fold(draft: CasualtyDraft, body: Body, entry: Entry): void {
  draft.addPatch(body, entry);
}
