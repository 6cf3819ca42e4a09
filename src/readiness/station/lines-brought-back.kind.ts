import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { NOBODY } from "../kinds/writers.ts";
import type { StationDraft } from "./station-draft.ts";

export const subject = "station";
/** The server writes it itself when it takes such lines. */
export const writers = NOBODY;

/**
 * Lines that the station's database had lost, given back by the device that this line names, which held them. `vouched`:
 * the station once kept them; `word`: nothing shows that, an administrator says so.
 */
export const schema = ({ z, id }: Shapes) =>
  z.strictObject({ lines: z.array(id).min(1).max(500), by: z.enum(["vouched", "word"]) });
export type Body = BodyOf<typeof schema>;

/** They stand among the lines that came by another way. */
export function fold(station: StationDraft, { lines, by }: Body, entry: Entry): void {
  station.bringBack({ ...markOf(entry), lines, how: by });
}
