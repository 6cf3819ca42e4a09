import { emptyChain, exportHeader, exportLine, verifyChain, type Entry, type KeptEntry } from "#log";
import type { Cursor, VouchedHead } from "#station";
import { BranchShelf, CURSOR } from "./branch-shelf.ts";
import { describeBroken, describeFork, translateBrowser } from "./browser-faults.ts";
import { BrowserLog, toRow } from "./browser-log.ts";
import { StoreLock } from "./lock/index.ts";
import { DeviceDatabase, type ChainRow, type KeptRow, type OutboxLine } from "./device-database.ts";

/** The most rows that IndexedDB can be asked for at once. */
const MOST_ROWS = 0xffff_ffff;

/** A photo kept here that the station is not yet known to hold. */
export interface UnsentPhoto {
  readonly hash: string;
  /** When it was kept, RFC 3339. */
  readonly since: string;
}

export interface BrowserStoreOptions {
  /** Another window holds the storage back from being brought up to date: it must be closed. */
  readonly onBlocked?: () => void;
  /** Another window brought the storage up to date: this one has let go of it and must be reloaded. */
  readonly onSuperseded?: () => void;
}

/**
 * What a device keeps on its own disk: the station's log as far as it was read, lines and photos not yet sent, notes.
 * Every call has reached the disk when it resolves; one that fails has changed nothing.
 */
export class BrowserStore extends BrowserLog {
  /** Lines that the station does not have any more. */
  readonly shelf: BranchShelf;
  /** The lock on all of it. */
  readonly lock: StoreLock;

  constructor(db: DeviceDatabase) {
    super(db);
    this.lock = new StoreLock(db);
    this.shelf = new BranchShelf(db, (work) => this.guard(work));
  }

  /** The station's lines held here, by place then number, from after the cursor. */
  kept(cursor: Cursor): Promise<readonly KeptEntry[]> {
    return this.guard(async () => {
      const places = (await this.db.chains.orderBy("place").toArray()).map((chain) => chain.place);
      return this.since(places, cursor, MOST_ROWS);
    });
  }

  /**
   * Takes lines as the station numbered them, notes how far was read, and takes them out of the outbox.
   *
   * @param vouched - the station's word for where places stand afterwards
   * @throws StoreError ST-143 where a line differs from the one held under its number, ST-144 where the lines do not
   *   follow on those held or do not give their hashes; nothing is changed then
   */
  async takePulled(entries: readonly KeptEntry[], cursor: Cursor, vouched: readonly VouchedHead[] = []): Promise<void> {
    const { kept, chains, outbox, notes } = this.db;
    await this.guard(() =>
      this.db.transaction("rw", kept, chains, outbox, notes, () => this.#takeWithin(entries, cursor, vouched)),
    );
    if (entries.length > 0) this.tell([...new Set(entries.map((one) => one.entry.place))]);
  }

  /** Hashes of the photos held here of which the station once said that it has them. */
  sentPhotos(): Promise<readonly string[]> {
    return this.guard(async () => {
      const unsent = new Set(await this.db.photos.where("unsentSince").above("").primaryKeys());
      return (await this.db.photos.toCollection().primaryKeys()).filter((hash) => !unsent.has(hash));
    });
  }

  /** The station does not have these, whatever it said before. */
  async markPhotosUnsent(hashes: readonly string[], now: string): Promise<void> {
    await this.guard(() => this.db.photos.where("hash").anyOf(hashes).modify({ unsentSince: now }));
  }

  /** Ids of those lines that are in the station's log as it was pulled. */
  async heldOf(ids: readonly string[]): Promise<ReadonlySet<string>> {
    const rows = await this.guard(() => this.db.kept.bulkGet([...ids]));
    return new Set(rows.flatMap((row) => (row === undefined ? [] : [row.id])));
  }

  /** Where each place stands here, with the station's word for it where it gave one. */
  ends(): Promise<readonly ChainRow[]> {
    return this.guard(() => this.db.chains.toArray());
  }

  /** How far the station's log was read. */
  async cursor(): Promise<Cursor> {
    return (await this.note<Cursor>(CURSOR)) ?? {};
  }

  /** Lines written here and not yet known to be kept by the station, in the order in which they were written. */
  outbox(): Promise<readonly OutboxLine[]> {
    return this.guard(async () => (await this.db.outbox.orderBy("order").toArray()).map((row) => row.line));
  }

  /** Adds lines at the end, or puts them in the place of those with the same ids. */
  putOutbox(lines: readonly OutboxLine[]): Promise<void> {
    return this.guard(() => this.db.transaction("rw", this.db.outbox, () => this.#putWithin(lines)));
  }

  /** Removes the lines with these ids and adds others, at one stroke. */
  replaceOutbox(ids: readonly string[], lines: readonly OutboxLine[]): Promise<void> {
    return this.guard(() =>
      this.db.transaction("rw", this.db.outbox, async () => {
        await this.db.outbox.where("id").anyOf(ids).delete();
        await this.#putWithin(lines);
      }),
    );
  }

  /** Photos of this device that the station does not have, oldest first. */
  unsentPhotos(): Promise<readonly UnsentPhoto[]> {
    return this.guard(async () => {
      const rows = await this.db.photos.orderBy("unsentSince").toArray();
      return rows.map(({ hash, unsentSince }) => ({ hash, since: unsentSince ?? "" }));
    });
  }

  async markPhotoSent(hash: string): Promise<void> {
    await this.guard(() => this.db.photos.where("hash").equals(hash).modify(forgetUnsent));
  }

  /** What was noted under this key. */
  note<Value>(key: string): Promise<Value | undefined> {
    return this.guard(async () => (await this.db.notes.get(key))?.value as Value | undefined);
  }

  async putNote(key: string, value: unknown): Promise<void> {
    await this.guard(() => this.db.notes.put({ key, value }));
  }

  /** Notes whose keys begin so, by key. */
  notesUnder<Value>(prefix: string): Promise<readonly (readonly [string, Value])[]> {
    return this.guard(async () => {
      const rows = await this.db.notes.where("key").startsWith(prefix).toArray();
      return rows.map(({ key, value }) => [key, value as Value] as const);
    });
  }

  /** Everything held here as lines of an exported log, without line ends: kept, then unsent, then unsent photos. */
  async *exportAll(): AsyncGenerator<string> {
    yield exportHeader(await this.heads());
    for (const kept of await this.kept({})) yield exportLine({ kind: "kept", kept });
    const unsent: readonly Entry[] = (await this.outbox()).map(({ entry }) => entry);
    const lost = (await this.shelf.lost()).map(({ entry }) => entry);
    for (const entry of [...lost, ...unsent]) yield exportLine({ kind: "unsent", entry });
    for (const { hash } of await this.unsentPhotos()) {
      const photo = await this.photo(hash);
      if (photo !== undefined) yield exportLine({ kind: "photo", ...photo });
    }
  }

  /** Removes all of it from the device. */
  erase(): Promise<void> {
    return this.guard(() =>
      this.db.transaction("rw", this.db.tables, async () => {
        for (const table of this.db.tables) await table.clear();
      }),
    ).then(() => this.lock.forget());
  }

  async #takeWithin(entries: readonly KeptEntry[], cursor: Cursor, vouched: readonly VouchedHead[]): Promise<void> {
    const rows = entries.map(toRow);
    const fork = await this.#findFork(rows);
    if (fork !== undefined) throw describeFork(fork.place, fork.seq);
    await this.#checkChains(entries);
    await this.db.kept.bulkPut(rows);
    await this.#raiseHeads(entries);
    // A step without a request would end the transaction.
    if (vouched.length > 0) await this.#noteVouchers(vouched);
    await this.#dropSent(new Set(rows.map((row) => row.id)));
    await this.db.notes.put({ key: CURSOR, value: cursor });
  }

  /** A row that is not the one held under its number. Only rows this device has been past need looking at. */
  async #findFork(rows: readonly KeptRow[]): Promise<KeptRow | undefined> {
    const held = new Map((await this.db.chains.toArray()).map((chain) => [chain.place, chain.seq]));
    for (const row of rows.filter((one) => one.seq <= (held.get(one.place) ?? 0))) {
      const [same] = await this.rowsAfter(row.place, row.seq - 1, 1);
      if (same?.seq === row.seq && same.hash !== row.hash) return row;
    }
    return undefined;
  }

  /** What is new must follow on what is held, without a gap, and give its hashes. */
  async #checkChains(entries: readonly KeptEntry[]): Promise<void> {
    const heads = new Map((await this.db.chains.toArray()).map((chain) => [chain.place, chain]));
    for (const place of new Set(entries.map(({ entry }) => entry.place))) {
      const head = heads.get(place) ?? emptyChain(place);
      const fresh = entries.filter(({ entry, seq }) => entry.place === place && seq > head.seq);
      const verdict = verifyChain(fresh, head);
      if (verdict.kind === "broken") throw describeBroken(place, verdict.seq, verdict.because);
    }
  }

