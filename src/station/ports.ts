import type { ChainHead, Entry, KeptEntry, SignedHead, SignedHeadList, StoredLine } from "#log";

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
 * `append` and `retake` are all or nothing and have reached the disk when they resolve. A store that cannot work throws a StoreError.
 */
export interface LogStore {
  /**
   * @param onlyAt - places whose last number must still be this one, judged under the lock under which it is written:
   *   for a decision that another append at the same moment, by whichever process, would make wrong
   */
  append(entries: readonly Entry[], received: string, onlyAt?: Cursor): Promise<AppendResult>;
  /**
   * Takes lines that a log kept before, with their time of receipt: number and hash too where they follow on what is
   * here, so that a log put back whole has the heads it had. All or nothing, as `append`.
   */
  retake(kept: readonly KeptEntry[]): Promise<AppendResult>;
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

/** The newest signed head of each place that was shown to anybody, and the signed list of all of them. */
export interface HeadShelf {
  signedHeads(): Promise<readonly SignedHead[]>;
  /** Undefined where nothing was signed yet, or the list is gone or unreadable. */
  signedList(): Promise<SignedHeadList | undefined>;
  /**
   * Keeps a list, and each head that is newer than the one held of its place: both or nothing. Nothing where the list held
   * is ahead of this one in any place.
   */
  keepSigned(list: SignedHeadList, heads: readonly SignedHead[]): Promise<void>;
}

/**
 * A snapshot as a server last made it, kept beside the log so that nobody waits for it after a start. Never the truth:
 * whoever reads it holds it against the log.
 */
export interface ShelvedSnapshot {
  /** What it is of, as JSON. */
  readonly about: string;
  /** Over `about` and `packed`, by a key that never leaves the server. */
  readonly seal: string;
  readonly packed: Uint8Array;
}

/** The newest snapshot that a server made. */
export interface SnapshotShelf {
  shelvedSnapshot(): Promise<ShelvedSnapshot | undefined>;
  /** In the place of the one before; undefined throws that away. */
  shelveSnapshot(snapshot: ShelvedSnapshot | undefined): Promise<void>;
}

/** The log as the tables hold it, for whoever holds them against each other. */
export interface StoredLog {
  /** Every place that any table names. */
  storedPlaces(): Promise<readonly string[]>;
  /** Places that ever had a line. */
  placesSeen(): Promise<readonly string[]>;
  /** Lines of a place after a number, in order of number; from the lowest where there is none, be it below 1. */
  storedLines(place: string, after: number | undefined, limit: number): Promise<readonly StoredLine[]>;
  /** Where the place's chain stands, as the store says. */
  storedHead(place: string): Promise<ChainHead | undefined>;
  /** What is held of what was signed, unread, as it stood at one moment. */
  storedSigned(): Promise<SignedRows>;
  /** Hashes of photos held, in order, after one. */
  photoHashes(after: string, limit: number): Promise<readonly string[]>;
  /** Ids of the lives of the database, the first one first, and secrets of its vouchers, as the tables hold them. */
  storedLives(): Promise<{ readonly epochs: readonly string[]; readonly secrets: readonly string[] }>;
  /** Photos that ever came, in order of hash, after one. */
  photosSeen(after: string, limit: number): Promise<readonly PhotoSeen[]>;
}

/** What a store holds of what was signed, as JSON that may be any text. */
export interface SignedRows {
  /** The newest signed head of each place. */
  readonly heads: readonly { readonly place: string; readonly seq: number; readonly head: string }[];
  /** One: the signed list of all heads, null before anything was signed. */
  readonly lists: readonly (string | null)[];
}

/** A photo that the store had at some time, and what kind of picture it was. */
export interface PhotoSeen {
  readonly hash: string;
  readonly mime: string;
}

export type AppendListener = (places: readonly string[]) => void;

export interface Photo {
  readonly hash: string;
  readonly mime: string;
  readonly bytes: Uint8Array;
}

/** One life of a station's database: from when it was made, or from when it was found to have been put back. */
export interface Epoch {
  readonly id: string;
  /** RFC 3339. */
  readonly begun: string;
  /**
   * `made` with the database; `put-back` when a device showed a line that the database had acknowledged and does not
   * have; `seen` on a device only: a life that the copy put back knows nothing of.
   */
  readonly because: "made" | "put-back" | "seen";
}

/** Which life of its database a station is in, and the key of its vouchers. A copy of the database has the same. */
export interface EpochStore {
  /** Oldest first, at least one; the last that is not `seen` is now. */
  epochs(): Promise<readonly Epoch[]>;
  addEpochs(epochs: readonly Epoch[]): Promise<void>;
  /** Made with the database, the same for all its lives, never out of the server. */
  voucherKey(): Promise<string>;
}

/** A server's store also holds what must never be in the log: secrets, sessions, devices' keys. */
export interface SecretStore extends EpochStore {
  putCredential(credential: Credential): Promise<void>;
  credentialsOf(person: string): Promise<readonly Credential[]>;
  credential(id: string): Promise<Credential | undefined>;
  removeCredential(id: string): Promise<void>;
  /** Adds to a named counter of failures and returns count and last failure. */
  noteFailure(key: string, at: string): Promise<{ readonly count: number }>;
  failures(key: string): Promise<{ readonly count: number; readonly last?: string }>;
  clearFailures(key: string): Promise<void>;
  /** Says of a counter that its last failure was at another time. */
  moveFailures(key: string, at: string): Promise<void>;
  putSession(session: Session): Promise<void>;
  session(tokenHash: string): Promise<Session | undefined>;
  removeSession(tokenHash: string): Promise<void>;
  removeSessionsOfDevice(device: string): Promise<void>;
  removeSessionsOfPerson(person: string): Promise<void>;
  sessionsOfPerson(person: string): Promise<readonly Session[]>;
  putInvite(invite: Invite): Promise<void>;
  /** Takes an invite once: returns it and makes it unusable. One that ran out by `at` stays: the clock may be wrong. */
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
  /** `link`: what it opens without a sign-in stands in `person`, such as "wall:PLACE". */
  readonly kind: "pin" | "passkey" | "device" | "link";
  /** argon2 hash, the passkey's public key (base64url), or the hash of a device's key; "" where it only says that it was. */
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
