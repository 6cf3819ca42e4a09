import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { CasualtyDraft } from "../drafts/casualty-draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ON_SCENE } from "../kinds/writers.ts";

export const subject = "casualty";
export const writers = ON_SCENE;

/** A boat calls that takes in water: a sheet is begun for her. */
export const schema = ({ z, boat, hole, situation, space, told, line, note }: Shapes) =>
  z.strictObject({
    name: line(120),
    boat,
    space,
    hole: hole.exactOptional(),
    told: told.exactOptional(),
    situation: situation.exactOptional(),
    note: note.exactOptional(),
  });
export type Body = BodyOf<typeof schema>;

/** What sorted before it, by a clock that was wrong, stays. */
export function fold(draft: CasualtyDraft, body: Body, entry: Entry): void {
  const { name, boat, space, hole, told, situation, note } = body;
  const known = { ...(hole && { hole }), ...(told && { told }), ...(situation && { situation }) };
  Object.assign(draft.state, { name, boat }, known, { opened: markOf(entry) });
  draft.putSpace(space);
  if (note !== undefined) draft.addNote({ ...markOf(entry), about: "boat", note });
}
