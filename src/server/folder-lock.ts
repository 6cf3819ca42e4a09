import { closeSync, openSync, readFileSync, statSync, unlinkSync, utimesSync, writeSync } from "node:fs";
import { setTimeout as pause } from "node:timers/promises";
import { codeOf } from "./start-problem.ts";

/** The holder touches its lock this often [ms]; one not touched for so long [ms] belongs to nobody. */
export const TOUCH_MS = 2000;
const STALE_MS = 10_000;

/**
 * Takes a lock for this process.
 *
 * The lock names its process and is touched while that runs. A server that was killed leaves nothing for a person to
 * clear away: its process is gone, or, where another has got its number since, its lock grows old within seconds.
 *
 * @returns the number of the process that has it instead, or undefined where it is ours
 */
export async function takeLock(lock: string): Promise<number | undefined> {
  if (writeLock(lock)) return undefined;
  const holder = holderOf(lock);
  if (holder !== process.pid && isRunning(holder) && (await isTouched(lock))) return holder;
  unlinkSync(lock);
  return writeLock(lock) ? undefined : holderOf(lock);
}

/** Makes the lock with this process's number in it; false where there is one already. */
function writeLock(lock: string): boolean {
  try {
    const file = openSync(lock, "wx");
    writeSync(file, String(process.pid));
    closeSync(file);
    return true;
  } catch (cause) {
    if (codeOf(cause) === "EEXIST") return false;
    throw cause;
  }
}

/** Waits until the lock is touched, which is life, or has become stale, which is not. */
async function isTouched(lock: string): Promise<boolean> {
  const before = statSync(lock).mtimeMs;
  for (;;) {
    if (Date.now() - before > STALE_MS) return false;
    await pause(200);
    if (statSync(lock, { throwIfNoEntry: false })?.mtimeMs !== before) return true;
  }
}

/** Shows that the holder lives. */
export function touchLock(lock: string): void {
  utimesSync(lock, new Date(), new Date());
}

/** Gives a lock back, where it is this process's. */
export function dropLock(lock: string): void {
  if (holderOf(lock) === process.pid) unlinkSync(lock);
}

/** Number of the process that holds the lock; 0 where there is none to read. */
export function holderOf(lock: string): number {
  const there = statSync(lock, { throwIfNoEntry: false }) !== undefined;
  return there ? Number(readFileSync(lock, "utf8")) : 0;
}

function isRunning(pid: number): boolean {
  if (!Number.isInteger(pid) || pid <= 0) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch (cause) {
    return codeOf(cause) === "EPERM";
  }
}
