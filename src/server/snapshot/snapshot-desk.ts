import { isDeepStrictEqual } from "node:util";
import {
  readSnapshot,
  sendSnapshot,
  snapshotOf,
  type Ambient,
  type HeldHeads,
  type LogStore,
  type SnapshotReply,
  type StationSnapshot,
} from "#station";
import { placesApart } from "../branch/compare-heads.ts";
import type { Pattern } from "#kit";
import type { WholeLog } from "../log/whole-log.ts";
import {
  writeSnapshot,
  type Recalled,
  type Snapshot,
  type SnapshotKeeper,
  type WrittenSnapshot,
} from "./snapshot-keeper.ts";

/** The longest log of which a snapshot is made: its fold is held in memory, some 2 kB a line [lines]. */
const MOST_LINES = 500_000;
/** Of a long log the next is made no sooner than after so many times as long: what came since follows as lines. */
const GOOD_FOR = 20;

interface Made {
  /** By the process's own clock [ms]: until then no other is made, of a long log. */
  readonly until: number;
  readonly reply: Snapshot;
}

/** So few lines are read while somebody waits, and no snapshot of them is kept over a start. */
const FEW = 20_000;

/** Where a snapshot is made from. */
export interface SnapshotParts {
  readonly store: LogStore;
  readonly wholeLog: Pick<WholeLog, "read" | "readTo" | "heads">;
  readonly ambient: Pick<Ambient, "now">;
  /** Keeps the newest over a start; without it each start makes it anew. */
  readonly keeper?: SnapshotKeeper;
  /** Those that the log is folded by now; always the same where absent. */
  readonly patterns?: () => readonly Pick<Pattern, "id" | "version">[];
  /** Told what went wrong with the one that was kept: no device hangs on it. */
  readonly failed: (cause: unknown) => void;
  readonly mostLines?: number;
  readonly fewLines?: number;
}

/**
 * Makes what a new device shows first. It is worked out from the log. One from before the start is handed out until the
 * log was read, where the log holds its heads; once it was read that one is held against it, and thrown away either way.
 */
export class SnapshotDesk {
  readonly #parts: SnapshotParts;
  readonly #few: number;
  #made: Made | undefined;
  #recalled: Promise<Recalled | undefined> | undefined;
  #written: { readonly reply: SnapshotReply; readonly written: Promise<WrittenSnapshot> } | undefined;
  #keeping: Promise<void> = Promise.resolve();
  #making: Promise<Snapshot> | undefined;
  #isRead = false;
  #reading: Promise<void> | undefined;

  constructor(parts: SnapshotParts) {
    this.#parts = parts;
    this.#few = parts.fewLines ?? FEW;
  }

  /** Reads the log once, so that nobody who asks later has to wait for it; others are served meanwhile. */
  warm(): Promise<void> {
    this.#reading ??= this.#readOnce().finally(() => (this.#reading = undefined));
    return this.#reading;
  }

  /** As {@link now}, written as JSON and packed once for all who ask. */
  async written(): Promise<WrittenSnapshot> {
    const reply = await this.now();
    if (this.#written?.reply !== reply) {
      const written = writeSnapshot(reply);
      this.#written = { reply, written };
      this.#keeping = written.then((one) => this.#keep(reply, one));
    }
    return this.#written.written;
  }

