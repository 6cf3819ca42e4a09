import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { NOBODY } from "../kinds/writers.ts";
import type { StationDraft } from "./station-draft.ts";

export const subject = "station";
/** The shell writes it when it takes such lines. */
export const writers = NOBODY;

/**
 * Lines from a file that nothing shows this station to have had, taken in at the station's own terminal. `bringer`: their writer brought
 * them, and is who this line names; `word`: the administrator whom this line names says so.
 */
export const schema = ({ z, id }: Shapes) =>
  z.strictObject({
    lines: z.array(id).min(1).max(500),
    by: z.enum(["bringer", "word"]),
    /** Ids of the devices on which they were written; absent in lines of before 0.3. */
    from: z.array(id).min(1).max(500).exactOptional(),
  });
export type Body = BodyOf<typeof schema>;

/** They stand among the lines that came by another way. */
export function fold(station: StationDraft, { lines, by, from }: Body, entry: Entry): void {
  station.bringBack({ ...markOf(entry), lines, how: `file-${by}`, ...(from && { from }) });
}
