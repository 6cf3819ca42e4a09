import { copyFile, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openMemoryStore } from "#store/memory";
import { openSqliteStore, type SqliteStore } from "#store/sqlite";
import type { Copies, Store } from "./put-back-station.ts";

/** Stores in memory: a copy is its lines; what is beside the log stays as it is. */
export function memoryCopies(): Copies {
  const copies: Awaited<ReturnType<typeof linesOf>>[] = [];
  return {
    open: async () => openMemoryStore(),
    copy: async (store) => copies.push(await linesOf(store)) - 1,
    putBack: async (copy, before) => {
      const store = openMemoryStore();
      for (const { entry, received } of copies[copy]!) await store.append([entry], received);
      return besides(store, before);
    },
    clear: async () => undefined,
  };
}

async function linesOf(store: Store) {
  const heads = await store.heads();
  return store.since(
    heads.map(({ place }) => place),
    {},
    1_000_000,
  );
}

const OF_THE_LOG: ReadonlySet<PropertyKey> = new Set<keyof Store>([
  "append",
  "retake",
  "since",
  "heads",
  "find",
  "count",
  "putPhoto",
  "photo",
  "missingPhotos",
  "onAppend",
]);

/** The log of one store with the secrets of another. */
function besides(log: Store, secrets: Store): Store {
  return new Proxy(log, {
    get: (_, name) => {
      const from = OF_THE_LOG.has(name) ? log : secrets;
      const value: unknown = Reflect.get(from, name);
      return typeof value === "function" ? (value.bind(from) as unknown) : value;
    },
  });
}

/** SQLite as `running.md` says: `backup` while it runs; to put back: stop, the copy in place, nothing beside it. */
export async function sqliteCopies(): Promise<Copies & { readonly folder: string }> {
  const folder = await mkdtemp(join(tmpdir(), "drykeel-put-back-"));
  const path = join(folder, "drykeel.db");
  let made = 0;
  return {
    folder,
    open: () => openSqliteStore(path),
    copy: async (store) => {
      await (store as SqliteStore).backupTo(join(folder, `copy-${(made += 1)}.db`));
      return made;
    },
    putBack: async (copy, store) => {
      await store.close();
      await Promise.all(["-wal", "-shm"].map((end) => rm(path + end, { force: true })));
      await copyFile(join(folder, `copy-${copy}.db`), path);
      return openSqliteStore(path);
    },
    clear: () => rm(folder, { recursive: true }),
  };
}
