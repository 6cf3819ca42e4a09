import { sayDuration, type Words } from "#words";
import { sayClock } from "../sheet/say.ts";

/* When a sounding was read, where it is written down later. */

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;

/** Until this hour of the clock a late evening's time may be meant as yesterday's. */
const SMALL_HOURS = 6;

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

/** A time as typed: read then [ms]; so long before the sheet was opened that it has to be asked; ahead of now; none. */
export type ClockRead =
  | { readonly kind: "read"; readonly at: number }
  | { readonly kind: "early"; readonly at: number; readonly minutes: number }
  | { readonly kind: "ahead"; readonly minutes: number }
  | { readonly kind: "none" };

/**
 * A time as people type it, "16:40", "16.40" or "1640", on the device's own clock. A time ahead of now is a slip or a
 * slow clock, not yesterday's; only in the small hours is one more than 12 h ahead the evening before.
 *
 * @param now - [ms]
 * @param opened - when the sheet was opened [ms]
 */
export function readClock(text: string, now: number, opened: number): ClockRead {
  const parts = /^([01]?\d|2[0-3])[:. ]?([0-5]\d)$/.exec(text.trim());
  if (!parts) return { kind: "none" };
  const at = lastEvening(new Date(now).setHours(Number(parts[1]), Number(parts[2]), 0, 0), now);
  if (at > now) return { kind: "ahead", minutes: Math.ceil((at - now) / MINUTE) };
  const early = opened - at;
  return early > HOUR ? { kind: "early", at, minutes: Math.round(early / MINUTE) } : { kind: "read", at };
}

function lastEvening(at: number, now: number): number {
  const isMeant = at - now > 12 * HOUR && new Date(now).getHours() < SMALL_HOURS;
  if (!isMeant) return at;
  const day = new Date(at);
  return day.setDate(day.getDate() - 1);
}

type SoundingWords = Words["soundings"];

/** What is wrong with a time, for its field; nothing while it is being typed. */
export function faultOf(text: string, read: ClockRead, now: number, words: SoundingWords): string | undefined {
  if (read.kind === "none") return text.length >= 4 ? words.clockForm() : undefined;
  if (read.kind !== "ahead") return undefined;
  const ahead = sayDuration(60 * read.minutes, "minutes");
  return words.clockAhead({ ahead, now: sayClock(now) });
}

/** Minutes to choose from, in words: "Now", "2 min ago". */
export function agoOptions(words: SoundingWords): readonly { readonly id: string; readonly words: string }[] {
  return AGO.map((ago) => ({
    id: String(ago),
    words: ago === 0 ? words.now() : words.ago({ duration: sayDuration(60 * ago, "minutes") }),
  }));
}

/** "sounded now", "sounded 5 min ago", "sounded at 16:40", "sounded yesterday 23:50". */
export function sayTaken(taken: Taken, now: number, words: SoundingWords): string {
  if ("at" in taken) {
    const time = sayClock(taken.at);
    return isToday(taken.at, now) ? words.soundedAt({ time }) : words.soundedYesterday({ time });
  }
  if (taken.ago === 0) return words.soundedNow();
  return words.soundedAgo({ duration: sayDuration(60 * taken.ago, "minutes") });
}

/** As it stands once it is written, as true minutes later: "sounded at 16:40". */
export function sayWritten(taken: Taken, now: number, words: SoundingWords): string {
  return sayTaken("at" in taken ? taken : { at: now - taken.ago * MINUTE }, now, words);
}

/** Whether an instant is of the day it is now, on the reader's own clock; what is typed here else was yesterday. */
export function isToday(at: number, now: number): boolean {
  return new Date(at).toDateString() === new Date(now).toDateString();
}
