import { makeFolder } from "#store/sqlite";
import { statSync } from "node:fs";
import { join, resolve } from "node:path";
import { dropLock, holderOf, takeLock, TOUCH_MS, touchLock } from "./folder-lock.ts";
import { codeOf, StartProblem } from "./start-problem.ts";

/** Why the data are no longer where the next start will look for them. */
export interface DataLoss {
  /** What was found, as a sentence without its full stop. */
  readonly what: string;
  /** What to do about it at the server's terminal. */
  readonly remedy: string;
}

export interface DataFolder {
  readonly path: string;
  /** From now on the folder is lost, too, where this file of it is gone or another file than it is now. */
  watch(file: string): void;
  /** Looks whether the folder is lost. Once lost it stays so: nothing kept since could be answered for. */
  loss(): DataLoss | undefined;
  /** Resolves when the folder is found lost; looked at every two seconds, and at each call of `loss`. */
  readonly lost: Promise<DataLoss>;
  /** Gives the folder back, for the next server. */
  release(): void;
}

/**
 * Takes a data folder for one server: makes it where it is missing, and refuses it while another server runs on it.
 *
 * @throws StartProblem when it cannot be written, or another server has it
 */
export async function takeDataFolder(folder: string): Promise<DataFolder> {
  const path = resolve(folder);
  const lock = join(path, "server.lock");
  const holder = await orStartProblem(path, () => {
    makeFolder(path);
    return takeLock(lock);
  });
  if (holder !== undefined) throw alreadyRunning(path, holder);
  return new HeldFolder(path, lock);
}

class HeldFolder implements DataFolder {
  readonly path: string;
  readonly lost: Promise<DataLoss>;
  readonly #lock: string;
  readonly #beat: NodeJS.Timeout;
  readonly #files = new Map<string, string>();
  #tell: (loss: DataLoss) => void = () => undefined;
  #loss: DataLoss | undefined;

  constructor(path: string, lock: string) {
    this.path = path;
    this.#lock = lock;
    this.lost = new Promise((tell) => (this.#tell = tell));
    this.#beat = setInterval(() => this.#touch(), TOUCH_MS).unref();
  }

  watch(file: string): void {
    this.#files.set(file, identityOf(file) ?? "");
  }

  loss(): DataLoss | undefined {
    if (this.#loss !== undefined) return this.#loss;
    this.#loss = unlessUnreadable(() => this.#look());
    if (this.#loss !== undefined) this.#tell(this.#loss);
    return this.#loss;
  }

  release(): void {
    clearInterval(this.#beat);
    dropLock(this.#lock);
  }

  #touch(): void {
    if (this.loss() === undefined) unlessUnreadable(() => touchLock(this.#lock));
  }

  #look(): DataLoss | undefined {
    for (const [file, identity] of this.#files) {
      const now = identityOf(file);
      if (now !== identity) return fileLost(file, now === undefined);
    }
    const holder = holderOf(this.#lock);
    if (holder === process.pid) return undefined;
    return holder === 0 ? fileLost(this.#lock, true) : takenOver(this.path, holder);
  }
}

/** What tells a file from another of its name; undefined where there is none. */
function identityOf(file: string): string | undefined {
  const found = statSync(file, { throwIfNoEntry: false, bigint: true });
  return found && `${found.dev}:${found.ino}`;
}

/** A disk that cannot be looked at for a moment, as with too many files open, says nothing about where the data are. */
function unlessUnreadable<T>(look: () => T): T | undefined {
  try {
    return look();
  } catch (cause) {
    if (codeOf(cause) === undefined) throw cause;
    return undefined;
  }
}

function fileLost(file: string, gone: boolean): DataLoss {
  const found = gone ? "is not there any more" : "is another file than the one opened";
  return {
    what: `${file} ${found}: it, or its folder, was moved, removed or replaced while the server ran`,
    remedy: "Put it back and start again, or name the folder where it is now: DATA_DIR=/some/folder npm start",
  };
}

function takenOver(path: string, holder: number): DataLoss {
  return {
    what: `another server (process ${holder}) has taken ${path} over while this one stood still`,
    remedy: "Use that one, or stop it and start again; for another folder: DATA_DIR=/some/folder npm start",
  };
}

async function orStartProblem<T>(path: string, take: () => Promise<T>): Promise<T> {
  try {
    return await take();
  } catch (cause) {
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
