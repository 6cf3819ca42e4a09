import { assert } from "#base";
import type { Pattern } from "#kit";
import type { Entry, KeptEntry } from "#log";
import type { EntryKind } from "#readiness";
import { createStationFold, type Ambient, type Cursor } from "#station";
import { correctTimes } from "../clock-correction.ts";
import type { Draft, StationView } from "../sync/contract.ts";
import { readPutBack, type PutBack } from "../branch/put-back-note.ts";
import type { DeviceStore, LostLine, OutboxLine, UnsentPhoto } from "./device-store.ts";
import { dropHanded, isOtherThan, putHanded, readHanded, type HandedLine, type Sorted } from "../handed/index.ts";
import { writeLines } from "./line-writer.ts";
import {
  dropSnapshot,
  forgetFalseSnapshot,
  readEarlyBoard,
  readFalseSnapshot,
  type EarlyBoard,
} from "../snapshot/early-board.ts";
import { StationCopy, type Looking } from "../sync/station-copy.ts";
import { WHOLE } from "../snapshot/first-sync.ts";

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
  #patterns: readonly Pattern[] = [];
  #copy = new StationCopy(createStationFold([]));
  /** Shown until the whole log is here. */
  #early: EarlyBoard | undefined;
  #falseSnapshot: string | undefined;
  #readTo: Cursor = {};
  #isWhole = false;
  #outbox: readonly OutboxLine[] = [];
  #lost: readonly LostLine[] = [];
  #putBack: PutBack | undefined;
  #photos: readonly UnsentPhoto[] = [];
  #handed: readonly HandedLine[] = [];
  /** Every line handed over that the copy was read with, by its id. */
  #readHanded = new Map<string, HandedLine>();
  #last: Promise<unknown> = Promise.resolve();

  readonly #ground: readonly Entry[];

  /** @param ground - lines that are taken as known before any that are kept; they are written nowhere */
  constructor(store: DeviceStore, ambient: Ambient, ground: readonly Entry[] = []) {
    this.#store = store;
    this.#ground = ground;
    this.#ambient = ambient;
  }

  get outbox(): readonly OutboxLine[] {
    return this.#outbox;
  }

  /** How many lines here are on their way to the station. */
  get waiting(): number {
    return this.#outbox.filter(({ state }) => state === "unsent").length + this.#lost.length;
  }

  /** Lines that the station had and has no more, and this device holds. */
  get lost(): readonly LostLine[] {
    return this.#lost;
  }

  /** Lines of other devices that were handed over here and the station is not known to have. */
  get handed(): readonly HandedLine[] {
    return this.#handed;
  }

  /** That the station was put back to an earlier copy, where its person has not said that they read it. */
  get putBack(): PutBack | undefined {
    return this.#putBack;
  }

  /** When the station's summary was found not to be what its lines say, until a person has read that. */
  get falseSnapshot(): string | undefined {
    return this.#falseSnapshot;
  }

  get unsentPhotos(): readonly UnsentPhoto[] {
    return this.#photos;
  }

  /** What pages show; until the whole log has been here once, the station's summary of it, or undefined. */
  view(looking: Looking): StationView | undefined {
    return this.#isWhole ? this.#copy.view(looking) : this.#early?.view(looking);
  }

  forgetFalseSnapshot(): Promise<void> {
    return this.#inTurn(async () => {
      await forgetFalseSnapshot(this.#store);
      this.#falseSnapshot = undefined;
    });
  }

  /** Reads everything anew: at the start, with new patterns, after lines were taken back. */
  load(): Promise<void> {
    return this.#inTurn(async () => {
      await this.#readAll();
    });
  }

  /** Takes in lines that another device handed over; tells what came of each. On disk when it resolves. */
  takeHanded(lines: readonly unknown[], from: HandedLine["from"]): Promise<Sorted> {
    return this.#inTurn(async () => {
      const now = this.#ambient.now();
      const { sortHanded } = await import("../handed/handed-lines.ts");
      const sorted = sortHanded(lines, { now, ...this.#copy.knows() });
      await putHanded(
        this.#store,
        sorted.fresh.map((entry) => ({ entry, from, taken: now })),
      );
      await this.#readOn();
      return sorted;
    });
  }

  /** Takes lines that were handed over off this device. */
  dropHanded(lines: readonly HandedLine[]): Promise<void> {
    return this.#inTurn(() => dropHanded(this.#store, new Set(lines.map(({ entry }) => entry.id)))).then(() =>
      this.load(),
    );
  }

  /** Reads what came to the disk since: from the server, or from another window. */
  refresh(): Promise<void> {
    return this.#inTurn(() => this.#readOn());
  }

  /** Writes a line. On disk when it resolves. */
  async write<K extends EntryKind>(draft: Draft<K>, hand: Hand): Promise<Entry> {
    const [entry] = await this.writeAll([draft], hand);
    assert(entry !== undefined, "a draft without its line");
    return entry;
  }

  /** Writes lines, all of them or none. On disk when it resolves. */
  writeAll(drafts: readonly Draft[], hand: Hand): Promise<readonly Entry[]> {
    return this.#inTurn(async () => {
      const entries = writeLines(drafts, { ambient: this.#ambient, ...hand, ...this.#sight() });
      const lines = entries.map((entry): OutboxLine => ({ entry, state: "unsent" }));
      await this.#store.putOutbox(lines);
      (this.#early?.sight ?? this.#copy).add(entries);
      this.#outbox = [...this.#outbox, ...lines];
      return entries;
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

  async #readAll(): Promise<void> {
    this.#patterns = (await this.#store.note<readonly Pattern[]>("patterns")) ?? [];
    this.#copy = new StationCopy(createStationFold(this.#patterns));
    this.#early = undefined;
    this.#copy.add(this.#ground);
    this.#readTo = {};
    this.#readHanded = new Map();
    await this.#readOn();
  }

  async #readOn(): Promise<void> {
    if (!this.#isWhole) await this.#readEarly();
    const fresh = await this.#store.kept(this.#readTo);
    if (fresh.some(({ entry }) => isOtherThan(this.#readHanded, entry))) return this.#readAll();
    this.#readTo = furthest(this.#readTo, fresh);
    this.#outbox = await this.#store.outbox();
    this.#photos = await this.#store.unsentPhotos();
    this.#lost = await this.#store.shelf.lost();
    this.#putBack = await readPutBack(this.#store);
    this.#falseSnapshot = await readFalseSnapshot(this.#store);
    this.#handed = await readHanded(this.#store);
    for (const line of this.#handed) this.#readHanded.set(line.entry.id, line);
    const own = [...this.#lost, ...this.#outbox, ...this.#handed].map(({ entry }) => entry);
    this.#copy.add(this.#early?.take(fresh) ?? fresh);
    if (this.#early && this.#isWhole) await this.#endEarly(this.#early);
    (this.#early?.sight ?? this.#copy).add(own);
  }

  /** While the log is being fetched: whether it is all here now, and whether there is a summary to show until then. */
  async #readEarly(): Promise<void> {
    const isWhole = (await this.#store.note<boolean>(WHOLE)) === true;
    if (this.#early === undefined) {
      this.#early = await readEarlyBoard(this.#store, this.#patterns);
      // It has to see every line from the first.
      if (this.#early) [this.#readTo, this.#copy] = [{}, new StationCopy(createStationFold(this.#patterns))];
    }
    this.#isWhole = isWhole;
  }

  /** All lines are here: what the station said they come to is held against them, and thrown away. */
  async #endEarly(early: EarlyBoard): Promise<void> {
    const falseAt = early.isBorneOut(this.#copy) ? undefined : this.#ambient.now();
    await dropSnapshot(this.#store, falseAt);
    this.#falseSnapshot ??= falseAt;
    this.#early = undefined;
    this.#copy.add(early.beyond);
  }

  #sight() {
    const copy = this.#early?.sight ?? this.#copy;
    return {
      heads: (subject: string) => copy.heads(subject),
      kit: (subject: string) => copy.kit(subject),
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
