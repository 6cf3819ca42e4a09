import type { DeviceStore } from "../held/device-store.ts";

type Drawer = Pick<Storage, "getItem" | "setItem" | "removeItem">;

/** Unfinished entries lie under names that begin so. */
export const DRAFT_PREFIX = "drykeel.draft.";
const NOTE_PREFIX = "draft:";

/**
 * Where unfinished entries are kept from the first letter on: in the browser's own drawer, or, on a device with a lock,
 * sealed in its store and read into memory when it is opened.
 */
export class DraftDrawer implements Drawer {
  readonly #clear: Storage;
  readonly #sealed = new Map<string, string>();
  #store: DeviceStore | undefined;
  #last: Promise<unknown> = Promise.resolve();

  constructor(clear: Storage) {
    this.#clear = clear;
  }

  readonly getItem = (name: string): string | null =>
    this.#store === undefined ? this.#clear.getItem(name) : (this.#sealed.get(name) ?? null);

  readonly setItem = (name: string, text: string): void => {
    if (this.#store === undefined) return this.#clear.setItem(name, text);
    this.#sealed.set(name, text);
    this.#note(this.#store, name, text);
  };

  readonly removeItem = (name: string): void => {
    if (this.#store === undefined) return this.#clear.removeItem(name);
    this.#sealed.delete(name);
    this.#note(this.#store, name, undefined);
  };

  /** Takes every draft into the sealed store: first it is there, then it leaves the drawer. */
  async moveInto(store: DeviceStore): Promise<void> {
    for (const [name, text] of await store.notesUnder<string | undefined>(NOTE_PREFIX)) {
      if (text !== undefined) this.#sealed.set(name.slice(NOTE_PREFIX.length), text);
    }
    this.#store = store;
    for (const name of this.#names()) {
      const text = this.#clear.getItem(name);
      if (text === null) continue;
      this.#sealed.set(name, text);
      await store.putNote(NOTE_PREFIX + name, text);
      this.#clear.removeItem(name);
    }
  }

  /** Lays every draft back into the drawer: first it is there, then it leaves the store. */
  async moveOut(): Promise<void> {
    const store = this.#store;
    await this.#last;
    for (const [name, text] of this.#sealed) {
      this.#clear.setItem(name, text);
      await store?.putNote(NOTE_PREFIX + name, undefined);
    }
    this.#sealed.clear();
    this.#store = undefined;
  }

  #names(): readonly string[] {
    const names = Array.from({ length: this.#clear.length }, (_, at) => this.#clear.key(at) ?? "");
    return names.filter((name) => name.startsWith(DRAFT_PREFIX));
  }

  /** One after the other, so that the last letter is the one kept. */
  #note(store: DeviceStore, name: string, text: string | undefined): void {
    this.#last = this.#last.then(() => store.putNote(NOTE_PREFIX + name, text));
  }
}

/** The drawer of this window. */
export const drafts = new DraftDrawer(globalThis.localStorage);
