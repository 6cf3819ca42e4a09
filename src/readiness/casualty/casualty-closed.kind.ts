import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { CasualtyDraft } from "../drafts/casualty-draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ON_SCENE } from "../kinds/writers.ts";

export const subject = "casualty";
export const writers = ON_SCENE;

/** How it ended, or how it left our hands. */
export const schema = ({ casualtyClosed }: Shapes) => casualtyClosed;
export type Body = BodyOf<typeof schema>;

/** Every run of a pump ends with it. */
export function fold({ state, pumps }: CasualtyDraft, body: Body, entry: Entry): void {
  state.closed = { ...markOf(entry), ...body };
  pumps.endRuns(entry.at);
}
