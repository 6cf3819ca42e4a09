import { setTimeout as sleep } from "node:timers/promises";
import type Database from "better-sqlite3";
import { CompiledQuery, SqliteDriver, type DatabaseConnection, type QueryResult } from "kysely";

/** Pause between two tries for a lock [ms]. */
const PAUSE = 5;

/**
 * Waits for another program's lock without standing still itself: SQLite's own waiting would stop the whole process,
 * and with it whatever in the process holds the lock.
 */
export class PatientDriver extends SqliteDriver {
  readonly #database: Database.Database;
  readonly #patience: number;

  constructor(database: Database.Database, patience: number) {
    super({ database });
    this.#database = database;
    this.#patience = patience;
  }

  override async acquireConnection(): Promise<DatabaseConnection> {
    return new PatientConnection(await super.acquireConnection(), this.#patience);
  }

  /** Takes the write lock at once: once it is held, no later statement of the transaction has to wait. */
  override async beginTransaction(connection: DatabaseConnection): Promise<void> {
    await connection.executeQuery(CompiledQuery.raw("begin immediate"));
  }

  /** A full disk ends the transaction by itself; rolling back once more would only hide why. */
  override async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
    if (this.#database.inTransaction) await super.rollbackTransaction(connection);
  }
}

class PatientConnection implements DatabaseConnection {
  readonly #inner: DatabaseConnection;
  readonly #tries: number;

  constructor(inner: DatabaseConnection, patience: number) {
    this.#inner = inner;
    this.#tries = Math.ceil(patience / PAUSE);
  }

  async executeQuery<R>(query: CompiledQuery): Promise<QueryResult<R>> {
    for (let left = this.#tries; ; left--) {
      try {
        return await this.#inner.executeQuery<R>(query);
      } catch (thrown) {
        if (left <= 0 || (thrown as { code?: unknown }).code !== "SQLITE_BUSY") throw thrown;
        await sleep(PAUSE);
      }
    }
  }

  streamQuery<R>(query: CompiledQuery, chunkSize?: number): AsyncIterableIterator<QueryResult<R>> {
    return this.#inner.streamQuery<R>(query, chunkSize);
  }
}
