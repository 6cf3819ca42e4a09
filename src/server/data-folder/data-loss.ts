import { hostname } from "node:os";
import type { FoundLock, Holder } from "./folder-lock.ts";

/** Why the data are no longer where the next start will look for them. */
export interface DataLoss {
  /** What was found, as a sentence without its full stop. */
  readonly what: string;
  /** What to do about it at the server's terminal. */
  readonly remedy: string;
}

/** @param gone - false where there is a file of this name, but another one */
export function fileLost(file: string, gone: boolean): DataLoss {
  const found = gone ? "is not there any more" : "is another file than the one opened";
  return {
    what: `${file} ${found}: it, or its folder, was moved, removed or replaced while the server ran`,
    remedy: "Put it back and start again, or name the folder where it is now: DATA_DIR=/some/folder npm start",
  };
}

/** What it means to find this where one's own lock was. */
export function lockLost(path: string, lock: string, found: FoundLock): DataLoss {
  if (found === "nobody") return fileLost(lock, true);
  return found === "unreadable" ? lockWrittenOver(lock) : takenOver(path, found);
}

function lockWrittenOver(lock: string): DataLoss {
  return {
    what: `${lock} was emptied or written over while the server ran, so that another could take the folder unseen`,
    remedy: "Start again once no other program writes there; for another folder: DATA_DIR=/some/folder npm start",
  };
}

function takenOver(path: string, holder: Holder): DataLoss {
  return {
    what: `another server (${nameHolder(holder)}) has taken ${path} over while this one stood still`,
    remedy: "Use that one, or stop it and start again; for another folder: DATA_DIR=/some/folder npm start",
  };
}

/** As a person at the terminal can find it. */
export function nameHolder(found: FoundLock): string {
  if (typeof found === "string") return "one that cannot be told";
  const elsewhere = found.host !== undefined && found.host !== hostname();
  return elsewhere ? `process ${found.pid} on ${found.host}` : `process ${found.pid}`;
}
