import { z } from "zod";
import { id, line, note, reason, sealNumber, sealSeen } from "./schema-parts.ts";

/** Faults in one plant at most; so many that none is lost, so few that a device never waits for them. */
export const MOST_FAULTS = 20;

const drill = { drill: id };
const planted = z.strictObject({ item: id, mode: id, how: line(300) });
const number = z.int({ error: "a whole number" }).min(1).max(MOST_FAULTS);

/** Letters of a nonce: figures and capitals without I, L, O and U, so that it can be written down and typed again. */
const nonce = z.string().regex(/^[0-9A-HJKMNP-TV-Z]{20}$/, { error: "20 figures and capitals, without I, L, O and U" });

/** Bodies of what is said of a drill. */
export const drillSchemas = {
  "drill-begun": z.strictObject({
    ...drill,
    sealSeen,
    trainees: z.array(id).min(1, { error: "at least one person" }).max(20),
    note: note.exactOptional(),
  }),
  "faults-planted": z.strictObject({
    ...drill,
    plant: id,
    commitment: z.string().regex(/^[0-9a-f]{64}$/, { error: "a SHA-256 in lower-case hex" }),
    seal: sealNumber.exactOptional(),
  }),
  "drill-revealed": z.strictObject({ ...drill, plant: id, nonce, faults: z.array(planted).min(1).max(MOST_FAULTS) }),
  "planted-removed": z.strictObject({ ...drill, plant: id, fault: number }),
  "drill-finding-judged": z.strictObject({ ...drill, finding: id, real: z.boolean(), note: note.exactOptional() }),
  "drill-ended": z
    .strictObject({ ...drill, how: z.enum(["compared", "not-compared"]), reason: reason.exactOptional() })
    .refine((given) => given.how === "compared" || given.reason !== undefined, {
      error: "why it cannot be compared",
      path: ["reason"],
    }),
};
