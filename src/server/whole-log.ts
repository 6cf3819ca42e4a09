import type { Pattern } from "#kit";
import { createStationFold, type Cursor, type LogStore, type StationFold } from "#station";
import { setImmediate as breathe } from "node:timers/promises";
import { advance } from "./cursor.ts";

const PAGE = 5000;

/** The whole station folded, for the few answers that need more than its people: read first when first asked. */
export class WholeLog {
  readonly #store: LogStore;
  readonly #fold: StationFold;
  #cursor: Cursor = {};
  #reading: Promise<unknown> = Promise.resolve();

  constructor(store: LogStore, patterns: readonly Pattern[]) {
    this.#store = store;
    this.#fold = createStationFold(patterns);
  }

  /** The station as the store has it now; only what is new since the last call is read. */
  read(): Promise<StationFold> {
    const next = this.#reading.then(() => this.#readOn());
    this.#reading = next.catch(() => undefined);
    return next;
  }

  /** Others are served after every page. */
  async #readOn(): Promise<StationFold> {
    const places = (await this.#store.heads()).map(({ place }) => place);
    for (;;) {
      const page = await this.#store.since(places, this.#cursor, PAGE);
      this.#fold.add(page);
      this.#cursor = advance(this.#cursor, page);
      if (page.length < PAGE) return this.#fold;
      await breathe();
    }
  }
}
