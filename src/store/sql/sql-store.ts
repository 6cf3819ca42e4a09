import type { Kysely, Selectable, Transaction } from "kysely";
import { assert } from "#base";
import {
  checkBytes,
  genesisHash,
  isGenesis,
  planIntake,
  planRetaking,
  type ChainHead,
  type EntryForm,
  type Entry,
  type Held,
  type Intake,
  type KeptEntry,
  type PlaceChain,
} from "#log";
import {
  movedFrom,
  StoreError,
  type AppendListener,
  type AppendResult,
  type Cursor,
  type LogStore,
  type MailShelf,
  type PatternShelf,
  type Moved,
  type Photo,
  type SecretStore,
} from "#station";
import { SqlMail } from "./sql-mail.ts";
import { SqlPatterns } from "./sql-patterns.ts";
import { SqlStoredLog } from "./sql-stored-log.ts";
import type { EntryRow, Tables } from "./tables.ts";

/** Rows or ids in one statement: well under every database's limit of parameters. */
const CHUNK = 500;
/** Tries of one append, where other processes write at the same time. */
const TRIES = 5;

/** In what the two databases differ when entries are appended. */
export interface SqlEngine {
  /** Whether lines read in a transaction must be locked against other connections. */
  readonly lockRows: boolean;
  /** True for what another process's append at the same time can cause: trying again will do. */
  isCollision(thrown: unknown): boolean;
  /** Tells other processes, when the transaction succeeds, that these places grew. */
  announce(trx: Transaction<Tables>, places: readonly string[]): Promise<void>;
  /** Calls back for appends, by this process or another. */
  listen(listener: AppendListener): () => void;
  /** After an append by this process. */
  appended(places: readonly string[]): void;
  /** Lets go of everything but the database itself. */
  close(): Promise<void>;
}

/** Log and secrets in an SQL database. What is appended is on disk when `append` resolves, or nothing of it is. */
export class SqlStore extends SqlStoredLog implements LogStore, SecretStore {
  readonly mail: MailShelf;
  readonly patternShelf: PatternShelf;
  readonly #engine: SqlEngine;

  constructor(db: Kysely<Tables>, engine: SqlEngine) {
    super(db);
    this.mail = new SqlMail(db);
    this.patternShelf = new SqlPatterns(db);
    this.#engine = engine;
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

  async since(places: readonly string[], cursor: Cursor, limit: number): Promise<readonly KeptEntry[]> {
    const found: KeptEntry[] = [];
    for (const place of [...new Set(places)].sort()) {
      if (found.length >= limit) break;
      const query = this.db.selectFrom("log_entries").selectAll().where("place", "=", place);
      const after = query.where("seq", ">", cursor[place] ?? 0).orderBy("seq");
      found.push(...(await after.limit(limit - found.length).execute()).map(toKept));
    }
    return found;
  }

  async heads(): Promise<readonly { place: string; seq: number; hash: string }[]> {
    const query = this.db.selectFrom("chains").select(["place", "seq", "hash"]);
    return query.where("seq", ">", 0).orderBy("place").execute();
  }

  async find(id: string): Promise<KeptEntry | undefined> {
    const row = await withEnd(this.db).selectAll("log_entries").where("id", "=", id).executeTakeFirst();
    return row && toKept(withinLog(row));
  }

  /** Numbers have no gaps, so the places' last numbers add up to the count. */
  async count(): Promise<number> {
    const query = this.db.selectFrom("chains").select((row) => row.fn.sum<number | string | null>("seq").as("total"));
    return Number((await query.executeTakeFirst())?.total ?? 0);
  }

  async putPhoto({ hash, mime, bytes }: Photo): Promise<void> {
    checkBytes(hash, bytes);
    const row = { hash, mime, bytes: Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength) };
    await this.db.transaction().execute(async (trx) => {
      const insert = trx.insertInto("photos").values(row);
      await insert.onConflict((conflict) => conflict.column("hash").doNothing()).execute();
      const seen = trx.insertInto("photos_seen").values({ hash, mime });
      await seen.onConflict((conflict) => conflict.column("hash").doNothing()).execute();
    });
  }

  async photo(hash: string): Promise<Photo | undefined> {
    const row = await this.db.selectFrom("photos").selectAll().where("hash", "=", hash).executeTakeFirst();
    return row && { hash: row.hash, mime: row.mime, bytes: new Uint8Array(row.bytes) };
  }

  async missingPhotos(hashes: readonly string[]): Promise<readonly string[]> {
    const missing = new Set(hashes);
    for (const some of inChunks([...missing])) {
      const held = await this.db.selectFrom("photos").select("hash").where("hash", "in", some).execute();
      for (const { hash } of held) missing.delete(hash);
    }
    return [...missing];
  }

  onAppend(listener: AppendListener): () => void {
    return this.#engine.listen(listener);
  }

  async close(): Promise<void> {
    await this.#engine.close();
    await this.db.destroy();
  }

