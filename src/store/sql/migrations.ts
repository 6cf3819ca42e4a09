import { type Kysely, type Migration, type MigrationProvider, Migrator, type RawBuilder, sql } from "kysely";
import { StoreError } from "#station";
import { randomBytes, randomUUID } from "node:crypto";
import { createMail, createMailRounds } from "./mail-tables.ts";
import { createPatterns } from "./pattern-tables.ts";
import { missingStep } from "./damaged-tables.ts";
import type { Tables } from "./tables.ts";

/** What the two databases call the same thing. */
export interface ColumnTypes {
  /** Text that sorts by code point, not by language. */
  readonly key: RawBuilder<unknown>;
  readonly bytes: RawBuilder<unknown>;
}

type Step = (db: Kysely<unknown>, types: ColumnTypes) => Promise<void>;

/** In order; a step that has shipped is never changed, only followed by another. */
export const STEPS: readonly (readonly [name: string, step: Step])[] = [
  ["0001-log", createLog],
  ["0002-photos", createPhotos],
  ["0003-secrets", createSecrets],
  ["0004-epoch", createEpochs],
  ["0005-heads", createHeads],
  ["0006-photos-seen", createPhotosSeen],
  ["0007-snapshots", createSnapshots],
  ["0008-mail", createMail],
  ["0009-patterns", createPatterns],
  ["0010-mail-rounds", createMailRounds],
  ["0011-signed-lists", createSignedLists],
];

