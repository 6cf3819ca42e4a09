import type { Entry } from "#log";
import type { CasualtyDraft } from "../drafts/casualty-draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ON_SCENE } from "../kinds/writers.ts";

export const subject = "casualty";
export const writers = ON_SCENE;

/** What starting and priming a pump took: pulls of the cord, seconds from the first stroke to water. */
export const schema = ({ pumpStartTold }: Shapes) => pumpStartTold;
export type Body = BodyOf<typeof schema>;

/** It stands at the time at which it was done. */
export function fold(draft: CasualtyDraft, body: Body, entry: Entry): void {
  draft.addStart(body, entry);
}
