import type { Kysely, Selectable } from "kysely";
import { instantOf } from "#log";
import type { Credential, Epoch, Invite, SecretStore, Session } from "#station";
import { purgeTables } from "./purge.ts";
import type { CredentialRow, InviteRow, SessionRow, Tables } from "./tables.ts";

/** What must never be in the log, in the tables beside it. */
export class SqlSecrets implements SecretStore {
  protected readonly db: Kysely<Tables>;

  constructor(db: Kysely<Tables>) {
    this.db = db;
  }

  async putCredential(credential: Credential): Promise<void> {
    const { id, person, kind, secret, counter, created } = credential;
    const transports = credential.transports === undefined ? null : JSON.stringify(credential.transports);
    const rest = { person, kind, secret, counter, transports, created };
    await this.db
      .insertInto("credentials")
      .values({ id, ...rest })
      .onConflict((conflict) => conflict.column("id").doUpdateSet(rest))
      .execute();
  }

  async credentialsOf(person: string): Promise<readonly Credential[]> {
    const query = this.db.selectFrom("credentials").selectAll().where("person", "=", person).orderBy("id");
    return (await query.execute()).map(toCredential);
  }

  async credential(id: string): Promise<Credential | undefined> {
    const row = await this.db.selectFrom("credentials").selectAll().where("id", "=", id).executeTakeFirst();
    return row && toCredential(row);
  }

  async removeCredential(id: string): Promise<void> {
    await this.db.deleteFrom("credentials").where("id", "=", id).execute();
  }

  async noteFailure(key: string, at: string): Promise<{ readonly count: number }> {
    return this.db
      .insertInto("failures")
      .values({ key, count: 1, last: at })
      .onConflict((conflict) =>
        conflict.column("key").doUpdateSet((row) => ({ count: row("failures.count", "+", 1), last: at })),
      )
      .returning("count")
      .executeTakeFirstOrThrow();
  }

  async failures(key: string): Promise<{ readonly count: number; readonly last?: string }> {
    const query = this.db.selectFrom("failures").select(["count", "last"]).where("key", "=", key);
    return (await query.executeTakeFirst()) ?? { count: 0 };
  }

  async clearFailures(key: string): Promise<void> {
    await this.db.deleteFrom("failures").where("key", "=", key).execute();
  }

  async moveFailures(key: string, at: string): Promise<void> {
    await this.db.updateTable("failures").set({ last: at }).where("key", "=", key).execute();
  }

  async putSession(session: Session): Promise<void> {
    const { tokenHash: token_hash, person, device, created, expires } = session;
    const rest = { person, device, created, expires };
    await this.db
      .insertInto("sessions")
      .values({ token_hash, ...rest })
      .onConflict((conflict) => conflict.column("token_hash").doUpdateSet(rest))
      .execute();
  }

  async session(tokenHash: string): Promise<Session | undefined> {
    const query = this.db.selectFrom("sessions").selectAll().where("token_hash", "=", tokenHash);
    const row = await query.executeTakeFirst();
    return row && toSession(row);
  }

  async removeSession(tokenHash: string): Promise<void> {
    await this.db.deleteFrom("sessions").where("token_hash", "=", tokenHash).execute();
  }

  async removeSessionsOfDevice(device: string): Promise<void> {
    await this.db.deleteFrom("sessions").where("device", "=", device).execute();
  }

  async removeSessionsOfPerson(person: string): Promise<void> {
    await this.db.deleteFrom("sessions").where("person", "=", person).execute();
  }

  async sessionsOfPerson(person: string): Promise<readonly Session[]> {
    const query = this.db.selectFrom("sessions").selectAll().where("person", "=", person).orderBy("token_hash");
    return (await query.execute()).map(toSession);
  }

  async putInvite(invite: Invite): Promise<void> {
    const { codeHash: code_hash, person, by: made_by, expires } = invite;
    const rest = { person, made_by, expires };
    await this.db
      .insertInto("invites")
      .values({ code_hash, ...rest })
      .onConflict((conflict) => conflict.column("code_hash").doUpdateSet(rest))
      .execute();
  }

  /** The delete decides who gets it: of two takers at once only one finds the line. */
  async takeInvite(codeHash: string, at: string): Promise<Invite | undefined> {
    const found = await this.db.selectFrom("invites").selectAll().where("code_hash", "=", codeHash).executeTakeFirst();
    if (found === undefined || instantOf(found.expires) <= instantOf(at)) return undefined;
    const query = this.db.deleteFrom("invites").where("code_hash", "=", codeHash).returningAll();
    const row = await query.executeTakeFirst();
    return row && toInvite(row);
  }

  async epochs(): Promise<readonly Epoch[]> {
    return this.db.selectFrom("epochs").select(["id", "begun", "because"]).orderBy("number").execute();
  }

  /** Of two processes that begin an epoch at the same moment one finds its number taken, and goes on in the other's. */
  async addEpochs(epochs: readonly Epoch[]): Promise<void> {
    const greatest = this.db.selectFrom("epochs").select((row) => row.fn.max("number").as("number"));
    const { number } = await greatest.executeTakeFirstOrThrow();
    const rows = epochs.map(({ id, begun, because }, at) => ({ number: number + at + 1, id, begun, because }));
    await this.db
      .insertInto("epochs")
      .values(rows)
      .onConflict((conflict) => conflict.doNothing())
      .execute();
  }

  async voucherKey(): Promise<string> {
    const key = this.db.selectFrom("voucher_keys").select("secret").where("number", "=", 1);
    return (await key.executeTakeFirstOrThrow()).secret;
  }

  purge({ now, failuresBefore }: { readonly now: string; readonly failuresBefore: string }): Promise<number> {
    return purgeTables(this.db, now, failuresBefore);
  }
}

function toCredential(row: Selectable<CredentialRow>): Credential {
  const { id, person, kind, secret, created } = row;
  const transports = row.transports === null ? {} : { transports: JSON.parse(row.transports) as string[] };
  return { id, person, kind, secret, counter: Number(row.counter), ...transports, created };
}

function toSession(row: Selectable<SessionRow>): Session {
  const { token_hash: tokenHash, person, device, created, expires } = row;
  return { tokenHash, person, device, created, expires };
}

function toInvite(row: Selectable<InviteRow>): Invite {
  return { codeHash: row.code_hash, person: row.person, by: row.made_by, expires: row.expires };
}
