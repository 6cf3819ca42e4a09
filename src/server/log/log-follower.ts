import type { ChainHead, KeptEntry, PlaceChain } from "#log";
import type { Cursor, LogStore } from "#station";
import { setImmediate as breathe } from "node:timers/promises";
import { placesApart } from "../branch/compare-heads.ts";

/** Entries read from the store at once. */
const PAGE = 5000;

/** What reads the log on: which places, and what is done with each page of it. */
export interface Following {
  places(): Promise<readonly string[]>;
  take(page: readonly KeptEntry[]): void;
  /** Forgets all that was taken: the database was put back under the server, and is read anew from the beginning. */
  startOver(): void;
}

/**
 * Reads the log of a store on from where it was left, one reading after the other. Others are served after every page:
 * a first reading of a long log must not hold anybody up.
 */
export class LogFollower {
  readonly #store: LogStore;
  readonly #following: Following;
  #heads = new Map<string, ChainHead>();
  #reading: Promise<void> = Promise.resolve();

  constructor(store: LogStore, following: Following) {
    this.#store = store;
    this.#following = following;
  }

  /** How far each place was read. */
  get cursor(): Cursor {
    return cursorOf(this.#heads);
  }

  /** Where each place stands as far as it was read. */
  get heads(): readonly PlaceChain[] {
    return [...this.#heads].map(([place, { seq, hash }]) => ({ place, seq, hash }));
  }

  /** Takes in what any server process has added since. Cheap where nothing was. */
  catchUp(): Promise<void> {
    const next = this.#reading.then(() => this.#readOn());
    this.#reading = next.catch(() => undefined);
    return next;
  }

  /** Forgets all that was taken, since what it is read by changed: the next reading is from the beginning. */
  startOver(): Promise<void> {
    this.#reading = this.#reading.then(() => this.#forget());
    return this.#reading;
  }

  /**
   * Takes in lines up to these heads and no further, where nothing beyond them was taken in yet.
   *
   * @returns false where it has gone beyond them, or cannot come so far: then it stands wherever it stood
   */
  readTo(heads: readonly PlaceChain[]): Promise<boolean> {
    const next = this.#reading.then(() => this.#readUpTo(heads));
    this.#reading = next.then(
      () => undefined,
      () => undefined,
    );
    return next;
  }

  async #readUpTo(heads: readonly PlaceChain[]): Promise<boolean> {
    const ends = new Map(heads.map((head) => [head.place, head]));
    const isBeyond = [...this.#heads].some(([place, { seq }]) => seq > (ends.get(place)?.seq ?? 0));
    if (isBeyond) return false;
    for (const head of heads) await this.#readPlaceTo(head);
    return heads.every(({ place, seq, hash }) => {
      const at = this.#heads.get(place);
      return at?.seq === seq && at.hash === hash;
    });
  }

  async #readPlaceTo({ place, seq: end }: PlaceChain): Promise<void> {
    for (let left = 1; left > 0;) {
      const from = this.#heads.get(place)?.seq ?? 0;
      const page = await this.#store.since([place], { [place]: from }, Math.min(PAGE, end - from));
      this.#take(page);
      left = page.length === 0 ? 0 : end - (from + page.length);
      await breathe();
    }
  }

  #forget(): void {
    this.#heads = new Map();
    this.#following.startOver();
  }

  #take(page: readonly KeptEntry[]): void {
    this.#following.take(page);
    for (const { entry, seq, hash } of page) this.#heads.set(entry.place, { seq, hash });
  }

  async #readOn(): Promise<void> {
    const places = await this.#following.places();
    if (!(await this.#isStillThere(places))) this.#forget();
    for (;;) {
      const page = await this.#store.since(places, this.cursor, PAGE);
      this.#take(page);
      if (page.length < PAGE) return;
      await breathe();
    }
  }

  /** A database that failed over to one that lagged has fewer lines, or others under the same numbers. */
  async #isStillThere(places: readonly string[]): Promise<boolean> {
    const read = places.flatMap((place) => (this.#heads.has(place) ? [[place, this.#heads.get(place)!] as const] : []));
    const isAnyGone = read.length < this.#heads.size;
    return !isAnyGone && (await placesApart(this.#store, Object.fromEntries(read))).length === 0;
  }
}

function cursorOf(heads: ReadonlyMap<string, ChainHead>): Cursor {
  return Object.fromEntries([...heads].map(([place, { seq }]) => [place, seq]));
}

/** Every place that the store has lines of. */
export async function everyPlace(store: LogStore): Promise<readonly string[]> {
  return (await store.heads()).map(({ place }) => place);
}
