import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ADMINISTRATORS } from "../kinds/writers.ts";
import type { StationDraft } from "./station-draft.ts";

export const subject = "station";
export const writers = ADMINISTRATORS;

/** What the station calls itself. */
export const schema = ({ z, line }: Shapes) => z.strictObject({ name: line(80) });
export type Body = BodyOf<typeof schema>;

/** The last name stands. */
export function fold(station: StationDraft, { name }: Body): void {
  station.rename(name);
}
