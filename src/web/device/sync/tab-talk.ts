import type { Reach } from "./reach.ts";

/** What windows of the app on one device tell each other. Entries themselves are read from the device's own store. */
export type TabNews =
  | { readonly kind: "log-changed" }
  /** Lines were taken back or put right: read everything anew. */
  | { readonly kind: "log-replaced" }
  | { readonly kind: "session-changed" }
  | { readonly kind: "wake-sync" }
  /** A window that opened asks for the device's key; one that has it answers. It never leaves the browser's memory. */
  | { readonly kind: "key-wanted" }
  | { readonly kind: "key"; readonly key: CryptoKey }
  | { readonly kind: "lock-now" }
  | { readonly kind: "reach"; readonly reach: Reach };

/** Talk between windows, and the lock that lets only one of them speak with the server. */
export class TabTalk {
  readonly #channel = new BroadcastChannel("drykeel");
  readonly #hearers = new Set<(news: TabNews) => void>();

  constructor() {
    this.#channel.addEventListener("message", (event: MessageEvent<TabNews>) => {
      for (const hearer of this.#hearers) hearer(event.data);
    });
  }

  /** Heard by the other windows, not by this one. */
  tell(news: TabNews): void {
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a BroadcastChannel has no other origins
    this.#channel.postMessage(news);
  }

  hear(hearer: (news: TabNews) => void): () => void {
    this.#hearers.add(hearer);
    return () => this.#hearers.delete(hearer);
  }

  /**
   * Runs the task once no other window runs it, for as long as it lasts. Where the browser knows no locks every window
   * runs it: the server takes an entry once however often it is sent.
   */
  async alone(signal: AbortSignal, task: () => Promise<void>): Promise<void> {
    if (!("locks" in navigator)) return task();
    try {
      await navigator.locks.request("drykeel-sync", { signal }, task);
    } catch (cause) {
      if (!signal.aborted) throw cause;
    }
  }
}
