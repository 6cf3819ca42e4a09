import { useSyncExternalStore } from "react";

/** One value of this window that more than one page goes by. */
export class Held<Value> {
  #value: Value;
  readonly #hearers = new Set<() => void>();

  constructor(value: Value) {
    this.#value = value;
  }

  readonly read = (): Value => this.#value;

  readonly hear = (hearer: () => void): (() => void) => {
    this.#hearers.add(hearer);
    return () => this.#hearers.delete(hearer);
  };

  set(value: Value): void {
    this.#value = value;
    for (const hearer of this.#hearers) hearer();
  }
}

/** The value now; the component draws again when it changes. */
export function useHeld<Value>({ hear, read }: Held<Value>): Value {
  return useSyncExternalStore(hear, read, read);
}
