import { z } from "zod";
import type { ChainHead, KeptEntry } from "#log";
import { PULL_LIMIT, PUSH_LIMIT } from "./wire-words.ts";

/**
 * How a device and a station find out that they hold different logs, and become one again: after a backup was put back,
 * after a database failed over to one that lagged behind. Numbers alone do not tell; number and chain hash do.
 */

const hash = z.string().regex(/^[0-9a-f]{64}$/, "lower-case hex SHA-256");
const place = z.string().max(64);

/** A line's number in its place, and the chain's hash there. */
const head = z.strictObject({ seq: z.number().int().positive(), hash });
/** The head before a line: number 0 and the place's genesis before the first. */
const headBefore = z.strictObject({ seq: z.number().int().nonnegative(), hash });

/**
 * The station's word, good only with itself, that it once kept this line, or this line under this number after all those
 * before it. "EPOCH.HMAC": a device cannot make one, and a copy of the database that is put back still knows its own.
 */
export const voucher = z.string().max(200);

/** Where a device's copy of each place ends. */
export const heldHeads = z.record(place, head);
export type HeldHeads = Readonly<Record<string, ChainHead>>;

/** A head with the station's word for it. */
export const vouchedHead = z.object({ place, seq: z.number().int(), hash, voucher });
export type VouchedHead = z.infer<typeof vouchedHead>;

/** `POST /api/log/pull` -> {@link PullPage}: what follows on what the device holds. */
export const pullPageRequest = z.strictObject({
  held: heldHeads,
  /** Places whose head the device has no voucher for. */
  unvouched: z.array(place).max(10_000).optional(),
  limit: z.number().int().min(1).max(PULL_LIMIT).optional(),
});
export type PullPageRequest = z.infer<typeof pullPageRequest>;

export const pullPage = z.object({
  entries: z.array(z.custom<KeptEntry>()),
  /** True where there is more to pull at once. */
  more: z.boolean(),
  /** Which life of its database the station is in: another one than before, and what was sent must be offered again. */
  epoch: z.string(),
  /** Vouchers for where the device stands after these entries, of places touched or asked for. */
  heads: z.array(vouchedHead),
  /** Places where what the device holds is not in the station's log: then there are no entries. */
  apart: z.array(place),
  /** Which patterns the station has: another mark than before, and there are others. */
  patterns: z.string().optional(),
});
export type PullPage = z.infer<typeof pullPage>;

/** The most heads of one place in one question after the last in common: every second, fourth, eighth ... line. */
export const COMMON_LIMIT = 80;

/** `POST /api/log/common` -> {@link CommonReply}: the greatest number of each place that both hold; 0 for none. */
export const commonRequest = z.strictObject({ places: z.record(place, z.array(head).max(COMMON_LIMIT)) });
export type CommonRequest = z.infer<typeof commonRequest>;
export const commonReply = z.object({ common: z.record(place, z.number().int().nonnegative()) });
export type CommonReply = z.infer<typeof commonReply>;

/**
 * `POST /api/log/bring-back` -> {@link BringBackReply}: lines that the station does not have any more.
 *
 * `run`: lines of one place without a gap, as they stood in the chain, with the head before them and a voucher for the
 * head at their end. The chain proves each of them, and the head before them, for which a voucher comes back: a long
 * run is proved from its end, part by part (`only: "prove"`: a voucher comes back and nothing is kept), and then kept from
 * its beginning, so that every line follows on what it followed on. `lines`: each with a voucher of its own. `word`: without, by the word of the
 * administrator who is signed in. `handed`: by such a word too, lines of sheets that another device handed over and the
 * station never had.
 */
export const bringBackRequest = z.discriminatedUnion("by", [
  z.strictObject({
    by: z.literal("run"),
    only: z.literal("prove").optional(),
    before: headBefore,
    lines: z.array(z.unknown()).min(1).max(PUSH_LIMIT),
    voucher,
  }),
  z.strictObject({
    by: z.literal("lines"),
    lines: z
      .array(z.strictObject({ entry: z.unknown(), voucher }))
      .min(1)
      .max(PUSH_LIMIT),
  }),
  z.strictObject({
    by: z.enum(["word", "handed"]),
    lines: z
      .array(z.strictObject({ entry: z.unknown() }))
      .min(1)
      .max(PUSH_LIMIT),
  }),
]);
export type BringBackRequest = z.infer<typeof bringBackRequest>;

export interface BringBackReply {
  /** Ids now kept, whether before or just now. */
  readonly kept: readonly string[];
  /** Ids kept with other content: what is kept stays. */
  readonly clashing: readonly string[];
  /** Of a run: a voucher for the head before it; absent at the beginning of a place. */
  readonly before?: VouchedHead;
}
export const bringBackReply = z.object({
  kept: z.array(z.string()),
  clashing: z.array(z.string()),
  before: vouchedHead.optional(),
});
