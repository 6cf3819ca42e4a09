import { printGiven } from "#base";
import { bytesToHex } from "@noble/hashes/utils.js";
import { canonicalText } from "./canonical.ts";
import { emptyChain, hasItsHash, hashText, type ChainHead } from "./chain.ts";
import type { Entry } from "./entry.ts";
import { leafOf } from "./heads/line-proof.ts";
import type { LogHead } from "./heads/signed-head.ts";
import { parseInstant } from "./instant.ts";
import { HashTree } from "./tree/hash-tree.ts";

/** A line as a store's tables hold it, each column by itself. */
export interface StoredLine {
  readonly place: string;
  readonly seq: number;
  readonly id: string;
  /** Chain hash. */
  readonly hash: string;
  /** `hashEntry`, to tell a repeated entry from a clashing one. */
  readonly content: string;
  readonly received: string;
  /** Canonical form. */
  readonly entry: string;
}

/** A head that somebody keeps, and who, in words. */
export interface KeptHead extends LogHead {
  readonly keeper: string;
}

/** Something in a place that is not as it was kept. */
export interface AuditFault {
  /** Number of the line. */
  readonly seq: number;
  readonly because: string;
}

/** The most faults told of one place: the first say enough. */
const MOST_FAULTS = 20;
const FALSE_BEGINNING = "the head kept with the place, before its first line, is not the beginning of its log";
const HASH = /^[0-9a-f]{64}$/;

/**
 * Goes through the lines of one place in order of number, and holds every column of each against every other, the chain,
 * and the heads that others keep.
 */
export class PlaceAudit {
  readonly #place: string;
  readonly #kept: readonly KeptHead[];
  readonly #tree: HashTree | undefined;
  readonly #faults: AuditFault[] = [];
  #head: ChainHead;
  #count = 0;

  /** @param kept - heads of this place that others keep: the log must begin with what each stands for */
  constructor(place: string, kept: readonly KeptHead[]) {
    this.#place = place;
    this.#kept = kept;
    this.#tree = kept.length > 0 ? new HashTree() : undefined;
    this.#head = emptyChain(place);
  }

  /** The last line seen; where the chain broke, as the line itself has it. */
  get head(): ChainHead {
    return this.#head;
  }

  get count(): number {
    return this.#count;
  }

  /**
   * Looks at the next line.
   *
   * @returns its entry, where it can be read
   */
  see(line: StoredLine): Entry | undefined {
    const entry = readEntry(line.entry);
    if (line.seq < 1) {
      this.#tell(line.seq, `number ${line.seq} stands before the first line, where none can`);
      return entry;
    }
    this.#judgeNumber(line);
    if (entry === undefined) this.#tell(line.seq, "its text is no entry in canonical form");
    else this.#judgeColumns(line, entry);
    this.#head = { seq: line.seq, hash: line.hash };
    this.#count += 1;
    this.#judgeKept(line);
    return entry;
  }

  /**
   * Ends the audit.
   *
   * @param stored - where the store says the place's chain stands; undefined where it says nothing
   * @param isKnown - whether the store says that the place has ever had a line
   * @returns every fault found, at most 20
   */
  finish(stored: ChainHead | undefined, isKnown: boolean): readonly AuditFault[] {
    const { seq, hash } = this.#head;
    for (const { number, keeper } of this.#kept) {
      if (number > seq) this.#tell(number, `${keeper} has line ${number}; the log ends at line ${seq}`);
    }
    if ((stored?.seq ?? 0) !== seq) {
      this.#tell(
        stored?.seq ?? 0,
        `the head kept with the place says line ${stored?.seq ?? 0}, the last is line ${seq}`,
      );
    } else if (stored !== undefined && stored.hash !== hash)
      this.#tell(seq, seq === 0 ? FALSE_BEGINNING : "the head kept with the place has another hash");
    if (isKnown && this.#count === 0) this.#tell(0, "the place had lines, and has none");
    if (!isKnown && this.#count > 0) this.#tell(1, "the place is not among those that ever had a line");
    return this.#faults;
  }

  #judgeNumber({ seq }: StoredLine): void {
    if (seq !== this.#head.seq + 1) this.#tell(seq, `number ${this.#head.seq + 1} was expected, ${seq} was found`);
  }

  #judgeColumns(line: StoredLine, entry: Entry): void {
    const { seq, hash, received, id } = line;
    if (!hasItsHash(this.#head.hash, { entry, seq, hash, received }, line.entry)) {
      this.#tell(
        seq,
        `entry ${id} does not give the hash kept with it: it, its time of receipt or one before it was changed or removed`,
      );
    }
    if (parseInstant(String(received)) === undefined)
      this.#tell(seq, `its time of receipt, ${printGiven(received)}, is no instant`);
    if (id !== entry.id) this.#tell(seq, `it is kept under the id ${id}, and says ${entry.id}`);
    if (entry.place !== this.#place) this.#tell(seq, `it belongs to place ${entry.place}`);
    if (line.content !== hashText(line.entry))
      this.#tell(seq, `entry ${id} does not give the content hash kept with it`);
  }

  #judgeKept({ seq, hash }: StoredLine): void {
    if (this.#tree === undefined) return;
    this.#tree.append(HASH.test(hash) ? leafOf(hash) : new Uint8Array());
    for (const kept of this.#kept.filter(({ number }) => number === seq)) {
      if (kept.hash === hash && kept.root === bytesToHex(this.#tree.root())) continue;
      this.#tell(seq, `${kept.keeper} has another history up to line ${seq}`);
    }
  }

  #tell(seq: number, because: string): void {
    if (this.#faults.length < MOST_FAULTS) this.#faults.push({ seq, because });
  }
}

function readEntry(text: string): Entry | undefined {
  try {
    const entry = JSON.parse(text) as Entry;
    return canonicalText(entry) === text && typeof entry === "object" ? entry : undefined;
  } catch {
    return undefined; // told as a fault of its line
  }
}
