import { hashBytes } from "#log";
import { sniffPhoto } from "./exchange/sniff-photo.ts";
import type { LogStore, PhotoSeen, StoredLog } from "./ports.ts";

type Store = Pick<LogStore & StoredLog, "photo" | "photoHashes" | "photosSeen">;

const PAGE = 5000;

/** Photos held, and those that ever came: whether each is here, with the bytes of its name and as what it came. */
export class PhotoBook {
  /** Kinds of picture by hash, of those held. */
  readonly #mimes = new Map<string, string>();
  readonly #seen = new Set<string>();
  readonly #wrong = new Map<string, string>();
  readonly #told = new Set<string>();

  /** Reads every photo that the store holds, then those that ever came: one that comes meanwhile is among both. */
  static async of(store: Store): Promise<PhotoBook> {
    const book = new PhotoBook();
    const held = inPages(
      (after) => store.photoHashes(after, PAGE),
      (hash) => hash,
    );
    for await (const hash of held) await book.#look(store, hash);
    const seen = inPages(
      (after) => store.photosSeen(after, PAGE),
      ({ hash }) => hash,
    );
    for await (const one of seen) await book.#compare(store, one);
    for (const hash of book.#mimes.keys()) {
      if (!book.#seen.has(hash)) book.#note(hash, `photo ${hash} is not among those that ever came`);
    }
    return book;
  }

  /**
   * What there is to say of photos that a line names.
   *
   * @returns how many never came, and what is wrong with those that did
   */
  named(hashes: readonly string[]): { readonly missing: number; readonly wrong: readonly string[] } {
    const wrong = hashes.flatMap((hash) => this.#wrong.get(hash) ?? []);
    for (const hash of hashes) this.#told.add(hash);
    const missing = hashes.filter((hash) => !this.#wrong.has(hash) && !this.#mimes.has(hash));
    return { missing: missing.length, wrong };
  }

  /** What is wrong with photos that no line named so far. */
  unnamed(): readonly string[] {
    return [...this.#wrong].filter(([hash]) => !this.#told.has(hash)).map(([, because]) => because);
  }

  async #look(store: Store, hash: string): Promise<void> {
    const photo = await store.photo(hash);
    if (photo === undefined) return;
    this.#mimes.set(hash, photo.mime);
    if (hashBytes(photo.bytes) !== hash) this.#note(hash, `the bytes of photo ${hash} are not those that were kept`);
    const kind = sniffPhoto(photo.bytes) ?? photo.mime;
    if (kind !== photo.mime) this.#note(hash, `photo ${hash} is ${kind} by its bytes, and is kept as ${photo.mime}`);
  }

  async #compare(store: Store, { hash, mime }: PhotoSeen): Promise<void> {
    this.#seen.add(hash);
    if (!this.#mimes.has(hash)) await this.#look(store, hash);
    const found = this.#mimes.get(hash);
    if (found === undefined) this.#note(hash, `photo ${hash} was here and is not any more`);
    else if (found !== mime) this.#note(hash, `photo ${hash} came as ${mime} and is kept as ${found}`);
  }

  /** The first that is found wrong says enough. */
  #note(hash: string, because: string): void {
    if (!this.#wrong.has(hash)) this.#wrong.set(hash, because);
  }
}

async function* inPages<One>(read: (after: string) => Promise<readonly One[]>, keyOf: (one: One) => string) {
  for (let after = ""; ;) {
    const page = await read(after);
    yield* page;
    if (page.length < PAGE) return;
    after = keyOf(page.at(-1)!);
  }
}
