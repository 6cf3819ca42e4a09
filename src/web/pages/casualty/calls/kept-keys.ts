import { Watched } from "#web/watched/index.ts";

/** So many are remembered, the newest. */
const MOST = 200;

type Shelf = Pick<Storage, "getItem" | "setItem">;

/** Keys that this device remembers through a reload. Nobody else's business, so not in the log. */
export class KeptKeys extends Watched<readonly string[]> {
  readonly #name: string;
  readonly #shelf: Shelf;

  /**
   * @param name - under which the shelf keeps them
   * @param shelf - of this device
   */
  constructor(name: string, shelf: Shelf) {
    super(readKeys(shelf.getItem(name)));
    this.#name = name;
    this.#shelf = shelf;
    globalThis.window?.addEventListener("storage", ({ key }) => key === name && this.reread());
  }

  /** Remembered at once, whether or not the device has room to keep them. */
  add(...keys: readonly string[]): void {
    const all = [...this.read().filter((one) => !keys.includes(one)), ...keys].slice(-MOST);
    this.set(all);
    this.#keep(all);
  }

  /** Reads the shelf again: another window of this device has written on it. */
  reread(): void {
    this.set(readKeys(this.#shelf.getItem(this.#name)));
  }

  /** A full or forbidden shelf costs only the memory: after a reload it is forgotten. */
  #keep(keys: readonly string[]): void {
    try {
      this.#shelf.setItem(this.#name, JSON.stringify(keys));
    } catch (cause) {
      if (!(cause instanceof DOMException)) throw cause;
    }
  }
}

/** Keys as kept; what cannot be read is none. */
function readKeys(text: string | null): readonly string[] {
  if (text === null) return [];
  try {
    const kept: unknown = JSON.parse(text);
    return Array.isArray(kept) ? kept.filter((one): one is string => typeof one === "string") : [];
  } catch (cause) {
    if (cause instanceof SyntaxError) return [];
    throw cause;
  }
}

/** The shelf of this device; one that forgets where there is none. */
export function thisDevice(): Shelf {
  return globalThis.localStorage ?? { getItem: () => null, setItem: () => undefined };
}
