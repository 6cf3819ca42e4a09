import type { Cursor } from "#station";
import type { DeviceStore } from "./device-store.ts";
import { LiveLine } from "./live-line.ts";
import { SyncRunner, type Reach, type SyncParts } from "./sync-runner.ts";
import type { TabTalk } from "./tab-talk.ts";

/** Keeps one sync running per device, and wakes it when there is reason to think that something changed. */
export class SyncWatch {
  readonly #runner: SyncRunner;
  readonly #talk: TabTalk;
  readonly #live: LiveLine;
  readonly #ends: (() => void)[];

  constructor(parts: SyncParts, talk: TabTalk) {
    this.#talk = talk;
    this.#runner = new SyncRunner({ ...parts, onReach: (reach) => this.#heard(reach, parts.onReach) });
    this.#live = new LiveLine((heads) => void this.#look(parts.store, heads));
    this.#ends = [
      listen(globalThis, "online", () => this.wake()),
      listen(document, "visibilitychange", () => document.visibilityState === "visible" && this.wake()),
      talk.hear((news) => news.kind === "wake-sync" && this.#runner.wake()),
    ];
  }

  /** Runs when no other window does, until stopped. */
  start(): Promise<void> {
    return this.#talk.alone(this.#runner.signal, () => this.#runner.run());
  }

  /** Whichever window runs the sync looks now. */
  wake(): void {
    this.#runner.wake();
    this.#talk.tell({ kind: "wake-sync" });
  }

  stop(): void {
    this.#runner.stop();
    this.#live.close();
    for (const end of this.#ends) end();
  }

  /** Looks only where the server has more than this device: its own lines come back as news too. */
  async #look(store: DeviceStore, heads: Cursor | undefined): Promise<void> {
    const held = await store.cursor();
    const isAhead = Object.entries(heads ?? {}).some(([place, seq]) => seq > (held[place] ?? 0));
    if (heads === undefined || isAhead) this.#runner.wake();
  }

  #heard(reach: Reach, tell: (reach: Reach) => void): void {
    if (reach.kind === "online") this.#live.open();
    else this.#live.close();
    this.#talk.tell({ kind: "reach", reach });
    tell(reach);
  }
}

function listen(target: EventTarget, name: string, hearer: () => void): () => void {
  target.addEventListener(name, hearer);
  return () => target.removeEventListener(name, hearer);
}
