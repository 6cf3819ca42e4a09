import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";
import type { Person } from "../state.ts";

export const subject = "person";
export const writers = KEEPING_ROLES;

const HOURS = { error: "0 to 168 hours a week" };

/** Hours a week for work on kits [h]. */
export const schema = ({ z }: Shapes) => z.strictObject({ hours: z.number(HOURS).min(0, HOURS).max(168, HOURS) });
export type Body = BodyOf<typeof schema>;

/** What is said last stands. */
export function fold(person: Person, { hours }: Body): Person {
  return { ...person, hours };
}
