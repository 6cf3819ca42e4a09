import { sql, type Kysely, type Selectable } from "kysely";
import type { KeptLetter, Letter, LetterOutcome, MailRound, MailShelf, MailWish } from "#station";
import type { MailLetterRow } from "./mail-tables.ts";
import type { Tables } from "./tables.ts";

/** Mail in tables beside the log. */
export class SqlMail implements MailShelf {
  readonly #db: Kysely<Tables>;

  constructor(db: Kysely<Tables>) {
    this.#db = db;
  }

  async wishes(): Promise<readonly MailWish[]> {
    const rows = await this.#db.selectFrom("mail_wishes").select("wish").orderBy("person").execute();
    return rows.map(({ wish }) => JSON.parse(wish) as MailWish);
  }

  async putWish(wish: MailWish): Promise<void> {
    const row = { wish: JSON.stringify(wish) };
    await this.#db
      .insertInto("mail_wishes")
      .values({ person: wish.person, ...row })
      .onConflict((conflict) => conflict.column("person").doUpdateSet(row))
      .execute();
  }

  async removeWish(person: string): Promise<void> {
    await this.#db.transaction().execute(async (trx) => {
      await trx.deleteFrom("mail_wishes").where("person", "=", person).execute();
      const letters = trx.deleteFrom("mail_letters").where("person", "=", person);
      await letters.where("standing", "=", "waiting").execute();
    });
  }

  async beginStretch(key: string, at: string): Promise<string> {
    await this.#db
      .insertInto("mail_stretches")
      .values({ key, begun: at })
      .onConflict((conflict) => conflict.doNothing())
      .execute();
    const held = this.#db.selectFrom("mail_stretches").select("begun").where("key", "=", key);
    return (await held.executeTakeFirst())?.begun ?? at;
  }

  async endStretch(key: string): Promise<void> {
    await this.#db.deleteFrom("mail_stretches").where("key", "=", key).execute();
  }

  async post(letters: readonly Letter[], at: string): Promise<void> {
    const instant = inUtc(at);
    for (const letter of letters) {
      const row = { ...letter, standing: "waiting" as const, tries: 0, made: instant, due: instant, at: instant };
      await this.#db
        .insertInto("mail_letters")
        .values({ ...row, said: null })
        .onConflict((conflict) => conflict.doNothing())
        .execute();
    }
  }

  /** The update decides who gets it: of two takers at once only one finds it waiting. */
  async takeLetter(at: string, until: string): Promise<KeptLetter | undefined> {
    const waiting = this.#db.selectFrom("mail_letters").select("id").where("standing", "=", "waiting");
    const next = await waiting.where("due", "<=", inUtc(at)).orderBy("due").orderBy("id").executeTakeFirst();
    if (next === undefined) return undefined;
    const taken = await this.#db
      .updateTable("mail_letters")
      .set((row) => ({
        standing: "under-way" as const,
        tries: row("tries", "+", 1),
        due: inUtc(until),
        at: inUtc(at),
      }))
      .where("id", "=", next.id)
      .where("standing", "=", "waiting")
      .returningAll()
      .executeTakeFirst();
    return taken === undefined ? this.takeLetter(at, until) : toLetter(taken);
  }

  async settleLetter(id: string, outcome: LetterOutcome): Promise<void> {
    const due = outcome.kind === "waiting" ? { due: inUtc(outcome.due) } : {};
    const said = outcome.kind === "sent" ? null : outcome.said;
    await this.#db
      .updateTable("mail_letters")
      .set({ standing: outcome.kind, at: inUtc(outcome.at), said, ...due })
      .where("id", "=", id)
      .where("standing", "=", "under-way")
      .execute();
  }

  async sendAgain(id: string, person: string, at: string): Promise<boolean> {
    const { numUpdatedRows } = await this.#db
      .updateTable("mail_letters")
      .set({ standing: "waiting", due: inUtc(at), at: inUtc(at) })
      .where("id", "=", id)
      .where("person", "=", person)
      .where("standing", "in", ["in-doubt", "given-up"])
      .executeTakeFirst();
    return numUpdatedRows > 0n;
  }

  async doubtLetters(at: string, said: string): Promise<void> {
    await this.#db
      .updateTable("mail_letters")
      .set({ standing: "in-doubt", at: inUtc(at), said })
      .where("standing", "=", "under-way")
      .where("due", "<=", inUtc(at))
      .execute();
  }

  async doubtWaiting(at: string, said: string): Promise<void> {
    const letters = this.#db.updateTable("mail_letters").set({ standing: "in-doubt", at: inUtc(at), said });
    await letters.where("standing", "=", "waiting").execute();
  }

  async lastRound(): Promise<MailRound | undefined> {
    return this.#db.selectFrom("mail_rounds").select(["count", "at"]).executeTakeFirst();
  }

  /** One statement: of servers that count at once each gets a number of its own. */
  async countRound(at: string, past: number): Promise<number> {
    const instant = inUtc(at);
    const counted = await this.#db
      .insertInto("mail_rounds")
      .values({ number: 1, count: past + 1, at: instant })
      .onConflict((conflict) =>
        conflict.column("number").doUpdateSet({
          count: sql<number>`case when mail_rounds.count < ${past} then ${past} else mail_rounds.count end + 1`,
          at: instant,
        }),
      )
      .returning("count")
      .executeTakeFirstOrThrow();
    return counted.count;
  }

  async lettersOf(person: string, limit: number): Promise<readonly KeptLetter[]> {
    const query = this.#db.selectFrom("mail_letters").selectAll().where("person", "=", person);
    const rows = await query.orderBy("made", "desc").orderBy("id", "desc").limit(limit).execute();
    return rows.map(toLetter);
  }

  async forgetLetters(before: string): Promise<void> {
    const query = this.#db.deleteFrom("mail_letters").where("made", "<", inUtc(before));
    await query.where("standing", "not in", ["waiting", "under-way"]).execute();
  }
}

function toLetter({ said, ...row }: Selectable<MailLetterRow>): KeptLetter {
  return { ...row, ...(said !== null && { said }) };
}

function inUtc(instant: string): string {
  return new Date(instant).toISOString();
}
