import { Dexie, type EntityTable, type Table } from "dexie";
import type { Fault } from "#base";
import type { Entry, KeptEntry } from "#log";

/** A line written on this device that the station is not yet known to hold. */
export interface OutboxLine {
  readonly entry: Entry;
  /** `unsent`: to be sent. `sent`: the station has it, its own copy has not come back yet. `refused`: stays, with why. */
  readonly state: "unsent" | "sent" | "refused";
  readonly faults?: readonly Fault[];
  /** How far this device's clock was ahead of the station's when it was refused [ms]. */
  readonly aheadMs?: number;
}

/** A kept entry with its place and id beside it, to be found by. */
export interface KeptRow extends KeptEntry {
  readonly place: string;
  readonly id: string;
}

export interface ChainRow {
  readonly place: string;
  readonly seq: number;
  readonly hash: string;
}

/** Lines leave in the order in which they were written, which `order` keeps. */
export interface OutboxRow {
  order: number;
  id: string;
  line: OutboxLine;
}

/** Bytes as a plain buffer: Safari has lost blobs kept in IndexedDB. */
export interface PhotoRow {
  readonly hash: string;
  readonly mime: string;
  readonly bytes: ArrayBuffer;
  unsentSince?: string;
}

export interface NoteRow {
  readonly key: string;
  readonly value: unknown;
}

/** The device's own database. A version that has shipped is never changed, only followed by another. */
export class DeviceDatabase extends Dexie {
  readonly kept!: Table<KeptRow, string>;
  readonly chains!: Table<ChainRow, string>;
  readonly outbox!: EntityTable<OutboxRow, "order">;
  readonly photos!: Table<PhotoRow, string>;
  readonly notes!: Table<NoteRow, string>;

  constructor(name: string) {
    // Strict: a line is on disk, not only with the operating system, when the page says it is saved.
    super(name, { chromeTransactionDurability: "strict", autoOpen: false });
    this.version(1).stores({
      kept: "id, &[place+seq]",
      chains: "place",
      outbox: "++order, &id",
      photos: "hash, unsentSince",
      notes: "key",
    });
  }
}
