import type { Entry } from "#log";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import type { PartDraft } from "./part-draft.ts";

export const subject = "part";
export const writers = HANDS;

/** It came, and lies on the shelf of a place. */
export const schema = ({ z, dayOrMonth, id, note, onShelf }: Shapes) =>
  z.strictObject({
    ...onShelf,
    /** Date printed on it: a day, or a month that means its last day. */
    printed: dayOrMonth.exactOptional(),
    /** Id of the order that it answers. */
    order: id.exactOptional(),
    note: note.exactOptional(),
  });
export type Body = BodyOf<typeof schema>;

/** So many more from its day on. */
export function fold(draft: PartDraft, { note: _note, day, ...body }: Body, entry: Entry): void {
  draft.putLine({ what: "received", ...body }, day, entry);
}
