import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ADMINISTRATORS } from "../kinds/writers.ts";
import type { Person } from "../state.ts";

export const subject = "person";
export const writers = ADMINISTRATORS;

/** Writes no lines here any more. */
export const schema = ({ z, reason }: Shapes) => z.strictObject({ reason: reason.exactOptional() });
export type Body = BodyOf<typeof schema>;

/** Until they join again. */
export function fold(person: Person): Person {
  return { ...person, left: true };
}
