import type { LogStore } from "#station";
import { Refusal } from "./problem.ts";

/** Whoever watches over the server hears something within a second [ms]. */
const ANSWER_MS = 800;

/**
 * Asks the store for its count of lines, for one caller or for many at once, and waits no longer than
 * {@link ANSWER_MS} for it. A store that is silent is asked once, not once more by everybody who looks.
 *
 * @param store - the station's log
 * @returns the count of lines; rejects with a Refusal SV-190 where the store is silent, with its own error where it fails
 */
export function createHealthProbe(store: Pick<LogStore, "count">): () => Promise<number> {
  let asking: Promise<number> | undefined;
  return () => {
    asking ??= store.count().finally(() => (asking = undefined));
    return inTime(asking);
  };
}

async function inTime(count: Promise<number>): Promise<number> {
  let waiting: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, reject) => (waiting = setTimeout(() => reject(silent()), ANSWER_MS)));
  return Promise.race([count, late]).finally(() => clearTimeout(waiting));
}

function silent(): Refusal {
  return new Refusal("unavailable", {
    code: "SV-190",
    message: "The database has not answered for most of a second.",
    remedy: "Look at the database server. Devices keep what they have and send it when it answers.",
  });
}
