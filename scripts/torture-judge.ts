import { canonicalText, verifyChain, type ChainHead, type Entry, type KeptEntry } from "#log";
import type { LeftBehind, Target } from "./torture-target.ts";

/** Keeps book of what was sent and acknowledged, and holds what is on disk against it. */
export class Judge {
  readonly #markOf: Target["markOf"];
  readonly #sent = new Map<string, string>();
  readonly #acknowledged = new Set<string>();
  readonly #photos = new Map<string, { acknowledged: boolean }>();
  readonly #kept = new Set<string>();
  readonly #heads = new Map<string, ChainHead>();
  readonly #batches = new Map<number, number>();
  readonly #sizes = new Map<number, number>();
  #checkedPhotos = new Set<string>();

  constructor(markOf: Target["markOf"]) {
    this.#markOf = markOf;
  }

  noteSent(entries: readonly Entry[]): void {
    for (const entry of entries) this.#sent.set(entry.id, canonicalText(entry));
  }

  noteAcknowledged(entries: readonly Entry[]): void {
    for (const entry of entries) this.#acknowledged.add(entry.id);
  }

  notePhoto(hash: string, acknowledged: boolean): void {
    this.#photos.set(hash, { acknowledged });
  }

  get acknowledged(): number {
    return this.#acknowledged.size;
  }

  get kept(): number {
    return this.#kept.size;
  }

  get photos(): number {
    return [...this.#photos.values()].filter((photo) => photo.acknowledged).length;
  }

  /** Looks at what came since the last look. Gives every loss, tear and break found, in words. */
  async judge(left: LeftBehind): Promise<readonly string[]> {
    const faults: string[] = [];
    const cursor = Object.fromEntries([...this.#heads].map(([place, head]) => [place, head.seq]));
    const fresh = await left.since(cursor, 1_000_000);
    for (const kept of fresh) faults.push(...this.#judgeEntry(kept));
    faults.push(...this.#judgeChains(fresh), ...this.#judgeBatches());
    for (const id of this.#acknowledged) if (!this.#kept.has(id)) faults.push(`acknowledged entry ${id} is lost`);
    faults.push(...(await this.#judgePhotos(left)));
    return faults;
  }

  /** Forgets what was seen, so that the next look reads everything from the beginning. */
  startOver(): void {
    this.#kept.clear();
    this.#heads.clear();
    this.#batches.clear();
    this.#checkedPhotos = new Set();
  }

  #judgeEntry({ entry }: KeptEntry): string[] {
    const mark = this.#markOf(entry);
    if (mark === undefined) return [];
    const faults: string[] = [];
    if (this.#kept.has(entry.id)) faults.push(`entry ${entry.id} is kept twice`);
    if (this.#sent.get(entry.id) !== canonicalText(entry)) faults.push(`entry ${entry.id} is not as it was sent`);
    this.#kept.add(entry.id);
    this.#batches.set(mark.batch, (this.#batches.get(mark.batch) ?? 0) + 1);
    this.#sizes.set(mark.batch, mark.of);
    return faults;
  }

  #judgeBatches(): string[] {
    const torn = [...this.#batches].filter(([batch, count]) => this.#sizes.get(batch) !== count);
    return torn.map(([batch, count]) => `batch ${batch} is half kept: ${count} of ${this.#sizes.get(batch)}`);
  }

  #judgeChains(fresh: readonly KeptEntry[]): string[] {
    const places = new Set(fresh.map((kept) => kept.entry.place));
    return [...places].flatMap((place) => {
      const chain = fresh.filter((kept) => kept.entry.place === place);
      const verdict = verifyChain(chain, this.#heads.get(place));
      if (verdict.kind === "broken") return [`chain of ${place} breaks at ${verdict.seq}: ${verdict.because}`];
      this.#heads.set(place, verdict.head);
      return [];
    });
  }

  async #judgePhotos(left: LeftBehind): Promise<string[]> {
    const faults: string[] = [];
    for (const [hash, { acknowledged }] of this.#photos) {
      if (!acknowledged || this.#checkedPhotos.has(hash)) continue;
      this.#checkedPhotos.add(hash);
      if ((await left.photo(hash)) === undefined) faults.push(`acknowledged photo ${hash} is lost`);
    }
    return faults;
  }
}
