import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import { keepDates } from "./date-fold.ts";

export const subject = "kit";
export const writers = HANDS;

/** A date looked for on an item that is in the kit: at a line of a turnaround, or outside one. */
export const schema = ({ dateReadAt }: Shapes) => dateReadAt;
export type Body = BodyOf<typeof schema>;

/** It stands beside others of the same item; read differently on two devices they differ. */
export function fold(draft: KitDraft, body: Body, entry: Entry): void {
  const before = draft.kit.dates?.[body.item];
  const differs = before?.[body.of] !== undefined && body.date !== undefined && before[body.of] !== body.date;
  if (before && differs && draft.isBlindTo(before.mark, entry)) {
    const about = "The date of the same item was read differently on two devices.";
    draft.differ({ what: "contents", about, item: body.item }, [before.mark, markOf(entry)]);
  }
  keepDates(draft, body, entry);
}
