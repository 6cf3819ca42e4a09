import { setTimeout as sleep } from "node:timers/promises";
import { hashBytes, type Entry } from "#log";
import type { Judge } from "./torture-judge.ts";
import type { Running, Target } from "./torture-target.ts";

/** Devices that send at the same time, each waiting for its own acknowledgement. */
const DEVICES = 4;
/** A device's outbox: what is not acknowledged is sent again after the restart, as devices do. */
interface Outbox {
  waiting: readonly Entry[] | undefined;
}

/** The devices' side of it. */
export class Load {
  readonly #target: Target;
  readonly #judge: Judge;
  readonly #chance: () => number;
  readonly #outboxes: readonly Outbox[] = Array.from({ length: DEVICES }, () => ({ waiting: undefined }));
  #entries = 0;
  #batches = 0;
  resent = 0;
  unacknowledged = 0;

  constructor(target: Target, judge: Judge, chance: () => number) {
    this.#target = target;
    this.#judge = judge;
    this.#chance = chance;
  }

  /** Sends from all devices at once and kills after a while, now and then while the target is still starting. */
  async runUntilKilled(running: Running, when: { ms: number; whileStarting: boolean }): Promise<void> {
    if (!when.whileStarting) await running.ready;
    const killed = new AbortController();
    const devices = this.#outboxes.map((outbox) => this.#send(running, outbox, killed.signal));
    await sleep(when.ms);
    killed.abort();
    await running.kill();
    await Promise.all(devices);
  }

  async #send(running: Running, outbox: Outbox, killed: AbortSignal): Promise<void> {
    while (!killed.aborted) {
      if (outbox.waiting === undefined) outbox.waiting = this.#makeBatch();
      else this.resent += 1;
      try {
        await running.send(outbox.waiting);
        this.#judge.noteAcknowledged(outbox.waiting);
        outbox.waiting = undefined;
        if (this.#chance() < 0.1) await this.#sendPhoto(running);
      } catch (thrown) {
        if (!killed.aborted) throw thrown;
        this.unacknowledged += 1;
      }
    }
  }

  async #sendPhoto(running: Running): Promise<void> {
    const bytes = Uint8Array.from({ length: 2000 + this.#chance() * 60_000 }, () => this.#chance() * 256);
    bytes.set([0xff, 0xd8, 0xff, 0xe0]);
    const hash = hashBytes(bytes);
    this.#judge.notePhoto(hash, false);
    await running.sendPhoto({ hash, mime: "image/jpeg", bytes });
    this.#judge.notePhoto(hash, true);
  }

  #makeBatch(): readonly Entry[] {
    const of = 1 + Math.floor(this.#chance() ** 3 * 60);
    const batch = (this.#batches += 1);
    const padding = "x".repeat(this.#chance() ** 4 * 8000);
    const entries = Array.from({ length: of }, () =>
      this.#target.makeEntry((this.#entries += 1), { batch, of }, padding),
    );
    this.#judge.noteSent(entries);
    return entries;
  }
}
