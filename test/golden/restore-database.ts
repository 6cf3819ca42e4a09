/** A browser's database as it was dumped: its version, and each store with its rows. */
export interface DumpedDatabase {
  readonly version: number;
  readonly stores: readonly DumpedStore[];
}

interface DumpedStore {
  readonly name: string;
  readonly keyPath: string | string[] | null;
  readonly autoIncrement: boolean;
  readonly indexes: readonly DumpedIndex[];
  readonly rows: readonly unknown[];
  /** Keys of the rows, where they are not in them. */
  readonly keys?: readonly IDBValidKey[];
}

interface DumpedIndex {
  readonly name: string;
  readonly keyPath: string | string[];
  readonly unique: boolean;
  readonly multiEntry: boolean;
}

/** Makes a database as it was dumped, by the browser's own interface alone. */
export function restoreDatabase(name: string, { version, stores }: DumpedDatabase): Promise<void> {
  return new Promise((done, fail) => {
    const request = indexedDB.open(name, version);
    request.addEventListener("upgradeneeded", () => stores.forEach((store) => fill(request.result, store)));
    request.addEventListener("error", () => fail(request.error));
    request.addEventListener("success", () => {
      request.result.close();
      done();
    });
  });
}

function fill(database: IDBDatabase, { name, keyPath, autoIncrement, indexes, rows, keys }: DumpedStore): void {
  const store = database.createObjectStore(name, { keyPath, autoIncrement });
  for (const index of indexes) store.createIndex(index.name, index.keyPath, index);
  rows.forEach((row, i) => void store.put(row, keys?.[i]));
}
