import { Held } from "./held.ts";

const KEY = "drykeel.casualty-silenced";
/** So many are remembered, the newest. */
const MOST = 50;

type Shelf = Pick<Storage, "getItem" | "setItem">;

/** Alarms of casualties that this device has silenced, kept through a reload. Nobody else's business, so not in the log. */
export class SilencedAlarms extends Held<readonly string[]> {
  readonly #shelf: Shelf;

  constructor(shelf: Shelf) {
    super(readKeys(shelf.getItem(KEY)));
    this.#shelf = shelf;
  }

  /** Silent at once, whether or not the device has room to remember it. */
  silence(key: string): void {
    const keys = [...this.read().filter((one) => one !== key), key].slice(-MOST);
    this.set(keys);
    this.#keep(keys);
  }

  /** Reads the shelf again: another window of this device has written on it. */
  reread(): void {
    this.set(readKeys(this.#shelf.getItem(KEY)));
  }

  /** A full or forbidden shelf costs only the memory: after a reload the alarm calls once more. */
  #keep(keys: readonly string[]): void {
    try {
      this.#shelf.setItem(KEY, JSON.stringify(keys));
    } catch (cause) {
      if (!(cause instanceof DOMException)) throw cause;
    }
  }
}

/** Keys as kept; what cannot be read silences nothing. */
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

export const silencedAlarms = new SilencedAlarms(globalThis.localStorage ?? nowhere());
globalThis.window?.addEventListener("storage", ({ key }) => key === KEY && silencedAlarms.reread());

function nowhere(): Shelf {
  return { getItem: () => null, setItem: () => undefined };
}
