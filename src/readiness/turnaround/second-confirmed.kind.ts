import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";

export const subject = "kit";
/** By the second person alone. */
export const writers = HANDS;

/** The writer saw done what they were named for in the line `named`. */
export const schema = ({ z, id }: Shapes) =>
  z.strictObject({
    turnaround: id,
    named: id,
    /** By their PIN, typed on the doer's device and proved by the station, which wrote this line; else on a device of their own. */
    byPin: z.literal(true).exactOptional(),
  });
export type Body = BodyOf<typeof schema>;

/** It stands beside what was named, whichever comes first, and counts only where it is the named person's. */
export function fold(draft: KitDraft, { turnaround: id, named, byPin }: Body, entry: Entry): void {
  const turnaround = draft.turnaround(id, entry);
  const confirmed = draft.list(turnaround.confirmed);
  confirmed.push({ ...markOf(entry), named, ...(byPin && { byPin }) });
  turnaround.confirmed = confirmed;
}
