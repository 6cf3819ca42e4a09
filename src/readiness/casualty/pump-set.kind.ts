import type { Entry } from "#log";
import type { CasualtyDraft } from "../drafts/casualty-draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ON_SCENE } from "../kinds/writers.ts";

export const subject = "casualty";
export const writers = ON_SCENE;

/** How a pump is set from now on. */
export const schema = ({ pumpSet }: Shapes) => pumpSet;
export type Body = BodyOf<typeof schema>;

/** Its run before ends, and another begins where it runs. */
export function fold(draft: CasualtyDraft, body: Body, entry: Entry): void {
  draft.setPump(body, entry);
}
