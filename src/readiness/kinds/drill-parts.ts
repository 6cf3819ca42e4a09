import { z } from "zod";
import type { Said } from "./said.ts";
import { MOST_FAULTS } from "./most.ts";
import { id, line, note, reason, sealNumber, sealSeen } from "./schema-parts.ts";

/* What is said of a drill: the state keeps most of it as it was said. */

const drill = { drill: id };

const planted = z.strictObject({ item: id, mode: id, how: line(300) });
/** One fault planted for a drill: a mode of the kit's pattern, and what exactly was done to the item. */
export type PlantedFault = Said<typeof planted>;

/** Letters of a nonce: figures and capitals without I, L, O and U, so that it can be written down and typed again. */
const nonce = z.string().regex(/^[0-9A-HJKMNP-TV-Z]{20}$/, { error: "20 figures and capitals, without I, L, O and U" });

export const drillBegun = z.strictObject({
  ...drill,
  sealSeen,
  /** Ids of the people who are to find what is planted. */
  trainees: z.array(id).min(1, { error: "at least one person" }).max(20),
  note: note.exactOptional(),
});
export type DrillBegun = Said<typeof drillBegun>;

export const faultsPlanted = z.strictObject({
  ...drill,
  plant: id,
  /** Lower-case hex, as `commitmentOf` makes it. */
  commitment: z.string().regex(/^[0-9a-f]{64}$/, { error: "a SHA-256 in lower-case hex" }),
  /** Put on afterwards. */
  seal: sealNumber.exactOptional(),
});
export type FaultsPlanted = Said<typeof faultsPlanted>;

export const drillRevealed = z.strictObject({
  ...drill,
  plant: id,
  nonce,
  faults: z.array(planted).min(1).max(MOST_FAULTS),
});
export type DrillRevealed = Said<typeof drillRevealed>;

export const plantedRemoved = z.strictObject({
  ...drill,
  plant: id,
  /** Its number from 1 in the list in the order in which it is hashed. */
  fault: z.int({ error: "a whole number" }).min(1).max(MOST_FAULTS),
});
export type PlantedRemoved = Said<typeof plantedRemoved>;

export const drillFindingJudged = z.strictObject({
  ...drill,
  finding: id,
  /** Wrong all the same: it stays open. */
  real: z.boolean(),
  note: note.exactOptional(),
});
export type DrillFindingJudged = Said<typeof drillFindingJudged>;

export const drillEnded = z
  .strictObject({ ...drill, how: z.enum(["compared", "not-compared"]), reason: reason.exactOptional() })
  .refine((given) => given.how === "compared" || given.reason !== undefined, {
    error: "why it cannot be compared",
    path: ["reason"],
  });
export type DrillEnded = Said<typeof drillEnded>;
