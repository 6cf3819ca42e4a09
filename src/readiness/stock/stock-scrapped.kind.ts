import type { Entry } from "#log";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import type { PartDraft } from "./part-draft.ts";

export const subject = "part";
export const writers = HANDS;

/** Thrown away unused. */
export const schema = ({ z, reason, onShelf }: Shapes) => z.strictObject({ ...onShelf, reason });
export type Body = BodyOf<typeof schema>;

/** So many fewer from its day on. */
export function fold(draft: PartDraft, { reason: because, day, ...body }: Body, entry: Entry): void {
  draft.putLine({ what: "scrapped", because, ...body }, day, entry);
}
