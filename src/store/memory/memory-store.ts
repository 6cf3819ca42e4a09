import {
  checkBytes,
  planIntake,
  planRetaking,
  type ChainHead,
  type Entry,
  type Intake,
  type KeptEntry,
  isAhead,
  type SignedHead,
  type SignedHeadList,
} from "#log";
import {
  movedFrom,
  type AppendListener,
  type AppendResult,
  type Cursor,
  type HeadShelf,
  type LogStore,
  type MailShelf,
  type PatternShelf,
  type Photo,
  type SecretStore,
  type ShelvedSnapshot,
  type SnapshotShelf,
} from "#station";
import { MemoryMail } from "./memory-mail.ts";
import { MemoryPatterns } from "./memory-patterns.ts";
import { MemorySecrets } from "./memory-secrets.ts";

/** Log and secrets in memory: for tests, and for looking into an exported file. Gone when the process ends. */
export class MemoryStore extends MemorySecrets implements LogStore, SecretStore, HeadShelf, SnapshotShelf {
  readonly mail: MailShelf = new MemoryMail();
  readonly patternShelf: PatternShelf = new MemoryPatterns();
  readonly #places = new Map<string, KeptEntry[]>();
  readonly #heads = new Map<string, ChainHead>();
  readonly #byId = new Map<string, KeptEntry>();
  readonly #hashes = new Map<string, string>();
  readonly #photos = new Map<string, Photo>();
  readonly #signed = new Map<string, SignedHead>();
  #signedList: SignedHeadList | undefined;
  readonly #listeners = new Set<AppendListener>();
  #snapshot: ShelvedSnapshot | undefined;

  async append(entries: readonly Entry[], received: string, onlyAt: Cursor = {}): Promise<AppendResult> {
    const moved = movedFrom(onlyAt, this.#heads);
    if (moved.length > 0) return { accepted: [], repeated: [], clashing: [], moved };
    return this.#take(planIntake(structuredClone(entries), { heads: this.#heads, hashes: this.#hashes }, received));
  }

  async retake(kept: readonly KeptEntry[]): Promise<AppendResult> {
    return this.#take(planRetaking(structuredClone(kept), { heads: this.#heads, hashes: this.#hashes }));
  }

  #take(intake: Intake): AppendResult {
    for (const [at, kept] of intake.accepted.entries()) this.#keep(kept, intake.forms[at]?.hash ?? "");
    for (const [place, head] of intake.heads) this.#heads.set(place, head);
    if (intake.accepted.length > 0) for (const listener of this.#listeners) listener([...intake.heads.keys()]);
    return { accepted: intake.accepted, repeated: intake.repeated, clashing: intake.clashing };
  }

  async since(places: readonly string[], cursor: Cursor, limit: number): Promise<readonly KeptEntry[]> {
    const found: KeptEntry[] = [];
    for (const place of [...new Set(places)].sort()) {
      const from = cursor[place] ?? 0;
      found.push(...(this.#places.get(place) ?? []).slice(from, from + limit - found.length));
    }
    return found;
  }

  async heads(): Promise<readonly { place: string; seq: number; hash: string }[]> {
    return [...this.#heads.keys()].sort().flatMap((place) => {
      const head = this.#heads.get(place);
      return head === undefined ? [] : [{ place, seq: head.seq, hash: head.hash }];
    });
  }

  async find(id: string): Promise<KeptEntry | undefined> {
    return this.#byId.get(id);
  }

  async count(): Promise<number> {
    return this.#byId.size;
  }

  async putPhoto(photo: Photo): Promise<void> {
    checkBytes(photo.hash, photo.bytes);
    this.#photos.set(photo.hash, { ...photo, bytes: photo.bytes.slice() });
  }

  async photo(hash: string): Promise<Photo | undefined> {
    return this.#photos.get(hash);
  }

  async missingPhotos(hashes: readonly string[]): Promise<readonly string[]> {
    return [...new Set(hashes)].filter((hash) => !this.#photos.has(hash));
  }

  async signedHeads(): Promise<readonly SignedHead[]> {
    return [...this.#signed.values()];
  }

  async signedList(): Promise<SignedHeadList | undefined> {
    return this.#signedList;
  }

  async keepSigned(list: SignedHeadList, heads: readonly SignedHead[]): Promise<void> {
    if (this.#signedList !== undefined && isAhead(this.#signedList, list)) return;
    this.#signedList = list;
    for (const head of heads) {
      if (head.number > (this.#signed.get(head.place)?.number ?? 0)) this.#signed.set(head.place, head);
    }
  }

  async shelvedSnapshot(): Promise<ShelvedSnapshot | undefined> {
    return structuredClone(this.#snapshot);
  }

  async shelveSnapshot(snapshot: ShelvedSnapshot | undefined): Promise<void> {
    this.#snapshot = structuredClone(snapshot);
  }

  onAppend(listener: AppendListener): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  async close(): Promise<void> {
    this.#listeners.clear();
  }

  #keep(kept: KeptEntry, hash: string): void {
    const { place, id } = kept.entry;
    const chain = this.#places.get(place);
    if (chain === undefined) this.#places.set(place, [kept]);
    else chain.push(kept);
    this.#byId.set(id, kept);
    this.#hashes.set(id, hash);
  }
}
