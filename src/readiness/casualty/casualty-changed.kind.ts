import type { CasualtyDraft } from "../drafts/casualty-draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ON_SCENE } from "../kinds/writers.ts";

export const subject = "casualty";
export const writers = ON_SCENE;

/** What is better known now; a space of a new id is a further one. */
export const schema = ({ z, boat, hole, situation, space, line }: Shapes) =>
  z.strictObject({
    name: line(120).exactOptional(),
    boat: boat.exactOptional(),
    space: space.exactOptional(),
    hole: hole.exactOptional(),
    /** What is named here replaces what stood of it. */
    situation: situation.exactOptional(),
  });
export type Body = BodyOf<typeof schema>;

/** What is not said stays. */
export function fold(draft: CasualtyDraft, { space, situation, ...changed }: Body): void {
  const said = situation && { situation: { ...draft.state.situation, ...situation } };
  Object.assign(draft.state, changed, said);
  if (space) draft.putSpace(space);
}
