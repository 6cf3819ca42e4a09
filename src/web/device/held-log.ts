import type { Pattern } from "#kit";
import type { Entry, KeptEntry } from "#log";
import type { EntryKind } from "#readiness";
import type { Ambient, Cursor } from "#station";
import { correctTimes } from "./clock-correction.ts";
import type { Draft, StationView } from "./contract.ts";
import type { DeviceStore, OutboxLine, UnsentPhoto } from "./device-store.ts";
import { writeLine } from "./line-writer.ts";
import { StationCopy, type Looking } from "./station-copy.ts";
import { WHOLE } from "./sync-runner.ts";

/** Who writes, and where on this device. */
export interface Hand {
  readonly person: string;
  readonly device: string;
}

/**
 * This device's log: on its disk, and read into memory. Disk first, memory after; one write at a time, so that each
 * line knows the one before it. Lines not yet sent and lines refused count here: whoever wrote them sees what they did.
 */
export class HeldLog {
  readonly #store: DeviceStore;
  readonly #ambient: Ambient;
  #copy = new StationCopy([]);
  #readTo: Cursor = {};
  #isWhole = false;
  #outbox: readonly OutboxLine[] = [];
  #photos: readonly UnsentPhoto[] = [];
  #last: Promise<unknown> = Promise.resolve();

  constructor(store: DeviceStore, ambient: Ambient) {
    this.#store = store;
    this.#ambient = ambient;
  }

  get outbox(): readonly OutboxLine[] {
    return this.#outbox;
  }

  get unsentPhotos(): readonly UnsentPhoto[] {
    return this.#photos;
  }

  /** What pages show; undefined until the whole log has been here once. */
  view(looking: Looking): StationView | undefined {
    return this.#isWhole ? this.#copy.view(looking) : undefined;
  }

  /** Reads everything anew: at the start, with new patterns, after lines were taken back. */
  load(): Promise<void> {
    return this.#inTurn(async () => {
      this.#copy = new StationCopy((await this.#store.note<readonly Pattern[]>("patterns")) ?? []);
      this.#readTo = {};
      await this.#readOn();
    });
  }

  /** Reads what came to the disk since: from the server, or from another window. */
  refresh(): Promise<void> {
    return this.#inTurn(() => this.#readOn());
  }

  /** Writes a line. On disk when it resolves. */
  write<K extends EntryKind>(draft: Draft<K>, hand: Hand): Promise<Entry> {
    return this.#inTurn(async () => {
      const entry = writeLine(draft, { ambient: this.#ambient, ...hand, ...this.#sight() });
      await this.#store.putOutbox([{ entry, state: "unsent" }]);
      this.#copy.add([entry]);
      this.#outbox = [...this.#outbox, { entry, state: "unsent" }];
      return entry;
    });
  }

  /** Puts right the times of refused lines and makes them ready to be sent again, under new ids. */
  correct(lines: readonly OutboxLine[], aheadMs: number): Promise<void> {
    return this.#inTurn(async () => {
      const entries = lines.map(({ entry }) => entry);
      const corrected = correctTimes(entries, aheadMs, () => this.#ambient.newId());
      const unsent = corrected.map((entry): OutboxLine => ({ entry, state: "unsent" }));
      await this.#store.replaceOutbox(
        entries.map(({ id }) => id),
        unsent,
      );
    }).then(() => this.load());
  }

  /** Sends refused lines once more as they are, for when what stood against them has changed. */
  retry(lines: readonly OutboxLine[]): Promise<void> {
    return this.#inTurn(async () => {
      await this.#store.putOutbox(lines.map(({ entry }): OutboxLine => ({ entry, state: "unsent" })));
      await this.#readOn();
    });
  }

  /** Takes a refused line off this device. The station never had it. */
  discard(line: OutboxLine): Promise<void> {
    return this.#inTurn(() => this.#store.replaceOutbox([line.entry.id], [])).then(() => this.load());
  }

  async #readOn(): Promise<void> {
    this.#isWhole ||= (await this.#store.note<boolean>(WHOLE)) === true;
    const fresh = await this.#store.kept(this.#readTo);
    this.#readTo = furthest(this.#readTo, fresh);
    this.#outbox = await this.#store.outbox();
    this.#photos = await this.#store.unsentPhotos();
    this.#copy.add([...fresh.map(({ entry }) => entry), ...this.#outbox.map(({ entry }) => entry)]);
  }

  #sight() {
    return {
      heads: (subject: string) => this.#copy.heads(subject),
      kit: (subject: string) => this.#copy.kit(subject),
    };
  }

  /** One after the other. A failure goes to whoever asked and does not stop the next. */
  #inTurn<Value>(act: () => Promise<Value>): Promise<Value> {
    const mine = this.#last.then(act, act);
    this.#last = mine;
    return mine;
  }
}

function furthest(before: Cursor, fresh: readonly KeptEntry[]): Cursor {
  const after: Record<string, number> = { ...before };
  for (const { entry, seq } of fresh) after[entry.place] = Math.max(after[entry.place] ?? 0, seq);
  return after;
}
