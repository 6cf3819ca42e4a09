import type { LiveChains } from "#station";
import type { DeviceStore } from "../held/device-store.ts";
import { LiveLine } from "./live-line.ts";
import type { Reach } from "./reach.ts";
import { EPOCH, SyncRunner, type SyncParts } from "./sync-runner.ts";
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
    this.#live = new LiveLine((chains) => void this.#look(parts.store, chains));
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

  /** Looks only where the server's log is not this device's: more lines, fewer, others, or another life of its database. */
  async #look(store: DeviceStore, chains: LiveChains | undefined): Promise<void> {
    if (chains === undefined || (await isOther(store, chains))) this.#runner.wake();
  }

  #heard(reach: Reach, tell: (reach: Reach) => void): void {
    if (reach.kind === "online") this.#live.open();
    else this.#live.close();
    this.#talk.tell({ kind: "reach", reach });
    tell(reach);
  }
}

async function isOther(store: DeviceStore, { epoch, heads }: LiveChains): Promise<boolean> {
  const held = new Map((await store.ends()).map((end) => [end.place, end]));
  const places = new Set([...held.keys(), ...Object.keys(heads)]);
  const differs = (place: string) => held.get(place)?.hash !== heads[place]?.hash;
  return (await store.note<string>(EPOCH)) !== epoch || [...places].some(differs);
}

function listen(target: EventTarget, name: string, hearer: () => void): () => void {
  target.addEventListener(name, hearer);
  return () => target.removeEventListener(name, hearer);
}
