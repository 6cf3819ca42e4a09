import type { CompiledQuery, DatabaseConnection, Dialect, Driver, QueryResult, TransactionSettings } from "kysely";

/** Turns what a database throws into what the station can act upon; gives back what it does not know. */
export type Translate = (thrown: unknown) => unknown;

/** The same dialect, with everything its driver throws translated in one place. */
export function translateErrors(dialect: Dialect, translate: Translate): Dialect {
  return {
    createAdapter: () => dialect.createAdapter(),
    createDriver: () => new TranslatingDriver(dialect.createDriver(), translate),
    createIntrospector: (db) => dialect.createIntrospector(db),
    createQueryCompiler: () => dialect.createQueryCompiler(),
  };
}

class TranslatingDriver implements Driver {
  readonly #inner: Driver;
  readonly #translate: Translate;

  constructor(inner: Driver, translate: Translate) {
    this.#inner = inner;
    this.#translate = translate;
  }

  init(): Promise<void> {
    return this.#guard(() => this.#inner.init());
  }

  async acquireConnection(): Promise<DatabaseConnection> {
    const connection = await this.#guard(() => this.#inner.acquireConnection());
    return new TranslatingConnection(connection, this.#translate);
  }

  beginTransaction(connection: DatabaseConnection, settings: TransactionSettings): Promise<void> {
    return this.#guard(() => this.#inner.beginTransaction(innerOf(connection), settings));
  }

  commitTransaction(connection: DatabaseConnection): Promise<void> {
    return this.#guard(() => this.#inner.commitTransaction(innerOf(connection)));
  }

  rollbackTransaction(connection: DatabaseConnection): Promise<void> {
    return this.#guard(() => this.#inner.rollbackTransaction(innerOf(connection)));
  }

  releaseConnection(connection: DatabaseConnection): Promise<void> {
    return this.#inner.releaseConnection(innerOf(connection));
  }

  destroy(): Promise<void> {
    return this.#inner.destroy();
  }

  async #guard<T>(work: () => Promise<T>): Promise<T> {
    try {
      return await work();
    } catch (thrown) {
      throw this.#translate(thrown);
    }
  }
}

class TranslatingConnection implements DatabaseConnection {
  readonly inner: DatabaseConnection;
  readonly #translate: Translate;

  constructor(inner: DatabaseConnection, translate: Translate) {
    this.inner = inner;
    this.#translate = translate;
  }

  async executeQuery<R>(query: CompiledQuery): Promise<QueryResult<R>> {
    try {
      return await this.inner.executeQuery<R>(query);
    } catch (thrown) {
      throw this.#translate(thrown);
    }
  }

  streamQuery<R>(query: CompiledQuery, chunkSize?: number): AsyncIterableIterator<QueryResult<R>> {
    return this.inner.streamQuery<R>(query, chunkSize);
  }
}

function innerOf(connection: DatabaseConnection): DatabaseConnection {
  return connection instanceof TranslatingConnection ? connection.inner : connection;
}
