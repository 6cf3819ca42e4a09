import type { Kysely, Transaction } from "kysely";
import { instantOf } from "#log";
import type { Tables } from "./tables.ts";

/** Rows looked at in one go; others are served in between. */
const PAGE = 500;

/** Of a row: its key, and the instant by which it is judged. */
interface Row {
  readonly key: string;
  readonly at: string;
}

/** A table whose rows run out. */
interface Pile {
  /** The next rows in order of key. */
  page(trx: Transaction<Tables>, after: string): Promise<readonly Row[]>;
  /** Removes a row, unless it was renewed since it was read. */
  remove(trx: Transaction<Tables>, row: Row): Promise<{ readonly numDeletedRows: bigint }>;
}

const SESSIONS: Pile = {
  page: (trx, after) => {
    const rows = trx.selectFrom("sessions").select(["token_hash as key", "expires as at"]);
    return rows.where("token_hash", ">", after).orderBy("token_hash").limit(PAGE).execute();
  },
  remove: (trx, { key, at }) =>
    trx.deleteFrom("sessions").where("token_hash", "=", key).where("expires", "=", at).executeTakeFirst(),
};

const INVITES: Pile = {
  page: (trx, after) => {
    const rows = trx.selectFrom("invites").select(["code_hash as key", "expires as at"]);
    return rows.where("code_hash", ">", after).orderBy("code_hash").limit(PAGE).execute();
  },
  remove: (trx, { key, at }) =>
    trx.deleteFrom("invites").where("code_hash", "=", key).where("expires", "=", at).executeTakeFirst(),
};

const FAILURES: Pile = {
  page: (trx, after) => {
    const rows = trx.selectFrom("failures").select(["key", "last as at"]);
    return rows.where("key", ">", after).orderBy("key").limit(PAGE).execute();
  },
  remove: (trx, { key, at }) =>
    trx.deleteFrom("failures").where("key", "=", key).where("last", "=", at).executeTakeFirst(),
};

/** Removes what ran out. Times are compared as instants, not as text: they are written in any offset. */
export async function purgeTables(db: Kysely<Tables>, now: string, failuresBefore: string): Promise<number> {
  const isOver = (at: string) => instantOf(at) <= instantOf(now);
  const isOld = (at: string) => instantOf(at) < instantOf(failuresBefore);
  let gone = 0;
  for (const pile of [SESSIONS, INVITES]) gone += await sweep(db, pile, isOver);
  return gone + (await sweep(db, FAILURES, isOld));
}

async function sweep(db: Kysely<Tables>, pile: Pile, fits: (at: string) => boolean): Promise<number> {
  let gone = 0;
  for (let after: string | undefined = ""; after !== undefined;) {
    const from: string = after;
    const page = await db.transaction().execute((trx) => sweepPage(trx, pile, from, fits));
    gone += page.gone;
    after = page.last;
  }
  return gone;
}

async function sweepPage(trx: Transaction<Tables>, pile: Pile, after: string, fits: (at: string) => boolean) {
  const rows = await pile.page(trx, after);
  let gone = 0;
  for (const row of rows.filter(({ at }) => fits(at))) gone += Number((await pile.remove(trx, row)).numDeletedRows);
  return { gone, last: rows.length < PAGE ? undefined : rows.at(-1)?.key };
}
