import type { KeptEntry } from "#log";
import type { Cursor, LogStore } from "#station";
import { setImmediate as breathe } from "node:timers/promises";
import { advance } from "./cursor.ts";

/** Entries read from the store at once. */
const PAGE = 5000;

/** What reads the log on: which places, and what is done with each page of it. */
export interface Following {
  places(): Promise<readonly string[]>;
  take(page: readonly KeptEntry[]): void;
}

/**
 * Reads the log of a store on from where it was left, one reading after the other. Others are served after every page:
 * a first reading of a long log must not hold anybody up.
 */
export class LogFollower {
  readonly #store: LogStore;
  readonly #following: Following;
  #cursor: Cursor = {};
  #reading: Promise<void> = Promise.resolve();

  constructor(store: LogStore, following: Following) {
    this.#store = store;
    this.#following = following;
  }

  /** How far each place was read. */
  get readTo(): Cursor {
    return this.#cursor;
  }

  /** Takes in what any server process has added since. Cheap where nothing was. */
  catchUp(): Promise<void> {
    const next = this.#reading.then(() => this.#readOn());
    this.#reading = next.catch(() => undefined);
    return next;
  }

  async #readOn(): Promise<void> {
    const places = await this.#following.places();
    for (;;) {
      const page = await this.#store.since(places, this.#cursor, PAGE);
      this.#following.take(page);
      this.#cursor = advance(this.#cursor, page);
      if (page.length < PAGE) return;
      await breathe();
    }
  }
}

/** Every place that the store has lines of. */
export async function everyPlace(store: LogStore): Promise<readonly string[]> {
  return (await store.heads()).map(({ place }) => place);
}
