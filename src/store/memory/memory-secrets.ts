import { instantOf } from "#log";
import type { Credential, Epoch, Invite, SecretStore, Session } from "#station";

/** Secrets in memory: for tests. */
export class MemorySecrets implements SecretStore {
  readonly #credentials = new Map<string, Credential>();
  readonly #failures = new Map<string, { count: number; last: string }>();
  readonly #sessions = new Map<string, Session>();
  readonly #invites = new Map<string, Invite>();
  readonly #voucherKey = crypto.randomUUID();
  #epochs: readonly Epoch[] = [{ id: crypto.randomUUID(), begun: new Date().toISOString(), because: "made" }];

  async putCredential(credential: Credential): Promise<void> {
    this.#credentials.set(credential.id, credential);
  }

  async credentialsOf(person: string): Promise<readonly Credential[]> {
    return [...this.#credentials.values()]
      .filter((one) => one.person === person)
      .sort((a, b) => (a.id < b.id ? -1 : 1));
  }

  async credential(id: string): Promise<Credential | undefined> {
    return this.#credentials.get(id);
  }

  async removeCredential(id: string): Promise<void> {
    this.#credentials.delete(id);
  }

  async noteFailure(key: string, at: string): Promise<{ readonly count: number }> {
    const count = (this.#failures.get(key)?.count ?? 0) + 1;
    this.#failures.set(key, { count, last: at });
    return { count };
  }

  async failures(key: string): Promise<{ readonly count: number; readonly last?: string }> {
    return this.#failures.get(key) ?? { count: 0 };
  }

  async clearFailures(key: string): Promise<void> {
    this.#failures.delete(key);
  }

  async moveFailures(key: string, at: string): Promise<void> {
    const held = this.#failures.get(key);
    if (held !== undefined) this.#failures.set(key, { ...held, last: at });
  }

  async putSession(session: Session): Promise<void> {
    this.#sessions.set(session.tokenHash, session);
  }

  async session(tokenHash: string): Promise<Session | undefined> {
    return this.#sessions.get(tokenHash);
  }

  async removeSession(tokenHash: string): Promise<void> {
    this.#sessions.delete(tokenHash);
  }

  async removeSessionsOfDevice(device: string): Promise<void> {
    this.#removeSessions((session) => session.device === device);
  }

  async removeSessionsOfPerson(person: string): Promise<void> {
    this.#removeSessions((session) => session.person === person);
  }

  async sessionsOfPerson(person: string): Promise<readonly Session[]> {
    const own = [...this.#sessions.values()].filter((session) => session.person === person);
    return own.sort((a, b) => (a.tokenHash < b.tokenHash ? -1 : 1));
  }

  async putInvite(invite: Invite): Promise<void> {
    this.#invites.set(invite.codeHash, invite);
  }

  async takeInvite(codeHash: string, at: string): Promise<Invite | undefined> {
    const invite = this.#invites.get(codeHash);
    if (invite === undefined || instantOf(invite.expires) <= instantOf(at)) return undefined;
    this.#invites.delete(codeHash);
    return invite;
  }

  async epochs(): Promise<readonly Epoch[]> {
    return this.#epochs;
  }

  async addEpochs(epochs: readonly Epoch[]): Promise<void> {
    this.#epochs = [...this.#epochs, ...epochs];
  }

  async voucherKey(): Promise<string> {
    return this.#voucherKey;
  }

  async purge({ now, failuresBefore }: { readonly now: string; readonly failuresBefore: string }): Promise<number> {
    const isOver = ({ expires }: { readonly expires: string }) => instantOf(expires) <= instantOf(now);
    const sessions = removeFrom(this.#sessions, isOver);
    const invites = removeFrom(this.#invites, isOver);
    return sessions + invites + removeFrom(this.#failures, ({ last }) => instantOf(last) < instantOf(failuresBefore));
  }

  #removeSessions(fits: (session: Session) => boolean): void {
    removeFrom(this.#sessions, fits);
  }
}

function removeFrom<Held>(all: Map<string, Held>, fits: (held: Held) => boolean): number {
  const gone = [...all].filter(([, held]) => fits(held));
  for (const [key] of gone) all.delete(key);
  return gone.length;
}
