import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ROLES } from "../kinds/writers.ts";

/** Struck is a line of any subject; the log itself leaves it out of every fold. */
export const subject = "any";
/** One's own lines; other people's are for keepers: see `judgeEntry`. */
export const writers = ROLES;

/** An earlier line does not count. */
export const schema = ({ z, id, reason }: Shapes) => z.strictObject({ entry: id, reason });
export type Body = BodyOf<typeof schema>;
