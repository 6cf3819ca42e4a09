import { makeFolder } from "#store/sqlite";
import { closeSync, openSync, readFileSync, statSync, unlinkSync, utimesSync, writeSync } from "node:fs";
import { join, resolve } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { codeOf, StartProblem } from "./start-problem.ts";

/** The holder touches its lock this often [ms]; one not touched for so long [ms] belongs to nobody. */
const TOUCH_MS = 2000;
const STALE_MS = 10_000;

export interface DataFolder {
  readonly path: string;
  /** Gives the folder back, for the next server. */
  release(): void;
}

/**
 * Takes a data folder for one server: makes it where it is missing, and refuses it while another server runs on it.
 *
 * The lock names its process and is touched while that runs. A server that was killed leaves nothing for a person to
 * clear away: its process is gone, or, where another has got its number since, its lock grows old within seconds.
 *
 * @throws StartProblem when it cannot be written, or another server has it
 */
export async function takeDataFolder(folder: string): Promise<DataFolder> {
  const path = resolve(folder);
  const lock = join(path, "server.lock");
  await orStartProblem(path, async () => {
    makeFolder(path);
    if (!writeLock(lock)) await takeOver(path, lock);
  });
  const touching = setInterval(() => touch(lock), TOUCH_MS).unref();
  return {
    path,
    release() {
      clearInterval(touching);
      if (holderOf(lock) === process.pid) unlinkSync(lock);
    },
  };
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

async function takeOver(path: string, lock: string): Promise<void> {
  const holder = holderOf(lock);
  if (holder !== process.pid && isRunning(holder) && (await isTouched(lock))) throw alreadyRunning(path, holder);
  unlinkSync(lock);
  if (!writeLock(lock)) throw alreadyRunning(path, holderOf(lock));
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

function touch(lock: string): void {
  if (holderOf(lock) === process.pid) utimesSync(lock, new Date(), new Date());
}

/** Number of the process that holds the lock; 0 where there is none to read. */
function holderOf(lock: string): number {
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

async function orStartProblem(path: string, take: () => Promise<void>): Promise<void> {
  try {
    await take();
  } catch (cause) {
    if (cause instanceof StartProblem) throw cause;
    const because = codeOf(cause) ?? String(cause);
    throw new StartProblem(
      `The data folder ${path} cannot be written to (${because}). Give this user rights to it, or name another: DATA_DIR=/some/folder npm start`,
    );
  }
}

function alreadyRunning(path: string, pid: number): StartProblem {
  return new StartProblem(
    `Another Drykeel server (process ${pid}) is running on ${path}. Use that one, stop it, or name another folder: DATA_DIR=/some/folder npm start`,
  );
}
