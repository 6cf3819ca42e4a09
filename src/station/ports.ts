import type { Entry, KeptEntry } from "#log";

/** Clock, chance and ids come in from the start files; nothing below L4 reaches for them. */
export interface Ambient {
  /** Now as RFC 3339 with the device's offset. */
  now(): string;
  /** A new UUIDv7, lower case, never repeated. */
  newId(): string;
}

/** Where a reader stands in each place: the last seq it has. Absent means from the beginning. */
export type Cursor = Readonly<Record<string, number>>;

export interface AppendResult {
  /** Entries kept now, in the order given. */
  readonly accepted: readonly KeptEntry[];
  /** Ids that were already kept, or given twice, with the same content. */
  readonly repeated: readonly string[];
  /** Ids kept with other content: what is kept stays as it is. The rest of the entries given is accepted. */
  readonly clashing: readonly string[];
  /** Places that did not stand any more where the appender last saw them: then nothing was kept. Absent otherwise. */
  readonly moved?: readonly string[];
}

/**
 * The log on disk. One contract suite (`test/contracts/log-store`) runs over every implementation.
 * `append` is all or nothing and has reached the disk when it resolves. A store that cannot work throws a StoreError.
 */
export interface LogStore {
  /**
   * @param onlyAt - places whose last number must still be this one, judged under the lock under which it is written:
   *   for a decision that another append at the same moment, by whichever process, would make wrong
   */
  append(entries: readonly Entry[], received: string, onlyAt?: Cursor): Promise<AppendResult>;
  /** Kept entries after the cursor in the given places, by place then seq, at most `limit`. */
  since(places: readonly string[], cursor: Cursor, limit: number): Promise<readonly KeptEntry[]>;
  /** Last seq and hash of every place that has any. */
  heads(): Promise<readonly { readonly place: string; readonly seq: number; readonly hash: string }[]>;
  find(id: string): Promise<KeptEntry | undefined>;
  count(): Promise<number>;
  putPhoto(photo: Photo): Promise<void>;
  photo(hash: string): Promise<Photo | undefined>;
  /** Of these hashes, those not held. */
  missingPhotos(hashes: readonly string[]): Promise<readonly string[]>;
  /**
   * Calls back after every append, with the places it touched; also for appends by other processes where the store
   * can tell (PostgreSQL). An empty list means: any place may have changed, such as after a lost connection.
   *
   * @returns stops the calls
   */
  onAppend(listener: AppendListener): () => void;
  close(): Promise<void>;
}

export type AppendListener = (places: readonly string[]) => void;

export interface Photo {
  readonly hash: string;
  readonly mime: string;
  readonly bytes: Uint8Array;
}

/** A server's store also holds what must never be in the log: secrets, sessions, devices' keys. */
export interface SecretStore {
  putCredential(credential: Credential): Promise<void>;
  credentialsOf(person: string): Promise<readonly Credential[]>;
  credential(id: string): Promise<Credential | undefined>;
  removeCredential(id: string): Promise<void>;
  /** Adds to a named counter of failures and returns count and last failure. */
  noteFailure(key: string, at: string): Promise<{ readonly count: number }>;
  failures(key: string): Promise<{ readonly count: number; readonly last?: string }>;
  clearFailures(key: string): Promise<void>;
  putSession(session: Session): Promise<void>;
  session(tokenHash: string): Promise<Session | undefined>;
  removeSession(tokenHash: string): Promise<void>;
  removeSessionsOfDevice(device: string): Promise<void>;
  removeSessionsOfPerson(person: string): Promise<void>;
  putInvite(invite: Invite): Promise<void>;
  /** Takes an invite once: returns it and makes it unusable. */
  takeInvite(codeHash: string, at: string): Promise<Invite | undefined>;
  /**
   * Forgets sessions and invites that ran out by `now`, and failures whose last is before `failuresBefore`. What is
   * renewed meanwhile stays.
   *
   * @returns how many were forgotten
   */
  purge(limits: { readonly now: string; readonly failuresBefore: string }): Promise<number>;
}

export interface Credential {
  readonly id: string;
  readonly person: string;
  readonly kind: "pin" | "passkey";
  /** argon2 hash, or the passkey's public key (base64url). */
  readonly secret: string;
  readonly counter: number;
  readonly transports?: readonly string[];
  readonly created: string;
}

export interface Session {
  readonly tokenHash: string;
  readonly person: string;
  readonly device: string;
  readonly created: string;
  readonly expires: string;
}

export interface Invite {
  readonly codeHash: string;
  readonly person: string;
  readonly by: string;
  readonly expires: string;
}
