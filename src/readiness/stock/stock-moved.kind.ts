import type { Entry } from "#log";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import type { PartDraft } from "./part-draft.ts";

export const subject = "part";
export const writers = HANDS;

/** From the shelf of one place to that of another. */
export const schema = ({ z, day, id, count, lot }: Shapes) =>
  z
    .strictObject({ from: id, to: id, count, day, lot: lot.exactOptional() })
    .refine(({ from, to }) => from !== to, { error: "another place than it comes from", path: ["to"] });
export type Body = BodyOf<typeof schema>;

/** So many fewer here and more there from its day on. */
export function fold(draft: PartDraft, { from: place, day, ...body }: Body, entry: Entry): void {
  draft.putLine({ what: "moved", place, ...body }, day, entry);
}
