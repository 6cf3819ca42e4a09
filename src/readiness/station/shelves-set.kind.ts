import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";
import type { Place } from "../state.ts";

export const subject = "place";
export const writers = KEEPING_ROLES;

/** Every shelf anew, in the order in which a muster goes round; kits on none of them come last. */
export const schema = ({ z, shelves }: Shapes) => z.strictObject({ shelves });
export type Body = BodyOf<typeof schema>;

/** What is set last stands whole. */
export function fold(place: Place, body: Body): Place {
  return { ...place, ...body };
}
