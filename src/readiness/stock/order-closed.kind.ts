import { dayWritten } from "#base";
import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";
import type { PartDraft } from "./part-draft.ts";

export const subject = "part";
export const writers = KEEPING_ROLES;

/** What has not come will not: the order is waited for no longer. */
export const schema = ({ z, id, reason }: Shapes) => z.strictObject({ order: id, reason });
export type Body = BodyOf<typeof schema>;

/** An order not yet heard of is closed too. */
export function fold(draft: PartDraft, { order: id, reason }: Body, entry: Entry): void {
  const order = draft.orders.get(id) ?? { ...markOf(entry), id, place: "", count: 0, day: dayWritten(entry.at) };
  draft.orders.set(id, { ...order, closed: { ...markOf(entry), reason } });
}
