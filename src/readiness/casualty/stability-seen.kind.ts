import type { CasualtyDraft } from "../drafts/casualty-draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ON_SCENE } from "../kinds/writers.ts";

export const subject = "casualty";
export const writers = ON_SCENE;

/** What is seen of her: angles and lengths as far as people can tell them. */
export const schema = ({ stabilitySeen }: Shapes) => stabilitySeen;
export type Body = BodyOf<typeof schema>;

/** The newest of each thing seen stands. */
export function fold({ state }: CasualtyDraft, body: Body): void {
  state.stability = { ...state.stability, ...body };
}
