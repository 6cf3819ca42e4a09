import type { Entry, KeptEntry } from "#log";
import type { Photo } from "#station";

/** Something that keeps a log and can be killed: a bare store in a process of its own, or a whole server. */
export interface Target {
  readonly name: string;
  /** Starts the process on the folder's data, whatever state it was left in. */
  start(): Running;
  /** Opens the data that the dead process left, as a restart would, and lets the judge look. */
  inspect<T>(look: (left: LeftBehind) => Promise<T>): Promise<T>;
  /** Makes an entry that the target accepts, the n-th of the run, carrying its mark. */
  makeEntry(number: number, mark: BatchMark, padding: string): Entry;
  /** The mark that an entry carries; undefined for one that the target wrote itself. */
  markOf(entry: Entry): BatchMark | undefined;
}

/** Where an entry belongs, so that a torn batch is found out. */
export interface BatchMark {
  readonly batch: number;
  /** Entries in the batch. */
  readonly of: number;
}

export interface Running {
  /** Resolves when it takes lines; rejects when it ends before. */
  readonly ready: Promise<unknown>;
  /** Resolves when the target has acknowledged all of the entries, as new or as known. */
  send(entries: readonly Entry[]): Promise<void>;
  sendPhoto(photo: Photo): Promise<void>;
  /** kill -9, and waits until the process is gone. Whatever was under way rejects. */
  kill(): Promise<void>;
}

/** What is on disk after a kill. */
export interface LeftBehind {
  since(cursor: Readonly<Record<string, number>>, limit: number): Promise<readonly KeptEntry[]>;
  photo(hash: string): Promise<Photo | undefined>;
  /** What the database's own check of the file says: "ok". */
  integrity(): Promise<string>;
}
