import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ADMINISTRATORS } from "../kinds/writers.ts";
import type { Place } from "../state.ts";

export const subject = "place";
export const writers = ADMINISTRATORS;

/** No kit lies there any more. */
export const schema = ({ z, reason }: Shapes) => z.strictObject({ reason });
export type Body = BodyOf<typeof schema>;

/** Closed until it is set again. */
export function fold(place: Place): Place {
  return { ...place, closed: true };
}
