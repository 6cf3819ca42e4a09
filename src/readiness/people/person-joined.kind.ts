import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ADMINISTRATORS } from "../kinds/writers.ts";
import type { Person } from "../state.ts";

export const subject = "person";
export const writers = ADMINISTRATORS;

/** Somebody who writes lines. No secret is ever in the log. */
export const schema = ({ z, fromSheet, line, role }: Shapes) =>
  z.strictObject({ name: line(80), role, sheet: fromSheet.exactOptional() });
export type Body = BodyOf<typeof schema>;

/** Who left may join again. */
export function fold(person: Person, body: Body): Person {
  return { ...person, ...body, left: false };
}
