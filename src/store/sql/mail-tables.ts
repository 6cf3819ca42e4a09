import type { Kysely, RawBuilder } from "kysely";

interface KeyType {
  /** Text that sorts by code point, not by language. */
  readonly key: RawBuilder<unknown>;
}

/** What people want to be told, the letters to them, and since when what they are told of has lasted. */
export async function createMail(db: Kysely<unknown>, { key }: KeyType): Promise<void> {
  await db.schema
    .createTable("mail_wishes")
    .addColumn("person", key, (column) => column.primaryKey())
    .addColumn("wish", "text", (column) => column.notNull())
    .execute();
  await db.schema
    .createTable("mail_stretches")
    .addColumn("key", key, (column) => column.primaryKey())
    .addColumn("begun", "text", (column) => column.notNull())
    .execute();
  await createLetters(db, { key });
}

async function createLetters(db: Kysely<unknown>, { key }: KeyType): Promise<void> {
  await db.schema
    .createTable("mail_letters")
    .addColumn("id", key, (column) => column.primaryKey())
    .addColumn("person", key, (column) => column.notNull())
    .addColumn("address", "text", (column) => column.notNull())
    .addColumn("subject", "text", (column) => column.notNull())
    .addColumn("text", "text", (column) => column.notNull())
    .addColumn("standing", key, (column) => column.notNull())
    .addColumn("tries", "integer", (column) => column.notNull())
    .addColumn("made", key, (column) => column.notNull())
    .addColumn("due", key, (column) => column.notNull())
    .addColumn("at", key, (column) => column.notNull())
    .addColumn("said", "text")
    .execute();
  await db.schema.createIndex("mail_letters_due").on("mail_letters").columns(["standing", "due"]).execute();
  await db.schema.createIndex("mail_letters_person").on("mail_letters").columns(["person", "made"]).execute();
}

/** How often servers went round the letters: one row. */
export async function createMailRounds(db: Kysely<unknown>, { key }: KeyType): Promise<void> {
  await db.schema
    .createTable("mail_rounds")
    .addColumn("number", "integer", (column) => column.primaryKey())
    .addColumn("count", "integer", (column) => column.notNull())
    .addColumn("at", key, (column) => column.notNull())
    .execute();
}

export interface MailRoundRow {
  number: number;
  count: number;
  at: string;
}

/** A wish is kept as JSON: nothing is looked for in it. */
export interface MailWishRow {
  person: string;
  wish: string;
}

export interface MailStretchRow {
  key: string;
  begun: string;
}

/** Times are in UTC to the millisecond, so that they sort as text. */
export interface MailLetterRow {
  id: string;
  person: string;
  address: string;
  subject: string;
  text: string;
  standing: "waiting" | "under-way" | "sent" | "in-doubt" | "given-up";
  tries: number;
  made: string;
  due: string;
  at: string;
  said: string | null;
}
