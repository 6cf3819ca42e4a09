import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";
import type { PartDraft } from "./part-draft.ts";

export const subject = "part";
export const writers = KEEPING_ROLES;

/** Ordered for a place. */
export const schema = ({ z, day, id, note, count }: Shapes) =>
  z.strictObject({
    order: id,
    place: id,
    count,
    day,
    /** Day on which it is promised. */
    expected: day.exactOptional(),
    note: note.exactOptional(),
  });
export type Body = BodyOf<typeof schema>;

/** An order that was closed by a line that sorts before stays closed. */
export function fold(draft: PartDraft, { order: id, ...body }: Body, entry: Entry): void {
  const closed = draft.orders.get(id)?.closed;
  draft.orders.set(id, { ...markOf(entry), id, ...body, ...(closed && { closed }) });
}
