import { Dexie, type EntityTable, type Table } from "dexie";
import type { Fault } from "#base";
import type { ChainHead, Entry, KeptEntry } from "#log";
import { RowSeal } from "./lock/row-seal.ts";
import { sealTables } from "./lock/sealed-tables.ts";

/** A line written on this device that the station is not yet known to hold. */
export interface OutboxLine {
  readonly entry: Entry;
  /** `unsent`: to be sent. `sent`: the station has it, its own copy has not come back yet. `refused`: stays, with why. */
  readonly state: "unsent" | "sent" | "refused";
  readonly faults?: readonly Fault[];
  /** How far this device's clock was ahead of the station's when it was refused [ms]. */
  readonly aheadMs?: number;
  /** The station's word that it has the line, where it gave one: to bring it back by, should the station lose it. */
  readonly voucher?: string;
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
  /** The station's word that it stood there, where it gave one. */
  readonly voucher?: string;
}

/** A head, with the station's word for it where it gave one. */
interface KnownHead extends ChainHead {
  readonly voucher?: string;
}

/** Lines of one place that the station does not have any more, where they parted from its log and how far they went. */
export interface BranchRow {
  readonly place: string;
  /** The last head in common; number 0 and the genesis where there is none. */
  readonly common: ChainHead;
  readonly end: KnownHead;
  /** The end of what is still to be proved, which goes from the end back; `common` once all was. */
  readonly next: KnownHead;
  /** Ends of the parts that are proved and still to be offered, the last of them first in line: offering goes forward. */
  readonly proved?: readonly KnownHead[];
  /** Nothing shows the station that it had them: their writers send them anew, or an administrator says so. */
  readonly unvouched: boolean;
}

/** A line of a branch. */
export interface AsideRow {
  readonly branch: number;
  readonly seq: number;
  readonly id: string;
  readonly kept: KeptEntry;
  /** The station has another line under its id. */
  clashing?: boolean;
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
  readonly branches!: EntityTable<BranchRow & { branch: number }, "branch">;
  readonly aside!: Table<AsideRow, [number, number]>;
  /** Between the tables and all that is read from them or written to them. */
  readonly rowSeal = new RowSeal();

  constructor(name: string) {
    // Strict: a line is on disk, not only with the operating system, when the page says it is saved.
    super(name, { chromeTransactionDurability: "strict", autoOpen: false });
    this.use(sealTables(this.rowSeal));
    this.version(1).stores({
      kept: "id, &[place+seq]",
      chains: "place",
      outbox: "++order, &id",
      photos: "hash, unsentSince",
      notes: "key",
    });
    this.version(2).stores({ branches: "++branch", aside: "[branch+seq], branch, id" });
  }
}
