import { sayDuration } from "#words";
import { instantOf } from "../instant.ts";

/**
 * From how long between writing and receipt a line is told as received late [ms]: one day. A shift, a night at sea or a
 * day without a network is ordinary; after more, what others decided meanwhile they decided without this line, and the
 * time it names rests on its device's clock alone.
 */
export const LATE_RECEIPT_MS = 24 * 3_600_000;

/**
 * How long after it was written a line was received, where that is long.
 *
 * @param at - when its device says that it was written, RFC 3339 with offset
 * @param received - when the station took it, RFC 3339
 * @returns [ms], more than {@link LATE_RECEIPT_MS}; undefined where it came in time
 * @example lateBy("2027-03-10T10:00:00Z", "2027-03-13T10:00:00Z"); // 259200000
 */
export function lateBy(at: string, received: string): number | undefined {
  const span = instantOf(received) - instantOf(at);
  return span > LATE_RECEIPT_MS ? span : undefined;
}

/**
 * A long time between writing and receipt in words, never more than it was.
 *
 * @param ms - more than {@link LATE_RECEIPT_MS} [ms]
 * @example sayLateness(259_200_000); // "3 days after it was written"
 */
export function sayLateness(ms: number): string {
  return `${sayDuration(ms / 1000, "apart")} after it was written`;
}
