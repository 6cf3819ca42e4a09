import { secondsBetween } from "#base";
import { newestReceipt } from "#station";
import { secondsAfter } from "../start/hours.ts";
import type { Parts } from "../parts.ts";

const DAY_SECONDS = 86_400;
/** Failures are forgotten so long after the last [s]. Who waits for that gains nothing: one try in twelve hours is more. */
const FAILURE_SECONDS = 30 * DAY_SECONDS;

/** A clock so far beyond the newest line of the log [s] is told of: a computer may have come up in the year 2099. */
const TELL_SECONDS = 400 * DAY_SECONDS;

/** What purging works with. */
export interface PurgeParts extends Pick<Parts, "store" | "ambient"> {
  readonly secrets: Pick<Parts["secrets"], "purge">;
  readonly clocks: Pick<Parts["clocks"], "verdict">;
}

/** Who is told what about purging. */
export interface PurgeTold {
  /** Where it cannot be done; it is tried again the next day. */
  failed(cause: unknown): void;
  /** In a line for the terminal: why what ran out of late is kept. */
  say(line: string): void;
}

/**
 * Forgets sessions, invites and failures that ran out: now, and once a day from then on. A row is over only by the clock
 * and by the newest line of the log too, and never while devices show that the clock is ahead: a wrong clock would sign
 * everybody out for good. A station that writes no line keeps its rows.
 *
 * @returns stops it, and resolves when nothing of it is under way
 */
export function keepPurging(
  { store, secrets, ambient, clocks }: PurgeParts,
  { failed, say }: PurgeTold,
): () => Promise<void> {
  const purge = async (): Promise<void> => {
    if (clocks.verdict().kind === "ahead") return;
    const now = ambient.now();
    const newest = await newestReceipt(store);
    if (newest !== undefined && secondsBetween(newest, now) > TELL_SECONDS) say(clockLine(newest, now));
    const over = newest !== undefined && secondsBetween(newest, now) > 0 ? newest : now;
    await secrets.purge({ now: over, failuresBefore: secondsAfter(over, -FAILURE_SECONDS) });
  };
  let running = purge().catch(failed);
  const daily = setInterval(() => (running = running.then(purge).catch(failed)), DAY_SECONDS * 1000).unref();
  return () => {
    clearInterval(daily);
    return running;
  };
}

function clockLine(newest: string, now: string): string {
  return `WARNING: this computer's clock says ${now.slice(0, 10)}, long after the newest line of the log (${newest.slice(0, 10)}). Old sessions and invites are kept until it is right: set the clock.`;
}
