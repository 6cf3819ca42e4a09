import { makeFolder } from "#store/sqlite";
import { randomUUID } from "node:crypto";
import { statSync } from "node:fs";
import { join, resolve } from "node:path";
import { fileLost, lockLost, nameHolder, type DataLoss } from "./data-loss.ts";
import {
  holderHere,
  isSameHolder,
  readLock,
  removeLock,
  takeLock,
  TOUCH_MS,
  touchLock,
  type FoundLock,
  type Holder,
} from "./folder-lock.ts";
import { codeOf, StartProblem } from "../start/start-problem.ts";

/** So long after the first look that found the folder lost [ms] a second one decides. */
const SECOND_LOOK_MS = 2000;

export interface DataFolder {
  readonly path: string;
  /** From now on the folder is lost, too, where this file of it is gone or another file than it is now. */
  watch(file: string): void;
  /**
   * Looks whether the folder is lost: as long as it is, nothing may be acknowledged. One that is found again within two
   * seconds, as after a hitch of a network disk, is as good as ever; after that it stays lost.
   */
  loss(): DataLoss | undefined;
  /** Resolves when the folder is lost for good; looked at every two seconds, and at each call of `loss`. */
  readonly lost: Promise<DataLoss>;
  /** Gives the folder back, for the next server. */
  release(): void;
}

/**
 * Takes a data folder for one server: makes it where it is missing, and refuses it while another server runs on it.
 *
 * @param how - what is told where a server that may be dead has to be waited for, and how long that may take [ms]
 * @throws StartProblem when it cannot be written, or another server has it
 */
export async function takeDataFolder(
  folder: string,
  how: { readonly say?: (line: string) => void; readonly staleMs?: number } = {},
): Promise<DataFolder> {
  const path = resolve(folder);
  const lock = join(path, "server.lock");
  const mine = holderHere(randomUUID());
  const say = (seconds: number) => how.say?.(waitingLine(path, seconds));
  const holder = await orStartProblem(path, () => {
    makeFolder(path);
    return takeLock(lock, mine, { ...how, say });
  });
  if (holder !== undefined) throw alreadyRunning(path, holder);
  return new HeldFolder(path, lock, mine);
}

class HeldFolder implements DataFolder {
  readonly path: string;
  readonly lost: Promise<DataLoss>;
  readonly #lock: string;
  readonly #mine: Holder;
  readonly #beat: NodeJS.Timeout;
  readonly #files = new Map<string, string>();
  #tell: (loss: DataLoss) => void = () => undefined;
  #loss: DataLoss | undefined;
  #secondLook: NodeJS.Timeout | undefined;
  #isFinal = false;

  constructor(path: string, lock: string, mine: Holder) {
    this.path = path;
    this.#lock = lock;
    this.#mine = mine;
    this.lost = new Promise((tell) => (this.#tell = tell));
    this.#beat = setInterval(() => this.#touch(), TOUCH_MS).unref();
  }

  watch(file: string): void {
    this.#files.set(file, identityOf(file) ?? "");
  }

  loss(): DataLoss | undefined {
    if (this.#isFinal) return this.#loss;
    const found = unlessUnreadable(() => this.#look(), this.#loss);
    if (found?.what !== this.#loss?.what) this.#doubt(found);
    return this.#loss;
  }

  release(): void {
    clearInterval(this.#beat);
    clearTimeout(this.#secondLook);
    removeLock(this.#lock, this.#mine);
  }

  #doubt(found: DataLoss | undefined): void {
    clearTimeout(this.#secondLook);
    this.#loss = found;
    if (found === undefined) return;
    this.#secondLook = setTimeout(() => this.#lookAgain(found), SECOND_LOOK_MS).unref();
  }

  #lookAgain(first: DataLoss): void {
    if (this.loss()?.what !== first.what) return;
    this.#isFinal = true;
    this.#tell(first);
  }

  #touch(): void {
    if (this.loss() === undefined) unlessUnreadable(() => touchLock(this.#lock), undefined);
  }

  #look(): DataLoss | undefined {
    for (const [file, identity] of this.#files) {
      const now = identityOf(file);
      if (now !== identity) return fileLost(file, now === undefined);
    }
    const found = readLock(this.#lock);
    return isSameHolder(found, this.#mine) ? undefined : lockLost(this.path, this.#lock, found);
  }
}

/** What tells a file from another of its name; undefined where there is none. */
function identityOf(file: string): string | undefined {
  const found = statSync(file, { throwIfNoEntry: false, bigint: true });
  return found && `${found.dev}:${found.ino}`;
}

/** A disk that cannot be looked at for a moment, as with too many files open, says nothing new of where the data are. */
function unlessUnreadable<T>(look: () => T, known: T): T {
  try {
    return look();
  } catch (cause) {
    if (codeOf(cause) === undefined) throw cause;
    return known;
  }
}

function waitingLine(path: string, seconds: number): string {
  return `Waiting up to ${seconds} s to see whether the server that last had ${path} still runs.`;
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

function alreadyRunning(path: string, holder: FoundLock): StartProblem {
  return new StartProblem(
    `Another Drykeel server (${nameHolder(holder)}) is running on ${path}. Use that one, stop it, or name another folder: DATA_DIR=/some/folder npm start`,
  );
}
