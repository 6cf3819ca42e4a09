import { useSyncExternalStore } from "react";

/** One value of this window: whoever goes by it is told when it changes. */
export class Watched<Value> {
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
export function useWatched<Value>({ hear, read }: Pick<Watched<Value>, "hear" | "read">): Value {
  return useSyncExternalStore(hear, read, read);
}
