import type { Kysely, RawBuilder } from "kysely";

interface KeyType {
  /** Text that sorts by code point, not by language. */
  readonly key: RawBuilder<unknown>;
}

/** Patterns issued to the station, and drafts laid out for its devices. */
export async function createPatterns(db: Kysely<unknown>, { key }: KeyType): Promise<void> {
  await db.schema
    .createTable("issued_patterns")
    .addColumn("id", key, (column) => column.notNull())
    .addColumn("version", "integer", (column) => column.notNull())
    .addColumn("text", "text", (column) => column.notNull())
    .addColumn("beside", "text", (column) => column.notNull())
    .addColumn("issuer", key, (column) => column.notNull())
    .addColumn("at", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("issued_patterns_id_version", ["id", "version"])
    .execute();
  await db.schema
    .createTable("pattern_drafts")
    .addColumn("person", key, (column) => column.primaryKey())
    .addColumn("text", "text", (column) => column.notNull())
    .addColumn("beside", "text", (column) => column.notNull())
    .addColumn("at", "text", (column) => column.notNull())
    .execute();
}

/** `beside` is JSON: text of files by name. */
export interface IssuedPatternRow {
  id: string;
  version: number;
  text: string;
  beside: string;
  issuer: string;
  at: string;
}

export interface PatternDraftRow {
  person: string;
  text: string;
  beside: string;
  at: string;
}
