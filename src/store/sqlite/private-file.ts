import { chmodSync, closeSync, openSync, rmSync, statSync } from "node:fs";

const OWN = 0o600;
/** What everybody else on the computer may do. */
const STRANGERS = 0o007;
/** What SQLite lays beside a database, with the rights of the database. */
const BESIDE = ["", "-wal", "-shm"];

/**
 * Sees to it that no other account reads a database: it holds what PINs can be guessed from. One that is not there is
 * made, for its own account alone; one that is there is closed to strangers, and its group keeps what it had.
 *
 * What cannot be done is left: whoever opens the file next says what is wrong with it, and a file of another account is
 * that account's to close.
 */
export function keepPrivate(path: string): void {
  attempt(() => closeSync(openSync(path, "wx", OWN)));
  for (const one of BESIDE) attempt(() => closeToStrangers(`${path}${one}`));
}

/** As {@link keepPrivate}, and the group has nothing either: for a file that is written anew. */
export function makePrivate(path: string): void {
  attempt(() => closeSync(openSync(path, "wx", OWN)));
  attempt(() => chmodSync(path, OWN));
}

/** Removes a copy that did not come about, and what SQLite laid beside it. */
export function removePart(path: string): void {
  for (const one of [...BESIDE, "-journal"]) attempt(() => rmSync(`${path}${one}`, { force: true }));
}

function closeToStrangers(path: string): void {
  const found = statSync(path, { throwIfNoEntry: false });
  if (found?.isFile() && (found.mode & STRANGERS) !== 0) chmodSync(path, found.mode & 0o770);
}

/** Does what the system lets us do. */
function attempt(work: () => void): void {
  try {
    work();
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code === undefined) throw cause;
  }
}