async function createLog(db: Kysely<unknown>, { key }: ColumnTypes): Promise<void> {
  await db.schema
    .createTable("log_entries")
    .addColumn("place", key, (column) => column.notNull())
    .addColumn("seq", "integer", (column) => column.notNull())
    .addColumn("id", key, (column) => column.notNull().unique())
    .addColumn("hash", "text", (column) => column.notNull())
    .addColumn("content", "text", (column) => column.notNull())
    .addColumn("received", "text", (column) => column.notNull())
    .addColumn("entry", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("log_entries_place_seq", ["place", "seq"])
    .execute();
  await db.schema
    .createTable("chains")
    .addColumn("place", key, (column) => column.primaryKey())
    .addColumn("seq", "integer", (column) => column.notNull())
    .addColumn("hash", "text", (column) => column.notNull())
    .execute();
}

async function createPhotos(db: Kysely<unknown>, { key, bytes }: ColumnTypes): Promise<void> {
  await db.schema
    .createTable("photos")
    .addColumn("hash", key, (column) => column.primaryKey())
    .addColumn("mime", "text", (column) => column.notNull())
    .addColumn("bytes", bytes, (column) => column.notNull())
    .execute();
}

async function createSecrets(db: Kysely<unknown>, types: ColumnTypes): Promise<void> {
  await createCredentials(db, types);
  await createSessions(db, types);
  await db.schema
    .createTable("invites")
    .addColumn("code_hash", types.key, (column) => column.primaryKey())
    .addColumn("person", types.key, (column) => column.notNull())
    .addColumn("made_by", types.key, (column) => column.notNull())
    .addColumn("expires", "text", (column) => column.notNull())
    .execute();
}

async function createCredentials(db: Kysely<unknown>, { key }: ColumnTypes): Promise<void> {
  await db.schema
    .createTable("credentials")
    .addColumn("id", key, (column) => column.primaryKey())
    .addColumn("person", key, (column) => column.notNull())
    .addColumn("kind", "text", (column) => column.notNull())
    .addColumn("secret", "text", (column) => column.notNull())
    .addColumn("counter", "bigint", (column) => column.notNull())
    .addColumn("transports", "text")
    .addColumn("created", "text", (column) => column.notNull())
    .execute();
  await db.schema.createIndex("credentials_person").on("credentials").column("person").execute();
  await db.schema
    .createTable("failures")
    .addColumn("key", key, (column) => column.primaryKey())
    .addColumn("count", "integer", (column) => column.notNull().defaultTo(1))
    .addColumn("last", "text", (column) => column.notNull())
    .execute();
}

async function createSessions(db: Kysely<unknown>, { key }: ColumnTypes): Promise<void> {
  await db.schema
    .createTable("sessions")
    .addColumn("token_hash", key, (column) => column.primaryKey())
    .addColumn("person", key, (column) => column.notNull())
    .addColumn("device", key, (column) => column.notNull())
    .addColumn("created", "text", (column) => column.notNull())
    .addColumn("expires", "text", (column) => column.notNull())
    .execute();
  await db.schema.createIndex("sessions_person").on("sessions").column("person").execute();
  await db.schema.createIndex("sessions_device").on("sessions").column("device").execute();
}

/** What `verify` holds the log against: every place that ever had a line, and the newest head signed of each. */
async function createHeads(db: Kysely<unknown>, { key }: ColumnTypes): Promise<void> {
  await db.schema
    .createTable("places_seen")
    .addColumn("place", key, (column) => column.primaryKey())
    .execute();
  await sql`insert into places_seen (place) select place from chains where seq > 0`.execute(db);
  await db.schema
    .createTable("signed_heads")
    .addColumn("place", key, (column) => column.primaryKey())
    .addColumn("seq", "integer", (column) => column.notNull())
    .addColumn("head", "text", (column) => column.notNull())
    .execute();
}

/** What `verify` holds the signed heads and the places against: one row that is there before anything was signed. */
async function createSignedLists(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable("signed_lists")
    .addColumn("number", "integer", (column) => column.primaryKey())
    .addColumn("list", "text")
    .execute();
  const made = db as Kysely<Pick<Tables, "signed_lists">>;
  await made.insertInto("signed_lists").values({ number: 1, list: null }).execute();
}

/** What `verify` holds the photos against: every one that ever came, and what kind of picture it was. */
async function createPhotosSeen(db: Kysely<unknown>, { key }: ColumnTypes): Promise<void> {
  await db.schema
    .createTable("photos_seen")
    .addColumn("hash", key, (column) => column.primaryKey())
    .addColumn("mime", "text", (column) => column.notNull())
    .execute();
  await sql`insert into photos_seen (hash, mime) select hash, mime from photos`.execute(db);
}

/** What the log came to when a server last looked, so that nobody waits for it after a start. */
async function createSnapshots(db: Kysely<unknown>, { bytes }: ColumnTypes): Promise<void> {
  await db.schema
    .createTable("snapshots")
    .addColumn("number", "integer", (column) => column.primaryKey())
    .addColumn("about", "text", (column) => column.notNull())
    .addColumn("seal", "text", (column) => column.notNull())
    .addColumn("packed", bytes, (column) => column.notNull())
    .execute();
}

/** The database's first life, and the key of the vouchers that the station gives devices for what it keeps. */
async function createEpochs(db: Kysely<unknown>, { key }: ColumnTypes): Promise<void> {
  await db.schema
    .createTable("epochs")
    .addColumn("number", "integer", (column) => column.primaryKey())
    .addColumn("id", key, (column) => column.notNull().unique())
    .addColumn("begun", "text", (column) => column.notNull())
    .addColumn("because", "text", (column) => column.notNull())
    .execute();
  await db.schema
    .createTable("voucher_keys")
    .addColumn("number", "integer", (column) => column.primaryKey())
    .addColumn("secret", "text", (column) => column.notNull())
    .execute();
  const made = db as Kysely<Pick<Tables, "epochs" | "voucher_keys">>;
  const first = { number: 1, id: randomUUID(), begun: new Date().toISOString(), because: "made" } as const;
  await made.insertInto("epochs").values(first).execute();
  await made
    .insertInto("voucher_keys")
    .values({ number: 1, secret: randomBytes(32).toString("hex") })
    .execute();
}

/** Brings a database up to the newest step, or refuses one that a newer version has been at. */
export async function migrate<T>(db: Kysely<T>, types: ColumnTypes): Promise<void> {
  const provider: MigrationProvider = { getMigrations: async () => Object.fromEntries(STEPS.map(toMigration(types))) };
  const migrator = new Migrator({ db, provider });
  const known = new Set(STEPS.map(([name]) => name));
  const { error } = await migrator.migrateToLatest();
  if (error === undefined) return;
  const done = await namesDone(db);
  if (done.some((name) => !known.has(name))) throw newerDatabase(error);
  const names = [...known];
  throw missingStep(names, done, error) ?? error;
}

function toMigration(types: ColumnTypes): (step: readonly [string, Step]) => [string, Migration] {
  return ([name, step]) => [name, { up: (db) => step(db as Kysely<unknown>, types) }];
}

async function namesDone<T>(db: Kysely<T>): Promise<readonly string[]> {
  const done = await sql<{ name: string }>`select name from kysely_migration`.execute(db);
  return done.rows.map((row) => row.name);
}

function newerDatabase(cause: unknown): StoreError {
  return new StoreError(
    "ST-130",
    "The database was last used by a newer version of Drykeel.",
    "Start that version or a later one; this one has left the database as it was.",
    cause,
  );
}
