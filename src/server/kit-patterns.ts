import type { Entry } from "#log";
import { isBuilding, type Cursor, type LogStore } from "#station";
import { setImmediate as breathe } from "node:timers/promises";
import { advance } from "./cursor.ts";

/** Entries read from the store at once. */
const PAGE = 5000;

/**
 * Which patterns each kit was ever built to: read when a line first needs it, and only what is new from then on. The
 * first reading, of the whole log, takes some 0.6 s for 100,000 lines; others are served after every 5,000 of them.
 */
export class KitPatterns {
  readonly #store: LogStore;
  readonly #builtTo = new Map<string, readonly string[]>();
  #cursor: Cursor = {};
  #reading: Promise<void> = Promise.resolve();

  constructor(store: LogStore) {
    this.#store = store;
  }

  /** Takes in what any server process has added since. */
  catchUp(): Promise<void> {
    const next = this.#reading.then(() => this.#readOn());
    this.#reading = next.catch(() => undefined);
    return next;
  }

  /** "id@version" of every pattern that the kit of this subject was enrolled with or rebuilt to. */
  of(subject: string): readonly string[] {
    return this.#builtTo.get(subject) ?? [];
  }

  async #readOn(): Promise<void> {
    const places = (await this.#store.heads()).map(({ place }) => place);
    for (;;) {
      const page = await this.#store.since(places, this.#cursor, PAGE);
      for (const { entry } of page) if (isBuilding(entry)) this.#note(entry);
      this.#cursor = advance(this.#cursor, page);
      if (page.length < PAGE) return;
      await breathe();
    }
  }

  #note({ subject, pattern }: Entry): void {
    const before = this.of(subject);
    if (pattern !== undefined && !before.includes(pattern)) this.#builtTo.set(subject, [...before, pattern]);
  }
}
