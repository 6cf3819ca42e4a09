import { z } from "zod";

/** An address such as "keeper@station.example": 254 characters at most (RFC 5321). */
const address = z.email().max(254);

/** What a person wants to be told by mail. */
export const mailWishRequest = z.strictObject({
  address,
  weekly: z.strictObject({ weekday: z.int().min(1).max(7), hour: z.int().min(0).max(23) }).optional(),
  isForShort: z.boolean(),
  isForGrounds: z.boolean(),
});
export type MailWishRequest = z.infer<typeof mailWishRequest>;

/** One of the person's own letters, to be sent all the same. */
export const mailAgainRequest = z.strictObject({ id: z.string().min(1).max(200) });

/** Letters to a person, newest first, without their text. */
const letter = z.object({
  id: z.string(),
  subject: z.string(),
  address: z.string(),
  standing: z.enum(["waiting", "under-way", "sent", "in-doubt", "given-up"]),
  tries: z.int(),
  made: z.string(),
  due: z.string(),
  at: z.string(),
  said: z.string().optional(),
});
export type ToldLetter = z.infer<typeof letter>;

/** What the station sends a person. */
export const mailReply = z.object({
  /** Whether this station sends mail at all. */
  isSending: z.boolean(),
  wish: mailWishRequest.optional(),
  letters: z.array(letter),
});
export type MailReply = z.infer<typeof mailReply>;
