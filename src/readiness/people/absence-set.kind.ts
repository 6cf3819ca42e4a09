import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { WATCHERS } from "../kinds/writers.ts";
import type { Person } from "../state.ts";

export const subject = "person";
/** One's own; other people's are for keepers: see `judgeEntry`. */
export const writers = WATCHERS;

/** Away, both days included. */
export const schema = ({ z, day, note }: Shapes) =>
  z
    .strictObject({ from: day, to: day, note: note.exactOptional() })
    .refine(({ from, to }) => from <= to, { error: "a last day that is not before the first", path: ["to"] });
export type Body = BodyOf<typeof schema>;

/** Further days; those said before stay. */
export function fold(person: Person, body: Body, entry: Entry): Person {
  return { ...person, away: [...(person.away ?? []), { ...markOf(entry), ...body }] };
}