  async #take(entries: readonly Entry[], plan: (held: Held) => Intake, onlyAt: Cursor): Promise<AppendResult> {
    if (entries.length === 0) return { accepted: [], repeated: [], clashing: [] };
    const intake = await this.#retry(() =>
      this.db.transaction().execute((trx) => this.#takeWithin(trx, entries, plan, onlyAt)),
    );
    if ("moved" in intake) return { accepted: [], repeated: [], clashing: [], moved: intake.moved };
    if (intake.accepted.length > 0) this.#engine.appended([...intake.heads.keys()]);
    return { accepted: intake.accepted, repeated: intake.repeated, clashing: intake.clashing };
  }

  async #takeWithin(
    trx: Transaction<Tables>,
    entries: readonly Entry[],
    plan: (held: Held) => Intake,
    onlyAt: Cursor,
  ): Promise<Intake | Moved> {
    const places = new Set([...entries.map((entry) => entry.place), ...Object.keys(onlyAt)]);
    const heads = await this.#lockHeads(trx, [...places].sort());
    const moved = movedFrom(onlyAt, heads);
    if (moved.length > 0) return { moved };
    const intake = plan({ heads, hashes: await readHashes(trx, entries) });
    await writeIntake(trx, intake);
    if (intake.accepted.length > 0) await this.#engine.announce(trx, [...intake.heads.keys()]);
    return intake;
  }

  /** Holds the line of each place until the transaction ends, so that numbers and hashes follow on without gaps. */
  async #lockHeads(trx: Transaction<Tables>, places: readonly string[]): Promise<Map<string, ChainHead>> {
    const empty = places.map((place) => ({ place, seq: 0, hash: genesisHash(place) }));
    await trx
      .insertInto("chains")
      .values(empty)
      .onConflict((conflict) => conflict.column("place").doNothing())
      .execute();
    const query = trx.selectFrom("chains").selectAll().where("place", "in", places).orderBy("place");
    const rows = await (this.#engine.lockRows ? query.forUpdate() : query).execute();
    return new Map(rows.map((row) => [row.place, begunRightly(row)]));
  }

  async #retry<T>(work: () => Promise<T>): Promise<T> {
    for (let left = TRIES; ; left--) {
      try {
        return await work();
      } catch (thrown) {
        if (!this.#engine.isCollision(thrown)) throw thrown;
        if (left <= 1) throw crowdedOut(thrown);
      }
    }
  }
}

/** Lines, each with where its place's chain ends. */
function withEnd(db: Kysely<Tables>) {
  return db
    .selectFrom("log_entries")
    .leftJoin("chains", "chains.place", "log_entries.place")
    .select("chains.seq as end");
}

/**
 * A line under a number that its place's log does not reach is in no reader's log: whoever sent it must not be told that
 * it is kept.
 *
 * @throws StoreError ST-129 for one below 1 or beyond the last
 */
function withinLog<Row extends { place: string; seq: number; end: number | null }>(row: Row): Row {
  if (row.seq >= 1 && row.seq <= (row.end ?? 0)) return row;
  const found = `A line of place ${row.place} is kept under number ${row.seq}, outside its log.`;
  const remedy = "Nothing was kept of this, devices keep their lines: run drykeel verify, and put a backup back.";
  throw new StoreError("ST-129", found, remedy);
}

/**
 * Where a place's chain stands. A line after a false beginning would be kept broken, and its device told that it is kept.
 *
 * @throws StoreError ST-131 for a head before the first line that is not the place's genesis
 */
function begunRightly({ place, seq, hash }: PlaceChain): ChainHead {
  if (seq > 0 || isGenesis(place, { seq, hash })) return { seq, hash };
  const found = `The head kept with place ${place}, before its first line, is not the beginning of its log.`;
  const remedy = "Nothing was kept of this, devices keep their lines: run drykeel verify, and put a backup back.";
  throw new StoreError("ST-131", found, remedy);
}

function crowdedOut(cause: unknown): StoreError {
  const remedy = "Nothing was kept of this; devices will send again.";
  return new StoreError("ST-128", `Others wrote to the same places at each of ${TRIES} tries.`, remedy, cause);
}

async function readHashes(trx: Transaction<Tables>, entries: readonly Entry[]): Promise<Map<string, string>> {
  const hashes = new Map<string, string>();
  for (const ids of inChunks(entries.map((entry) => entry.id))) {
    const query = withEnd(trx).select(["id", "content", "log_entries.place", "log_entries.seq"]);
    for (const row of await query.where("id", "in", ids).execute()) hashes.set(row.id, withinLog(row).content);
  }
  return hashes;
}

async function writeIntake(trx: Transaction<Tables>, intake: Intake): Promise<void> {
  const rows = intake.accepted.map((kept, at) => toRow(kept, intake.forms[at]));
  for (const some of inChunks(rows)) await trx.insertInto("log_entries").values(some).execute();
  const begun = intake.accepted.filter(({ seq }) => seq === 1).map(({ entry }) => ({ place: entry.place }));
  for (const some of inChunks(begun)) {
    const insert = trx.insertInto("places_seen").values(some);
    await insert.onConflict((conflict) => conflict.column("place").doNothing()).execute();
  }
  for (const [place, { seq, hash }] of intake.heads) {
    await trx.updateTable("chains").set({ seq, hash }).where("place", "=", place).execute();
  }
}

function toRow({ entry, seq, hash, received }: KeptEntry, form: EntryForm | undefined): EntryRow {
  assert(form !== undefined, "an accepted entry has its form");
  return { place: entry.place, seq, id: entry.id, hash, content: form.hash, received, entry: form.text };
}

function toKept(row: Selectable<EntryRow>): KeptEntry {
  return { entry: JSON.parse(row.entry) as Entry, seq: row.seq, hash: row.hash, received: row.received };
}

function inChunks<T>(all: readonly T[]): T[][] {
  const chunks: T[][] = [];
  for (let at = 0; at < all.length; at += CHUNK) chunks.push(all.slice(at, at + CHUNK));
  return chunks;
}
