import { secondsAfter } from "./hours.ts";
import type { Parts } from "./parts.ts";

const DAY_SECONDS = 86_400;
/** Failures are forgotten so long after the last [s]. Who waits for that gains nothing: one try in twelve hours is more. */
const FAILURE_SECONDS = 30 * DAY_SECONDS;

/**
 * Forgets sessions, invites and failures that ran out: now, and once a day from then on.
 *
 * @param failed - told where that cannot be done; it is tried again the next day
 * @returns stops it, and resolves when nothing of it is under way
 */
export function keepPurging(
  { secrets, ambient }: { readonly secrets: Pick<Parts["secrets"], "purge">; readonly ambient: Parts["ambient"] },
  failed: (cause: unknown) => void,
): () => Promise<void> {
  const purge = async (): Promise<void> => {
    const now = ambient.now();
    await secrets.purge({ now, failuresBefore: secondsAfter(now, -FAILURE_SECONDS) });
  };
  let running = purge().catch(failed);
  const daily = setInterval(() => (running = running.then(purge).catch(failed)), DAY_SECONDS * 1000).unref();
  return () => {
    clearInterval(daily);
    return running;
  };
}
