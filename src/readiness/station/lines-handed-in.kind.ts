import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { NOBODY } from "../kinds/writers.ts";
import type { StationDraft } from "./station-draft.ts";

export const subject = "station";
/** The server writes it itself when it takes such lines. */
export const writers = NOBODY;

/**
 * Lines of a casualty's sheet that another device wrote and handed, by code or file, to the device that this line names.
 * Nothing shows that their writers wrote them: the administrator that this line names says so.
 */
export const schema = ({ z, id }: Shapes) => z.strictObject({ lines: z.array(id).min(1).max(500) });
export type Body = BodyOf<typeof schema>;

/** They stand among the lines that came by another way. */
export function fold(station: StationDraft, { lines }: Body, entry: Entry): void {
  station.bringBack({ ...markOf(entry), lines, how: "handed" });
}
