import type { Table } from "dexie";
import { CLEAR } from "./row-seal.ts";

/** Rows written anew in one transaction: few enough to lie in a phone's memory, and each waits for the disk once. */
const ROWS_AT_ONCE = 1000;
/** Photos are a thousand times as long as lines. */
const PHOTOS_AT_ONCE = 8;

/** How far a conversion is. */
export interface Progress {
  readonly done: number;
  readonly all: number;
}

/** Told after each step; what it throws ends the conversion there, as a kill would. */
export type OnProgress = (progress: Progress) => void;

/**
 * Reads every row and writes it anew, sealed or not as the seal is set. Each step is one transaction, and rows of both
 * sorts can be read at any time: it may be stopped anywhere, and begun again.
 */
export async function rewriteRows(tables: readonly Table[], onProgress: OnProgress): Promise<void> {
  const sealed = tables.filter((table) => table.name in CLEAR);
  const keys = await Promise.all(sealed.map(async (table) => (await table.toCollection().primaryKeys()) as unknown[]));
  const all = keys.reduce((sum, one) => sum + one.length, 0);
  let done = 0;
  onProgress({ done, all });
  for (const [at, table] of sealed.entries()) {
    const most = table.name === "photos" ? PHOTOS_AT_ONCE : ROWS_AT_ONCE;
    for (let from = 0; from < keys[at]!.length; from += most) {
      const step = keys[at]!.slice(from, from + most);
      await rewriteStep(table, step);
      onProgress({ done: (done += step.length), all });
    }
  }
}

/** Rows that went meanwhile stay away. */
async function rewriteStep(table: Table, keys: readonly unknown[]): Promise<void> {
  await table.db.transaction("rw", table, async () => {
    const rows = (await table.bulkGet([...keys])) as unknown[];
    await table.bulkPut(rows.filter((row) => row !== undefined));
  });
}
