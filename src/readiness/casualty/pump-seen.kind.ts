import type { Entry } from "#log";
import type { CasualtyDraft } from "../drafts/casualty-draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ON_SCENE } from "../kinds/writers.ts";

export const subject = "casualty";
export const writers = ON_SCENE;

/** What is seen of a pump: it changes no setting, and says whether to believe one. */
export const schema = ({ pumpSeen }: Shapes) => pumpSeen;
export type Body = BodyOf<typeof schema>;

/** It stands at the time at which it was seen. */
export function fold(draft: CasualtyDraft, body: Body, entry: Entry): void {
  draft.addPumpSeen(body, entry);
}
