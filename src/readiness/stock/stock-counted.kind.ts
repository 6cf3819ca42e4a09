import { dayWritten } from "#base";
import type { Entry } from "#log";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { WATCHERS } from "../kinds/writers.ts";
import type { PartDraft } from "./part-draft.ts";

export const subject = "part";
export const writers = WATCHERS;

/** What was on the shelf, all of it: from here on this is the truth. */
export const schema = ({ z, fromSheet, id, note, foundLots }: Shapes) =>
  z.strictObject({
    place: id,
    found: foundLots,
    note: note.exactOptional(),
    /** Told by a sheet: nobody here counted it. */
    sheet: fromSheet.exactOptional(),
  });
export type Body = BodyOf<typeof schema>;

/** It stands on the day on which it was written. */
export function fold(draft: PartDraft, { place, found }: Body, entry: Entry): void {
  draft.putLine({ what: "counted", place, found }, dayWritten(entry.at), entry);
}
