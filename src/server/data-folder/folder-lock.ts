import { closeSync, openSync, readFileSync, statSync, unlinkSync, utimesSync, writeSync } from "node:fs";
import { hostname } from "node:os";
import { setTimeout as pause } from "node:timers/promises";
import { codeOf } from "../start/start-problem.ts";

/** The holder touches its lock this often [ms]; one not touched for so long [ms] belongs to nobody. */
export const TOUCH_MS = 2000;
const STALE_MS = 10_000;
/** Takes before a lock that is neither to be read nor to be made counts as another's. */
const TRIES = 3;

/** What a lock says of its holder. Locks of the old form say the process alone. */
export interface Holder {
  readonly pid: number;
  /** Chosen by chance at each take: process numbers come again, and are the same in every container. */
  readonly token?: string;
  /** The computer, or container, on which the process number means something. */
  readonly host?: string;
}

/** What is found where a lock may be; "unreadable" is a file that no server wrote, or that was emptied. */
export type FoundLock = Holder | "nobody" | "unreadable";

/** How a start waits for a holder that may be dead. */
export interface Waiting {
  /** So long at most [ms], counted here: neither this computer's clock nor that of the lock's disk need be right. */
  readonly staleMs?: number;
  /** Told once, where there is waiting. */
  say(seconds: number): void;
}

/** A holder of this process, unlike any other of it. */
export function holderHere(token: string): Required<Holder> {
  return { pid: process.pid, token, host: hostname() };
}

/**
 * Takes a lock.
 *
 * The lock names its holder and is touched while that runs. A server that was killed leaves nothing for a person to
 * clear away: its process is gone, or, where that cannot be told, its lock goes untouched for seconds.
 *
 * @returns what holds it instead, or undefined where it is ours
 */
export async function takeLock(lock: string, mine: Required<Holder>, waiting: Waiting): Promise<FoundLock | undefined> {
  let found: FoundLock = "nobody";
  for (let left = TRIES; left > 0; left--) {
    if (writeLock(lock, mine)) return undefined;
    found = readLock(lock);
    if (!isGone(found, mine) && (await isTouched(lock, waiting))) return found;
    removeLock(lock, found);
  }
  return found;
}

/** Makes the lock; false where there is one already. */
function writeLock(lock: string, { pid, token, host }: Required<Holder>): boolean {
  try {
    const file = openSync(lock, "wx");
    writeSync(file, `${pid} ${token} ${host}\n`);
    closeSync(file);
    return true;
  } catch (cause) {
    if (codeOf(cause) === "EEXIST") return false;
    throw cause;
  }
}

/** True where nothing of the holder can be alive. One of our own number is another take, or another container's. */
function isGone(found: FoundLock, mine: Required<Holder>): boolean {
  if (found === "nobody") return true;
  if (found === "unreadable" || (found.host ?? mine.host) !== mine.host) return false;
  return found.pid !== mine.pid && !isRunning(found.pid);
}

/** Waits until the lock is touched, which is life, or was not for too long, which is not. */
async function isTouched(lock: string, { say, staleMs = STALE_MS }: Waiting): Promise<boolean> {
  const before = touchedAt(lock);
  const began = performance.now();
  say(Math.ceil(staleMs / 1000));
  while (performance.now() - began < staleMs) {
    await pause(200);
    const now = touchedAt(lock);
    if (now !== before) return now !== undefined;
  }
  return false;
}

function touchedAt(lock: string): number | undefined {
  return statSync(lock, { throwIfNoEntry: false })?.mtimeMs;
}

/** Shows that the holder lives. */
export function touchLock(lock: string): void {
  utimesSync(lock, new Date(), new Date());
}

/** Removes a lock, unless it is another's by now. */
export function removeLock(lock: string, holder: FoundLock): void {
  const found = readLock(lock);
  if (found !== "nobody" && isSameHolder(found, holder)) unlinkSync(lock);
}

/** By the token, where there is one. */
export function isSameHolder(one: FoundLock, other: FoundLock): boolean {
  if (typeof one === "string" || typeof other === "string") return one === other;
  return one.pid === other.pid && one.token === other.token;
}

export function readLock(lock: string): FoundLock {
  try {
    return parseLock(readFileSync(lock, "utf8"));
  } catch (cause) {
    if (codeOf(cause) === "ENOENT") return "nobody";
    throw cause;
  }
}

function parseLock(text: string): FoundLock {
  const [, pid, token, host] = /^(\d{1,10})(?: (\S+) (\S+))?\s*$/.exec(text) ?? [];
  if (pid === undefined || Number(pid) === 0) return "unreadable";
  return { pid: Number(pid), ...(token === undefined || host === undefined ? {} : { token, host }) };
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (cause) {
    return codeOf(cause) === "EPERM";
  }
}
