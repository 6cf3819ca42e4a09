import { useSyncExternalStore } from "react";

const KEY = "drykeel.casualty-silenced";
/** So many are remembered, the newest. */
const MOST = 50;

type Shelf = Pick<Storage, "getItem" | "setItem">;

/** Alarms of casualties that this device has silenced, kept through a reload. Nobody else's business, so not in the log. */
export class SilencedAlarms {
  #keys: readonly string[];
  readonly #hearers = new Set<() => void>();
  readonly #shelf: Shelf;

  constructor(shelf: Shelf) {
    this.#shelf = shelf;
    this.#keys = readKeys(shelf.getItem(KEY));
  }

  readonly keys = (): readonly string[] => this.#keys;

  readonly hear = (hearer: () => void): (() => void) => {
    this.#hearers.add(hearer);
    return () => this.#hearers.delete(hearer);
  };

  silence(key: string): void {
    this.#keys = [...this.#keys.filter((one) => one !== key), key].slice(-MOST);
    this.#shelf.setItem(KEY, JSON.stringify(this.#keys));
    for (const hearer of this.#hearers) hearer();
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

/** What this device has silenced; the component draws again when that changes. */
export function useSilenced(): readonly string[] {
  return useSyncExternalStore(silencedAlarms.hear, silencedAlarms.keys, silencedAlarms.keys);
}

function nowhere(): Shelf {
  return { getItem: () => null, setItem: () => undefined };
}
