import { z } from "zod";
import type { Said } from "./said.ts";
import { MOST_DRAWN, MOST_VISITED } from "./most.ts";
import { answer, countTo, id, note, reason, value } from "./schema-parts.ts";

/* What an assessor's visit says: the state keeps all of it as it was said. */

const SHARE = { error: "more than 0 and less than 1" };
const share = z.number({ error: "a number" }).gt(0, SHARE).lt(1, SHARE);

const visited = z.strictObject({
  kit: id,
  /** The closed turnaround in which the keeper wrote last. */
  turnaround: id,
  /** "id@version" of the pattern of that turnaround. */
  pattern: id,
  /** Checks of it that were drawn, in the pattern's order; absent on a kit that was not drawn. */
  lines: z
    .array(z.strictObject({ step: id, check: id }))
    .max(MOST_DRAWN)
    .exactOptional(),
});
/** A kit that could be drawn for a visit, and what its keeper wrote that it is compared with. */
export type VisitedKit = Said<typeof visited>;

export const visitBegun = z.strictObject({
  places: z.array(id).min(1, { error: "at least one place" }).max(100),
  /** Of seeing a line that is wrong, where `share` of them are [1]. */
  chance: share,
  /** Of lines that would be wrong [1]. */
  share,
  /** How many kits were to be drawn. */
  kits: countTo(MOST_VISITED),
  /** 16 figures and letters of chance. */
  seed: z.string().regex(/^[0-9a-f]{16}$/, { error: "16 figures and letters a to f" }),
  /** Every kit that could be drawn. */
  of: z.array(visited).min(1).max(MOST_VISITED),
  note: note.exactOptional(),
});
export type VisitBegun = Said<typeof visitBegun>;

export const lineReexamined = z
  .strictObject({
    kit: id,
    step: id,
    check: id,
    answer,
    value: value.exactOptional(),
    /** Required with "not-possible". */
    why: note.exactOptional(),
    note: note.exactOptional(),
    finding: id.exactOptional(),
  })
  .refine((given) => given.answer !== "not-possible" || given.why !== undefined, {
    error: "why it is not possible",
    path: ["why"],
  });
export type LineReexamined = Said<typeof lineReexamined>;

export const visitEnded = z.strictObject({ reason: reason.exactOptional() });
export type VisitEnded = Said<typeof visitEnded>;