  async #noteVouchers(vouched: readonly VouchedHead[]): Promise<void> {
    for (const { place, seq, hash, voucher } of vouched) {
      const chain = await this.db.chains.get(place);
      if (chain?.seq === seq && chain.hash === hash) await this.db.chains.put({ place, seq, hash, voucher });
    }
  }

  /** The outbox is short, what was pulled may be long: so it is the outbox that is read through. */
  async #dropSent(pulled: ReadonlySet<string>): Promise<void> {
    const waiting = await this.db.outbox.toArray();
    await this.db.outbox.bulkDelete(waiting.filter((row) => pulled.has(row.id)).map((row) => row.order));
  }

  async #raiseHeads(entries: readonly KeptEntry[]): Promise<void> {
    const heads = new Map((await this.db.chains.toArray()).map((chain) => [chain.place, chain]));
    for (const { entry, seq, hash } of entries) {
      if (seq > (heads.get(entry.place)?.seq ?? 0)) heads.set(entry.place, { place: entry.place, seq, hash });
    }
    await this.db.chains.bulkPut([...heads.values()]);
  }

  async #putWithin(lines: readonly OutboxLine[]): Promise<void> {
    for (const line of lines) {
      const { id } = line.entry;
      const held = await this.db.outbox.where("id").equals(id).first();
      if (held === undefined) await this.db.outbox.add({ id, line });
      else await this.db.outbox.put({ ...held, line });
    }
  }
}

function forgetUnsent(photo: { unsentSince?: string }): void {
  delete photo.unsentSince;
}

/**
 * Opens this device's own storage, making it where there is none.
 *
 * @param name - name of the database within this site
 * @throws StoreError ST-140 to ST-142 where the browser does not let it
 */
export async function openBrowserStore(name: string, options: BrowserStoreOptions = {}): Promise<BrowserStore> {
  const db = new DeviceDatabase(name);
  db.on("blocked", () => options.onBlocked?.());
  db.on("versionchange", () => {
    db.close();
    options.onSuperseded?.();
  });
  try {
    await db.open();
    const store = new BrowserStore(db);
    await store.lock.read();
    return store;
  } catch (thrown) {
    throw translateBrowser(thrown);
  }
}
