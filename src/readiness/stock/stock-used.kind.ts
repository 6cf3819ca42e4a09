import type { Entry } from "#log";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import type { PartDraft } from "./part-draft.ts";

export const subject = "part";
export const writers = HANDS;

/** Taken off the shelf otherwise than into an item of a kit. */
export const schema = ({ z, note, onShelf }: Shapes) => z.strictObject({ ...onShelf, note });
export type Body = BodyOf<typeof schema>;

/** So many fewer from its day on. */
export function fold(draft: PartDraft, { note: because, day, ...body }: Body, entry: Entry): void {
  draft.putLine({ what: "used", because, ...body }, day, entry);
}
