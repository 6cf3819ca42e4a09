import { sayClock } from "./say.ts";

/* When a sounding was read, where it is written down later. */

const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;

/** When a sounding was read: so many minutes before it is written down, or at an instant [ms]. */
export type Taken = { readonly ago: number } | { readonly at: number };

export const NOW: Taken = { ago: 0 };

/** Minutes to choose from. */
export const AGO = [0, 1, 2, 5, 10];

/**
 * The time to write with a sounding.
 *
 * @param now - [ms], as it is written down
 * @returns RFC 3339; undefined for now, which the line itself says
 */
export function takenAt(taken: Taken, now: number): string | undefined {
  if ("at" in taken) return new Date(taken.at).toISOString();
  return taken.ago === 0 ? undefined : new Date(now - taken.ago * MINUTE).toISOString();
}

/**
 * A time as people type it, "16:40", "16.40" or "1640", on the device's own clock: the last such time before now.
 *
 * @param now - [ms]
 * @returns [ms]; undefined where the text is no time of day
 */
export function readClock(text: string, now: number): number | undefined {
  const parts = /^([01]?\d|2[0-3])[:. ]?([0-5]\d)$/.exec(text.trim());
  if (!parts) return undefined;
  const at = new Date(now).setHours(Number(parts[1]), Number(parts[2]), 0, 0);
  return at <= now ? at : at - DAY;
}

/** "2 min ago". */
export function sayAgo(minutes: number): string {
  return `${minutes} min ago`;
}

/** "sounded now", "sounded 5 min ago", "sounded at 16:40". */
export function sayTaken(taken: Taken): string {
  if ("at" in taken) return `sounded at ${sayClock(taken.at)}`;
  return taken.ago === 0 ? "sounded now" : `sounded ${sayAgo(taken.ago)}`;
}
