import { Dexie } from "dexie";
import {
  checkBytes,
  hashEntry,
  planIntake,
  planRetaking,
  type Entry,
  type Held,
  type Intake,
  type KeptEntry,
  type PlaceChain,
} from "#log";
import {
  movedFrom,
  type AppendListener,
  type AppendResult,
  type Cursor,
  type LogStore,
  type Moved,
  type Photo,
} from "#station";
import { translateBrowser } from "./browser-faults.ts";
import type { DeviceDatabase, KeptRow } from "./device-database.ts";

/** The most rows IndexedDB can be asked for at once. */
const LONGEST_READ = 0xffff_ffff;

/** The station's log as far as this device holds it, in IndexedDB. */
export class BrowserLog implements LogStore {
  protected readonly db: DeviceDatabase;
  readonly #listeners = new Set<AppendListener>();

  constructor(db: DeviceDatabase) {
    this.db = db;
  }

  append(entries: readonly Entry[], received: string, onlyAt: Cursor = {}): Promise<AppendResult> {
    return this.#take(entries, (held) => planIntake(entries, held, received), onlyAt);
  }

  retake(kept: readonly KeptEntry[]): Promise<AppendResult> {
    return this.#take(
      kept.map((one) => one.entry),
      (held) => planRetaking(kept, held),
      {},
    );
  }

  since(places: readonly string[], cursor: Cursor, limit: number): Promise<readonly KeptEntry[]> {
    return this.guard(async () => {
      const found: KeptEntry[] = [];
      for (const place of [...new Set(places)].sort()) {
        if (found.length >= limit) break;
        found.push(...(await this.rowsAfter(place, cursor[place] ?? 0, limit - found.length)).map(toKept));
      }
      return found;
    });
  }

  heads(): Promise<readonly PlaceChain[]> {
    return this.guard(async () => {
      const chains = await this.db.chains.orderBy("place").toArray();
      return chains.map(({ place, seq, hash }) => ({ place, seq, hash }));
    });
  }

  find(id: string): Promise<KeptEntry | undefined> {
    return this.guard(async () => {
      const row = await this.db.kept.get(id);
      return row && toKept(row);
    });
  }

  count(): Promise<number> {
    return this.guard(() => this.db.kept.count());
  }

  putPhoto(photo: Photo, unsentSince?: string): Promise<void> {
    return this.guard(async () => {
      checkBytes(photo.hash, photo.bytes);
      const { hash, mime } = photo;
      const bytes = photo.bytes.slice().buffer;
      await this.db.photos.put({ hash, mime, bytes, ...(unsentSince === undefined ? {} : { unsentSince }) });
    });
  }

  photo(hash: string): Promise<Photo | undefined> {
    return this.guard(async () => {
      const row = await this.db.photos.get(hash);
      return row && { hash: row.hash, mime: row.mime, bytes: new Uint8Array(row.bytes) };
    });
  }

  missingPhotos(hashes: readonly string[]): Promise<readonly string[]> {
    return this.guard(async () => {
      const held = await this.db.photos.where("hash").anyOf(hashes).primaryKeys();
      return [...new Set(hashes)].filter((hash) => !held.includes(hash));
    });
  }

  onAppend(listener: AppendListener): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  async close(): Promise<void> {
    this.#listeners.clear();
    this.db.close();
  }

  protected tell(places: readonly string[]): void {
    for (const listener of this.#listeners) listener(places);
  }

  protected async guard<T>(work: () => Promise<T>): Promise<T> {
    try {
      return await work();
    } catch (thrown) {
      throw translateBrowser(thrown);
    }
  }

  async #take(entries: readonly Entry[], plan: (held: Held) => Intake, onlyAt: Cursor): Promise<AppendResult> {
    const { kept, chains } = this.db;
    const intake = await this.guard(() =>
      this.db.transaction("rw", kept, chains, () => this.#takeWithin(entries, plan, onlyAt)),
    );
    if ("moved" in intake) return { accepted: [], repeated: [], clashing: [], moved: intake.moved };
    if (intake.accepted.length > 0) this.tell([...intake.heads.keys()]);
    return { accepted: intake.accepted, repeated: intake.repeated, clashing: intake.clashing };
  }

  async #takeWithin(entries: readonly Entry[], plan: (held: Held) => Intake, onlyAt: Cursor): Promise<Intake | Moved> {
    const heads = new Map((await this.db.chains.toArray()).map(({ place, seq, hash }) => [place, { seq, hash }]));
    const moved = movedFrom(onlyAt, heads);
    if (moved.length > 0) return { moved };
    const known = await this.db.kept.bulkGet(entries.map((entry) => entry.id));
    const hashes = new Map(known.flatMap((row) => (row === undefined ? [] : [[row.id, hashEntry(row.entry)]])));
    const intake = plan({ heads, hashes });
    await this.db.kept.bulkAdd(intake.accepted.map(toRow));
    await this.db.chains.bulkPut([...intake.heads].map(([place, head]) => ({ place, ...head })));
    return intake;
  }

  protected rowsAfter(place: string, seq: number, limit: number): Promise<KeptRow[]> {
    const range = this.db.kept.where("[place+seq]").between([place, seq + 1], [place, Dexie.maxKey]);
    return range.limit(Math.min(limit, LONGEST_READ)).toArray();
  }
}

/** A row as the log gives it. */
export function toKept({ place: _place, id: _id, ...kept }: KeptRow): KeptEntry {
  return kept;
}

/** A kept entry as a row. */
export function toRow(kept: KeptEntry): KeptRow {
  return { ...kept, place: kept.entry.place, id: kept.entry.id };
}
