import { isDate, weekdayOf } from "#base";
import { z } from "zod";
import { day, id, line, note, reason } from "./schema-parts.ts";

const monday = day.refine((text) => isDate(text) && weekdayOf(text) === 1, { error: "the Monday of a week" });
const work = z.enum(["opening", "muster", "return", "settle"]);
const HOURS = { error: "0 to 168 hours a week" };

const planned = z.strictObject({
  id,
  week: monday,
  renews: z.array(line(100)).max(60),
  by: z.array(id).max(50),
  fixed: z.boolean().exactOptional(),
});

/** Bodies of what is said of work that is due, of the plan and of people's time. */
export const workSchemas = {
  "work-taken": z.strictObject({ work, person: id.exactOptional() }),
  "work-dated": z.strictObject({ work, day: day.exactOptional() }),
  "work-put-off": z.strictObject({ work, until: day, reason }),
  "openings-planned": z.strictObject({
    openings: z
      .array(planned)
      .max(110)
      .refine((all) => new Set(all.map((one) => one.id)).size === all.length, { error: "each opening by its own id" }),
  }),
};

/** Bodies of what is said of people's time. */
export const timeSchemas = {
  "hours-set": z.strictObject({ hours: z.number(HOURS).min(0, HOURS).max(168, HOURS) }),
  "absence-set": z
    .strictObject({ from: day, to: day, note: note.exactOptional() })
    .refine(({ from, to }) => from <= to, { error: "a last day that is not before the first", path: ["to"] }),
};
