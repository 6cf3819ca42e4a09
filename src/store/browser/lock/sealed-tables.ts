import { Dexie, type DBCore, type DBCoreTable, type Middleware } from "dexie";
import type { Row, RowSeal } from "./row-seal.ts";

/**
 * Puts the seal between the database and everything that reads or writes it. Each row is sealed or unsealed within the
 * transaction it belongs to, which is kept open meanwhile: whatever held for the rows in the clear holds for them sealed.
 */
export function sealTables(rowSeal: RowSeal): Middleware<DBCore> {
  return {
    stack: "dbcore",
    name: "seal",
    create: (core) => ({ ...core, table: (name) => sealTable(core.table(name), rowSeal) }),
  };
}

function sealTable(table: DBCoreTable, rowSeal: RowSeal): DBCoreTable {
  const open = (rows: readonly (Row | undefined)[]) =>
    within(async () => Promise.all(rows.map((row) => (row === undefined ? row : rowSeal.open(table.name, row)))));
  const close = (rows: readonly Row[]) =>
    within(async () => Promise.all(rows.map((row) => rowSeal.close(table.name, row))));
  return {
    ...table,
    get: (request) => table.get(request).then((row: Row | undefined) => open([row]).then(([opened]) => opened)),
    getMany: (request) => table.getMany(request).then((rows: (Row | undefined)[]) => open(rows)),
    query: (request) =>
      table
        .query(request)
        .then((found) =>
          request.values === true ? open(found.result).then((result) => ({ ...found, result })) : found,
        ),
    mutate: (request) =>
      request.type === "put" || request.type === "add"
        ? close(request.values as readonly Row[]).then((values) => table.mutate({ ...request, values }))
        : table.mutate(request),
    openCursor: (request) => {
      if (request.values === true) throw new Error(`Broken invariant: ${table.name} read row by row, past its seal`);
      return table.openCursor(request);
    },
  };
}

type Done<Value> = { readonly value: Value } | { readonly cause: unknown };

/** Waits within the transaction at hand. Its failure is carried past the wait, which would lose it. */
function within<Value>(work: () => Promise<Value>): Promise<Value> {
  const done = work().then(
    (value): Done<Value> => ({ value }),
    (cause: unknown): Done<Value> => ({ cause }),
  );
  return Dexie.waitFor(done).then((ended) => {
    if ("cause" in ended) throw ended.cause;
    return ended.value;
  }) as Promise<Value>;
}
