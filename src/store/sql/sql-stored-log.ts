import { sql, type Transaction } from "kysely";
import {
  isAhead,
  isGenesis,
  readHeadList,
  type ChainHead,
  type SignedHead,
  type SignedHeadList,
  type StoredLine,
} from "#log";
import type { HeadShelf, PhotoSeen, ShelvedSnapshot, SignedRows, SnapshotShelf, StoredLog } from "#station";
import { SqlSecrets } from "./sql-secrets.ts";
import type { Tables } from "./tables.ts";

/** The one row of the snapshots, and of the signed lists. */
const NEWEST = 1;

/** The tables of the log as they are, and the signed heads and the snapshot beside them. */
export class SqlStoredLog extends SqlSecrets implements StoredLog, HeadShelf, SnapshotShelf {
  async storedPlaces(): Promise<readonly string[]> {
    const named = new Set<string>();
    for (const table of ["log_entries", "places_seen", "signed_heads"] as const) {
      const rows = await this.db.selectFrom(table).select("place").distinct().execute();
      for (const { place } of rows) named.add(place);
    }
    const heads = await this.db.selectFrom("chains").select(["place", "seq", "hash"]).execute();
    for (const { place, ...head } of heads) if (!isGenesis(place, head)) named.add(place);
    return [...named].sort();
  }

  async placesSeen(): Promise<readonly string[]> {
    return (await this.db.selectFrom("places_seen").select("place").execute()).map(({ place }) => place);
  }

  storedLines(place: string, after: number | undefined, limit: number): Promise<readonly StoredLine[]> {
    const ofPlace = this.db.selectFrom("log_entries").selectAll().where("place", "=", place);
    const query = after === undefined ? ofPlace : ofPlace.where("seq", ">", after);
    return query.orderBy("seq").limit(limit).execute();
  }

  storedHead(place: string): Promise<ChainHead | undefined> {
    const query = this.db.selectFrom("chains").select(["seq", "hash"]).where("place", "=", place);
    return query.executeTakeFirst();
  }

  /** In one statement: a server may sign meanwhile. */
  async storedSigned(): Promise<SignedRows> {
    const { rows } = await sql<{ kind: string; place: string; seq: number; held: string | null }>`
      select 'head' as kind, place, seq, head as held from signed_heads
      union all select 'list', '', 0, list from signed_lists where number = ${NEWEST}
      order by kind, place`.execute(this.db);
    const ofHeads = rows.filter(({ kind }) => kind === "head");
    const heads = ofHeads.map(({ place, seq, held }) => ({ place, seq, head: held ?? "" }));
    return { heads, lists: rows.filter(({ kind }) => kind === "list").map(({ held }) => held) };
  }

  async photoHashes(after: string, limit: number): Promise<readonly string[]> {
    const query = this.db.selectFrom("photos").select("hash").where("hash", ">", after);
    return (await query.orderBy("hash").limit(limit).execute()).map(({ hash }) => hash);
  }

  async storedLives(): Promise<{ epochs: readonly string[]; secrets: readonly string[] }> {
    const epochs = await this.db
      .selectFrom("epochs")
      .select("id")
      .where("because", "!=", "seen")
      .orderBy("number")
      .execute();
    const secrets = await this.db.selectFrom("voucher_keys").select("secret").where("number", "=", 1).execute();
    return { epochs: epochs.map(({ id }) => id), secrets: secrets.map(({ secret }) => secret) };
  }

  photosSeen(after: string, limit: number): Promise<readonly PhotoSeen[]> {
    const query = this.db.selectFrom("photos_seen").selectAll().where("hash", ">", after);
    return query.orderBy("hash").limit(limit).execute();
  }

  async signedHeads(): Promise<readonly SignedHead[]> {
    return (await this.storedSigned()).heads.map(({ head }) => JSON.parse(head) as SignedHead);
  }

  async signedList(): Promise<SignedHeadList | undefined> {
    const [text] = (await this.storedSigned()).lists;
    return text === null || text === undefined ? undefined : readHeadList(text);
  }

  /** The row of the list is changed first, so that it is locked: one server after the other. */
  async keepSigned(list: SignedHeadList, heads: readonly SignedHead[]): Promise<void> {
    await this.db.transaction().execute(async (trx) => {
      const row = trx.updateTable("signed_lists").where("number", "=", NEWEST);
      const held = await row.set({ number: NEWEST }).returning("list").executeTakeFirst();
      if (held === undefined || !mayFollow(held.list, list)) return;
      await row.set({ list: JSON.stringify(list) }).execute();
      for (const head of heads) await keepHead(trx, head);
    });
  }

  async shelvedSnapshot(): Promise<ShelvedSnapshot | undefined> {
    const query = this.db.selectFrom("snapshots").select(["about", "seal", "packed"]).where("number", "=", NEWEST);
    const row = await query.executeTakeFirst();
    return row && { ...row, packed: new Uint8Array(row.packed) };
  }

  async shelveSnapshot(snapshot: ShelvedSnapshot | undefined): Promise<void> {
    if (snapshot === undefined) {
      await this.db.deleteFrom("snapshots").execute();
      return;
    }
    const { about, seal, packed } = snapshot;
    const row = { about, seal, packed: Buffer.from(packed.buffer, packed.byteOffset, packed.byteLength) };
    await this.db
      .insertInto("snapshots")
      .values({ number: NEWEST, ...row })
      .onConflict((conflict) => conflict.column("number").doUpdateSet(row))
      .execute();
  }
}

async function keepHead(trx: Transaction<Tables>, head: SignedHead): Promise<void> {
  const { place, number: seq } = head;
  const rest = { seq, head: JSON.stringify(head) };
  await trx
    .insertInto("signed_heads")
    .values({ place, ...rest })
    .onConflict((conflict) => conflict.column("place").doUpdateSet(rest).where("signed_heads.seq", "<", seq))
    .execute();
}

/** A list that was changed stays, for whoever looks. */
function mayFollow(held: string | null, list: SignedHeadList): boolean {
  if (held === null) return true;
  const before = readHeadList(held);
  return before !== undefined && !isAhead(before, list);
}
