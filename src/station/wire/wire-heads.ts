import { z } from "zod";
import { signedHeadShape } from "#log";

/** `GET /api/log/heads?seen=...` -> {@link HeadsReply}: `seen` is the JSON of the number kept of each place. */
export const headsQuery = z.object({ seen: z.string().max(20_000).optional() });

const hash = z.string().regex(/^[0-9a-f]{64}$/, "lower-case hex SHA-256");

export const headsReply = z.object({
  /** Every public key of the station, oldest first; each after the first is vouched for by one before it. */
  keys: z.array(z.object({ key: hash, since: z.string(), after: hash.optional(), signature: z.string().optional() })),
  /** The newest head of each place, and that it begins with what the asker keeps (RFC 9162, section 2.1.4). */
  heads: z.array(z.object({ head: signedHeadShape, proof: z.array(hash) })),
});
export type HeadsReply = z.infer<typeof headsReply>;

/** `POST /api/witness/NAME`: heads of another station's log, for this one to keep. */
export const keepHeadsRequest = z.strictObject({ heads: z.array(signedHeadShape).min(1).max(100) });
export const keepHeadsReply = z.object({ kept: z.number().int().describe("how many were not kept already") });
