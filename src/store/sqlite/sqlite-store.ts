import { open, rename } from "node:fs/promises";
import { dirname, resolve } from "node:path";
import Database from "better-sqlite3";
import { Kysely, SqliteAdapter, SqliteDialect, sql, type Dialect } from "kysely";
import { migrate, SqlStore, translateErrors, type ColumnTypes, type SqlEngine, type Tables } from "#store/sql";
import { AppendWatch } from "./append-watch.ts";
import { makeFolder } from "./folder.ts";
import { PatientDriver } from "./patient-driver.ts";
import { keepPrivate, makePrivate, removePart } from "./private-file.ts";
import { translateOpening, translateSqlite } from "./sqlite-faults.ts";

const TYPES: ColumnTypes = { key: sql`text`, bytes: sql`blob` };

/** Page size of a new SQLite file. */
const PAGE_BYTES = 4096;
/** More pages than any file has. */
const ALL_PAGES = 2_147_483_647;
/** How long to wait for another program that holds the database [ms]. */
const PATIENCE = 5000;

export interface SqliteOptions {
  /** How long to wait for another program that holds the database [ms]. */
  readonly patience?: number;
  /** Greatest size of the database file [byte]; what would make it grow beyond is refused as on a full disk. */
  readonly limit?: number;
}

/** The station's log and secrets in one SQLite file. */
export class SqliteStore extends SqlStore {
  readonly #raw: Database.Database;

  constructor(raw: Database.Database, db: Kysely<Tables>) {
    super(db, createEngine(raw));
    this.#raw = raw;
  }

  /** What SQLite itself says of the file: "ok", or its first fault. */
  integrity(): string {
    return String(this.#raw.pragma("integrity_check(1)", { simple: true }));
  }

  /**
   * Copies the whole database to another file while work goes on. The copy is one consistent moment of the log, and
   * takes the place of `path` only once it is complete and on disk. It holds the sign-in secrets too: keep it as such.
   *
   * All pages but the first few are copied in one step, during which this process does nothing else: between steps a
   * line written by another process would begin the copy again, and a busy station would never let it end.
   *
   * @param path - file to write; an older one there is replaced, and nothing stays where it cannot be written
   * @returns size of the copy [byte]
   */
  async backupTo(path: string): Promise<{ readonly bytes: number }> {
    const part = `${resolve(path)}.part`;
    try {
      makeFolder(dirname(part));
      makePrivate(part);
      const { totalPages } = await this.#raw.backup(part, { progress: () => ALL_PAGES });
      await flush(part);
      await rename(part, resolve(path));
      return { bytes: totalPages * PAGE_BYTES };
    } catch (thrown) {
      removePart(part);
      throw translateOpening(thrown, path);
    }
  }
}

/**
 * Opens the station's database, making it and its folder where there is none, and brings it up to date.
 *
 * @param path - the database file, such as "data/drykeel.sqlite"
 * @throws InputError ST-110 where it cannot be written, ST-111 where the file is something else
 * @throws StoreError where the database is locked, read-only, damaged or newer than this version
 */
export async function openSqliteStore(path: string, options: SqliteOptions = {}): Promise<SqliteStore> {
  try {
    makeFolder(dirname(resolve(path)));
    keepPrivate(path);
    const raw = openFile(path, options);
    const db = new Kysely<Tables>({
      dialect: translateErrors(createDialect(raw, options.patience ?? PATIENCE), translateSqlite),
    });
    return await migrateOrClose(raw, db);
  } catch (thrown) {
    throw translateOpening(thrown, path);
  }
}

/** WAL with a full flush at every commit: what is acknowledged survives a pulled plug. */
function openFile(path: string, { patience = PATIENCE, limit }: SqliteOptions): Database.Database {
  const raw = new Database(path, { timeout: patience });
  try {
    raw.pragma("journal_mode = WAL");
    raw.pragma("synchronous = FULL");
    raw.pragma("foreign_keys = ON");
    raw.pragma("trusted_schema = OFF");
    raw.pragma("busy_timeout = 0");
    if (limit !== undefined) raw.pragma(`max_page_count = ${Math.ceil(limit / PAGE_BYTES)}`);
    return raw;
  } catch (thrown) {
    raw.close();
    throw thrown;
  }
}

async function migrateOrClose(raw: Database.Database, db: Kysely<Tables>): Promise<SqliteStore> {
  try {
    await migrate(db, TYPES);
    return new SqliteStore(raw, db);
  } catch (thrown) {
    await db.destroy();
    throw thrown;
  }
}

/** SQLite makes tables within a transaction as it does everything: two programs that open a new file make them once. */
class TransactionalAdapter extends SqliteAdapter {
  override get supportsTransactionalDdl(): boolean {
    return true;
  }
}

function createDialect(raw: Database.Database, patience: number): Dialect {
  const dialect = new SqliteDialect({ database: raw });
  return {
    createAdapter: () => new TransactionalAdapter(),
    createDriver: () => new PatientDriver(raw, patience),
    createIntrospector: (db) => dialect.createIntrospector(db),
    createQueryCompiler: () => dialect.createQueryCompiler(),
  };
}

function createEngine(raw: Database.Database): SqlEngine {
  const watch = new AppendWatch(raw);
  return {
    lockRows: false,
    isCollision: () => false,
    announce: async () => {},
    listen: (listener) => watch.listen(listener),
    appended: (places) => watch.tell(places),
    close: async () => watch.close(),
  };
}

async function flush(path: string): Promise<void> {
  const file = await open(path, "r+");
  try {
    await file.sync();
  } finally {
    await file.close();
  }
}
