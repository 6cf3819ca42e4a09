import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ADMINISTRATORS } from "../kinds/writers.ts";
import type { Person } from "../state.ts";

export const subject = "person";
export const writers = ADMINISTRATORS;

/** Another name or role. */
export const schema = ({ z, line, role }: Shapes) =>
  z.strictObject({ name: line(80).exactOptional(), role: role.exactOptional() });
export type Body = BodyOf<typeof schema>;

/** What is not said stays. */
export function fold(person: Person, body: Body): Person {
  return { ...person, ...body };
}
