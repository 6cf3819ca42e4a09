import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";
import type { Person } from "../state.ts";

export const subject = "person";
/** Of others than oneself, by whoever decides for others. */
export const writers = KEEPING_ROLES;

/** Done on this day away from a turnaround and a casualty, in the keeper's words: a course, a drill, at another station. */
export const schema = ({ practiceTold }: Shapes) => practiceTold;
export type Body = BodyOf<typeof schema>;

/** It stands beside what was told before. */
export function fold(person: Person, body: Body, entry: Entry): Person {
  return { ...person, told: [...(person.told ?? []), { ...markOf(entry), ...body }] };
}
