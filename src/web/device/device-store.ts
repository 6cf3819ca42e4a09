import type { Fault } from "#base";
import type { Entry, KeptEntry } from "#log";
import type { Cursor, Photo } from "#station";

/** A line written here that the station is not yet known to hold. */
export interface OutboxLine {
  readonly entry: Entry;
  /** `unsent`: to be sent. `sent`: the station has it, its own copy has not come back yet. `refused`: stays here, with why. */
  readonly state: "unsent" | "sent" | "refused";
  readonly faults?: readonly Fault[];
  /** How far this device's clock was ahead of the station's when it was refused [ms]. */
  readonly aheadMs?: number;
}

/** A photo kept here that the station is not yet known to hold. */
export interface UnsentPhoto {
  readonly hash: string;
  /** When it was kept, RFC 3339. */
  readonly since: string;
}

/** What this device keeps on its own disk. Every call has reached the disk when it resolves. */
export interface DeviceStore {
  /** The station's lines held here, by place then number, from after the cursor. */
  kept(cursor: Cursor): Promise<readonly KeptEntry[]>;
  /** Takes lines as the station numbered them, notes how far was read, and takes them out of the outbox. */
  takePulled(entries: readonly KeptEntry[], cursor: Cursor): Promise<void>;
  /** How far was read. */
  cursor(): Promise<Cursor>;

  outbox(): Promise<readonly OutboxLine[]>;
  putOutbox(lines: readonly OutboxLine[]): Promise<void>;
  /** Puts the second lines in the place of the first, at one stroke. */
  replaceOutbox(ids: readonly string[], lines: readonly OutboxLine[]): Promise<void>;

  /** Keeps a photo; `unsentSince` where it is this device's own and the station does not have it. */
  putPhoto(photo: Photo, unsentSince?: string): Promise<void>;
  photo(hash: string): Promise<Photo | undefined>;
  unsentPhotos(): Promise<readonly UnsentPhoto[]>;
  markPhotoSent(hash: string): Promise<void>;

  note<Value>(key: string): Promise<Value | undefined>;
  putNote(key: string, value: unknown): Promise<void>;

  /** Removes all of it. */
  erase(): Promise<void>;
  close(): void;
}
