import { isDate, weekdayOf } from "#base";
import { z } from "zod";
import type { Said } from "./said.ts";
import { day, id, line } from "./schema-parts.ts";

/* Words of what is said of work that is due, where the state keeps it as it was said. */

const monday = day.refine((text) => isDate(text) && weekdayOf(text) === 1, { error: "the Monday of a week" });

export const work = z.enum(["opening", "muster", "return", "settle"]);
/** Which work on a kit: one opening settles all that needs its container opened. */
export type WorkKind = Said<typeof work>;

export const planned = z.strictObject({
  /** The same when the opening is moved. */
  id,
  /** The Monday of its week. */
  week: monday,
  /** Names of what is renewed or done then. */
  renews: z.array(line(100)).max(60),
  /** Persons who share the work. */
  by: z.array(id).max(50),
  /** True where a person chose the week: planning again goes round it. */
  fixed: z.boolean().exactOptional(),
});
/** One opening that was planned and accepted. */
export type PlannedWork = Said<typeof planned>;
