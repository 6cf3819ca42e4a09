import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";
import type { Qualification } from "./qualification.ts";

export const subject = "qualification";
export const writers = KEEPING_ROLES;

/** Nothing asks for it any more. */
export const schema = ({ z, reason }: Shapes) => z.strictObject({ reason });
export type Body = BodyOf<typeof schema>;

/** Nothing is known of a qualification that was never set. */
export function fold(before: Qualification | undefined, body: Body, entry: Entry): Qualification | undefined {
  return before && { ...before, retired: { ...markOf(entry), ...body } };
}
