import { promisify } from "node:util";
import { brotliCompress, constants } from "node:zlib";
import { snapshotOf, type Ambient, type HeldHeads, type LogStore, type SnapshotReply } from "#station";
import { placesApart } from "../branch/compare-heads.ts";
import type { WholeLog } from "../log/whole-log.ts";

/** The longest log of which a snapshot is made: its fold is held in memory, some 2 kB a line [lines]. */
const MOST_LINES = 500_000;
/** Of a long log one is handed out for so many times as long as it took to make: what came since follows as lines. */
const GOOD_FOR = 20;

/** A reply as it goes over the wire, plain and packed. */
export interface WrittenSnapshot {
  readonly text: string;
  readonly brotli: Buffer;
}

interface Made {
  /** By the process's own clock [ms]. */
  readonly until: number;
  readonly reply: SnapshotReply;
  readonly heads: HeldHeads;
}

/** So few lines are read while somebody waits. */
const FEW = 20_000;

/** Where a snapshot is made from. */
export interface SnapshotParts {
  readonly store: LogStore;
  readonly wholeLog: Pick<WholeLog, "read" | "heads">;
  readonly ambient: Pick<Ambient, "now">;
  readonly mostLines?: number;
}

/**
 * Makes what a new device shows first. It is worked out from the log and held in memory only: after a start it is worked
 * out anew, and a log put back under the server is read anew.
 */
export class SnapshotDesk {
  readonly #parts: SnapshotParts;
  #made: Made | undefined;
  #written: { readonly reply: SnapshotReply; readonly written: Promise<WrittenSnapshot> } | undefined;
  #isRead = false;
  #reading: Promise<void> | undefined;

  constructor(parts: SnapshotParts) {
    this.#parts = parts;
  }

  /** Reads the log once, so that nobody who asks later has to wait for it; others are served meanwhile. */
  warm(): Promise<void> {
    this.#reading ??= this.#readOnce().finally(() => (this.#reading = undefined));
    return this.#reading;
  }

  /** As {@link now}, written as JSON and packed once for all who ask. */
  async written(): Promise<WrittenSnapshot> {
    const reply = await this.now();
    if (this.#written?.reply !== reply) this.#written = { reply, written: write(reply) };
    return this.#written.written;
  }

  /** What there is now. Nobody waits for the first reading of a long log: it goes on, and this says so. */
  async now(): Promise<SnapshotReply> {
    const lines = await this.#lines();
    if (lines > (this.#parts.mostLines ?? MOST_LINES)) return { kind: "none", because: "too-long" };
    if (!this.#isRead && lines > FEW) {
      this.warm().catch(() => undefined);
      return { kind: "none", because: "reading" };
    }
    if (this.#made !== undefined && (await this.#isGood(this.#made, lines))) return this.#made.reply;
    const from = performance.now();
    const made = await this.#make();
    this.#made = { ...made, until: from + (1 + GOOD_FOR) * (performance.now() - from) };
    return made.reply;
  }

  /** Not of a log that is here no more: the database may have failed over to one that lagged. */
  async #isGood({ until, reply, heads }: Made, lines: number): Promise<boolean> {
    const isNewest = reply.kind === "snapshot" && reply.lines === lines;
    if (!isNewest && (lines <= FEW || performance.now() > until)) return false;
    return (await placesApart(this.#parts.store, heads)).length === 0;
  }

  async #make(): Promise<Omit<Made, "until">> {
    const { wholeLog, ambient } = this.#parts;
    const fold = await wholeLog.read();
    const { heads } = wholeLog;
    const lines = heads.reduce((sum, { seq }) => sum + seq, 0);
    const reply = { kind: "snapshot", lines, snapshot: snapshotOf(fold, heads, ambient.now()) } as const;
    return { reply, heads: Object.fromEntries(heads.map(({ place, ...head }) => [place, head])) };
  }

  async #readOnce(): Promise<void> {
    if ((await this.#lines()) > (this.#parts.mostLines ?? MOST_LINES)) return;
    await this.#parts.wholeLog.read();
    this.#isRead = true;
    await this.written();
  }

  async #lines(): Promise<number> {
    return (await this.#parts.store.heads()).reduce((sum, { seq }) => sum + seq, 0);
  }
}

/** Packed beside the server's other work. */
async function write(reply: SnapshotReply): Promise<WrittenSnapshot> {
  const text = JSON.stringify(reply);
  const params = { [constants.BROTLI_PARAM_QUALITY]: 4, [constants.BROTLI_PARAM_LGWIN]: 22 };
  return { text, brotli: await promisify(brotliCompress)(text, { params }) };
}
