import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import { noteDrawn } from "../stock/note-drawn.ts";
import { putItem } from "./contents-fold.ts";

export const subject = "kit";
export const writers = HANDS;

/** An item fitted in a turnaround, or outside one. */
export const schema = ({ id, itemFitted, drawn }: Shapes) =>
  itemFitted.extend({
    /** The shelf it was taken off; absent where it came from no shelf of the station. */
    drawn: drawn.exactOptional(),
    /** Id of the kit it was taken from. */
    robbed: id.exactOptional(),
  });
export type Body = BodyOf<typeof schema>;

/** What is fitted last is in the kit; fitted on two devices with different dates they differ. */
export function fold(draft: KitDraft, body: Body, entry: Entry): void {
  const before = draft.kit.contents[body.item];
  const differs = before && (before.printed !== body.printed || before.fitted !== body.fitted);
  if (before && differs && draft.isBlindTo(before.mark, entry)) {
    const about = "The same item was fitted on two devices, with different dates.";
    draft.differ({ what: "contents", about, item: body.item }, [before.mark, markOf(entry)]);
  }
  putItem(draft, body, entry);
  noteDrawn(draft, { ...body, count: body.quantity }, entry);
}
