import { isDate } from "#base";
import { STAGE_ORDER } from "#kit";
import { z } from "zod";
import { id, line, reason, span } from "./schema-parts.ts";

const stage = z.enum(STAGE_ORDER);

const tie = z.discriminatedUnion("to", [
  z.strictObject({ to: z.literal("stage"), stage, pattern: id.exactOptional() }),
  z.strictObject({ to: z.literal("step"), step: id, pattern: id }),
  z.strictObject({ to: z.literal("sheet") }),
]);

const SOME_TIES = { error: "1 to 40 stages or steps" };

/** Bodies of what a station says of its qualifications. */
export const qualificationSchemas = {
  "qualification-set": z.strictObject({
    name: line(80),
    ties: z.array(tie).min(1, SOME_TIES).max(40, SOME_TIES),
    every: span,
    seenBy: z.enum(["holders", "keepers"]),
    alone: z.enum(["with-note", "never"]),
  }),
  "qualification-retired": z.strictObject({ reason }),
};

/** Bodies of who saw a thing done. */
export const secondSchemas = {
  "second-named": z.strictObject({ turnaround: id, qualification: id, second: id }),
  "gone-on-alone": z.strictObject({ turnaround: id, qualification: id, note: reason }),
};

/** Bodies of what was done elsewhere. */
export const practiceSchemas = {
  "practice-told": z.strictObject({
    qualification: id,
    day: z.string().refine(isDate, { error: 'a day "2027-03-14"' }),
    how: reason,
    second: id.exactOptional(),
  }),
};
