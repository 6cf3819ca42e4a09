import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ADMINISTRATORS } from "../kinds/writers.ts";
import type { Place } from "../state.ts";

export const subject = "place";
export const writers = ADMINISTRATORS;

/** A place where kits lie. */
export const schema = ({ z, countTo, line, zone }: Shapes) =>
  z.strictObject({
    name: line(80),
    /** How many ready kits it must hold. */
    strength: countTo(1_000),
    /** IANA time zone whose calendar day counts. */
    zone,
  });
export type Body = BodyOf<typeof schema>;

/** Set again it is open again. */
export function fold(place: Place, body: Body): Place {
  return { ...place, ...body, closed: false };
}