  /** What there is now. Nobody waits for the first reading of a long log: it goes on, and this says so. */
  async now(): Promise<SnapshotReply> {
    const lines = await this.#lines();
    if (lines > (this.#parts.mostLines ?? MOST_LINES)) return { kind: "none", because: "too-long" };
    if (!this.#isRead && lines > this.#few) {
      this.warm().catch(() => undefined);
      return (await this.#fromBefore()) ?? { kind: "none", because: "reading" };
    }
    if (this.#made === undefined || !(await this.#isGood(this.#made, lines))) return this.#remake();
    const { reply, until } = this.#made;
    if (reply.lines !== lines && performance.now() > until) this.#remake().catch(this.#parts.failed);
    return reply;
  }

  /** Of a long log an older one is given at once. None of a log that is here no more: it may have failed over. */
  async #isGood({ reply }: Made, lines: number): Promise<boolean> {
    if (!this.#isByTheseVersions(reply)) return false;
    return (reply.lines === lines || lines > this.#few) && (await this.#isOfThisLog(reply));
  }

  #isByTheseVersions({ snapshot }: Snapshot): boolean {
    const now = this.#parts.patterns?.().map(({ id, version }) => `${id}@${version}`);
    return now === undefined || now.toSorted().join() === snapshot.patterns.toSorted().join();
  }

  /** One at a time, however many ask. */
  #remake(): Promise<Snapshot> {
    this.#making ??= this.#makeNow().finally(() => (this.#making = undefined));
    return this.#making;
  }

  async #makeNow(): Promise<Snapshot> {
    const from = performance.now();
    const reply = await this.#make();
    this.#made = { reply, until: from + (1 + GOOD_FOR) * (performance.now() - from) };
    return reply;
  }

  async #isOfThisLog(reply: Snapshot): Promise<boolean> {
    return (await placesApart(this.#parts.store, headsOf(reply))).length === 0;
  }

  async #make(): Promise<Snapshot> {
    const { wholeLog, ambient } = this.#parts;
    const fold = await wholeLog.read();
    const { heads } = wholeLog;
    const lines = heads.reduce((sum, { seq }) => sum + seq, 0);
    return { kind: "snapshot", lines, snapshot: sendSnapshot(snapshotOf(fold, heads, ambient.now())) };
  }

  async #readOnce(): Promise<void> {
    if ((await this.#lines()) > (this.#parts.mostLines ?? MOST_LINES)) return;
    await this.#prove();
    await this.#parts.wholeLog.read();
    this.#isRead = true;
    await this.written();
    await this.#keeping;
    this.#recalled = Promise.resolve(undefined);
  }

  /** The one from before the start, where the log holds its heads. */
  async #fromBefore(): Promise<Snapshot | undefined> {
    const recalled = await this.#recall();
    if (recalled === undefined || !(await this.#isOfThisLog(recalled.reply))) return undefined;
    this.#written ??= { reply: recalled.reply, written: Promise.resolve(recalled.written) };
    return recalled.reply;
  }

  #recall(): Promise<Recalled | undefined> {
    const { keeper, failed } = this.#parts;
    this.#recalled ??= (keeper?.recall() ?? Promise.resolve(undefined)).catch((cause: unknown) => {
      failed(cause);
      return undefined;
    });
    return this.#recalled;
  }

  /** Reads the log as far as the one from before the start stands for it, and throws that away where it is false. */
  async #prove(): Promise<void> {
    const { wholeLog, failed, keeper } = this.#parts;
    const reply = await this.#fromBefore();
    const fold = reply && (await wholeLog.readTo(reply.snapshot.heads));
    if (reply === undefined || fold === undefined) return;
    const told = readSnapshot(reply.snapshot);
    if (isDeepStrictEqual(asWritten(snapshotOf(fold, told.heads, told.at)), told)) return;
    this.#recalled = Promise.resolve(undefined);
    failed(new Error("The snapshot that was kept beside the log is not what the log says. It was thrown away."));
    await keeper?.forget();
  }

  /** Of a long log only; a disk that is full costs the next start, and nothing else. */
  async #keep(reply: SnapshotReply, written: WrittenSnapshot): Promise<void> {
    const { keeper, failed } = this.#parts;
    if (keeper === undefined || reply.kind === "none" || reply.lines <= this.#few) return;
    await keeper.keep(written).catch(failed);
  }

  async #lines(): Promise<number> {
    return (await this.#parts.store.heads()).reduce((sum, { seq }) => sum + seq, 0);
  }
}

function headsOf({ snapshot }: Snapshot): HeldHeads {
  return Object.fromEntries(snapshot.heads.map(({ place, seq, hash }) => [place, { seq, hash }]));
}

function asWritten(snapshot: StationSnapshot): unknown {
  return JSON.parse(JSON.stringify(snapshot));
}
