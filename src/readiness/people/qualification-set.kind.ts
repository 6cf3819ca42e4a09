import { parseSpan } from "#base";
import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";
import { idOf } from "../subject-id.ts";
import type { Qualification } from "./qualification.ts";

export const subject = "qualification";
export const writers = KEEPING_ROLES;

/** Every part anew: what is amended is written whole. */
export const schema = ({ z, ties, line, span }: Shapes) =>
  z.strictObject({
    name: line(80),
    ties,
    /** Who held it still holds it so long after doing it, as a span. */
    every: span,
    /** Who may be the second person: who holds it; or keepers too. */
    seenBy: z.enum(["holders", "keepers"]),
    /** Whether who does not hold it may go on with a note where nobody saw it done. */
    alone: z.enum(["with-note", "never"]),
  });
export type Body = BodyOf<typeof schema>;

/** Set again it is back; it counts since it was first set. */
export function fold(before: Qualification | undefined, { every, ...said }: Body, entry: Entry): Qualification {
  const since = before?.since ?? markOf(entry);
  return { id: idOf(entry.subject), ...said, every: parseSpan(every, "every"), since };
}
