import type { Kysely } from "kysely";
import type { IssuedPattern, LaidOutDraft, WrittenPattern, PatternShelf } from "#station";
import type { Tables } from "./tables.ts";

/** Issued patterns and drafts in tables beside the log: every server of the database sees them. */
export class SqlPatterns implements PatternShelf {
  readonly #db: Kysely<Tables>;

  constructor(db: Kysely<Tables>) {
    this.#db = db;
  }

  /** The table's key decides: of two who issue one version at once only one finds it free. */
  async issue({ id, version, text, beside, by, at }: IssuedPattern): Promise<boolean> {
    const { numInsertedOrUpdatedRows } = await this.#db
      .insertInto("issued_patterns")
      .values({ id, version, text, beside: JSON.stringify(beside), issuer: by, at })
      .onConflict((conflict) => conflict.doNothing())
      .executeTakeFirst();
    return numInsertedOrUpdatedRows === 1n;
  }

  issued(): Promise<readonly Pick<IssuedPattern, "id" | "version">[]> {
    return this.#db.selectFrom("issued_patterns").select(["id", "version"]).orderBy("id").orderBy("version").execute();
  }

  async issuedPattern(id: string, version: number): Promise<IssuedPattern | undefined> {
    const query = this.#db.selectFrom("issued_patterns").selectAll().where("id", "=", id);
    const row = await query.where("version", "=", version).executeTakeFirst();
    return row && { id, version, ...fileOf(row), by: row.issuer, at: row.at };
  }

  async layOut({ text, beside, by, at }: LaidOutDraft): Promise<void> {
    const row = { text, beside: JSON.stringify(beside), at };
    await this.#db
      .insertInto("pattern_drafts")
      .values({ person: by, ...row })
      .onConflict((conflict) => conflict.column("person").doUpdateSet(row))
      .execute();
  }

  async laidOut(): Promise<readonly LaidOutDraft[]> {
    const rows = await this.#db.selectFrom("pattern_drafts").selectAll().orderBy("person").execute();
    return rows.map((row) => ({ ...fileOf(row), by: row.person, at: row.at }));
  }

  async takeIn(by: string): Promise<void> {
    await this.#db.deleteFrom("pattern_drafts").where("person", "=", by).execute();
  }
}

function fileOf({ text, beside }: { readonly text: string; readonly beside: string }): WrittenPattern {
  return { text, beside: JSON.parse(beside) as WrittenPattern["beside"] };
}
