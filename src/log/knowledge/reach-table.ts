import { componentsOf, type Named } from "./components.ts";

/** Entries whose reach is worked out together: a row of this many bits for each entry. */
const BLOCK = 1024;
const WORDS = BLOCK / 32;
/** What all rows may take at most [byte]; the block longest unused goes first. */
const ROOM = 64 * 1024 * 1024;

interface Block {
  rows: Uint32Array;
  /** Components whose rows are worked out. */
  done: number;
}

/**
 * Which entry is reached from which, all worked out at once, for logs in which a walk for each question would walk the
 * whole log each time: only a forger writes such. A question costs one look once its block is there; a block costs
 * 32 words for each name in the log.
 */
export class ReachTable {
  readonly #graph: Named;
  readonly #blocks = new Map<number, Block>();
  /** By node. */
  readonly #componentOf: number[] = [];
  /** By component, named ones before those that name them. */
  readonly #members: (readonly number[])[] = [];
  /** By node, read once. */
  readonly #names: (readonly number[])[] = [];

  constructor(graph: Named) {
    this.#graph = graph;
    for (const members of componentsOf(graph)) this.#note(members);
  }

  /** True where a walk from one along names comes to the other; of a ring each member reaches each. */
  reaches(from: number, sought: number): boolean {
    for (let node = this.#componentOf.length; node < this.#graph.size; node++) this.#note([node]);
    const { rows } = this.#blockOf(Math.floor(sought / BLOCK));
    const bit = sought % BLOCK;
    const word = rows[this.#componentOf[from]! * WORDS + (bit >>> 5)]!;
    return ((word >>> (bit & 31)) & 1) === 1;
  }

  #note(members: readonly number[]): void {
    for (const node of members) {
      this.#componentOf[node] = this.#members.length;
      this.#names[node] = this.#graph.names(node);
    }
    this.#members.push(members);
  }

  #blockOf(number: number): Block {
    const block = this.#blocks.get(number) ?? { rows: new Uint32Array(this.#members.length * WORDS), done: 0 };
    this.#blocks.delete(number);
    this.#blocks.set(number, block);
    if (block.done < this.#members.length) this.#extend(block, number * BLOCK);
    const most = Math.max(2, Math.floor(ROOM / (this.#members.length * WORDS * 4)));
    if (this.#blocks.size > most) for (const oldest of this.#blocks.keys()) return this.#drop(oldest, block);
    return block;
  }

  #drop(oldest: number, block: Block): Block {
    this.#blocks.delete(oldest);
    return block;
  }

  #extend(block: Block, first: number): void {
    const words = this.#members.length * WORDS;
    if (block.rows.length < words) {
      const wider = new Uint32Array(Math.max(words, block.rows.length * 2));
      wider.set(block.rows);
      block.rows = wider;
    }
    for (; block.done < this.#members.length; block.done++) this.#workOut(block, block.done, first);
  }

  #workOut({ rows }: Block, component: number, first: number): void {
    const into = component * WORDS;
    for (const member of this.#members[component]!) {
      for (const name of this.#names[member]!) {
        const named = this.#componentOf[name]!;
        if (named !== component) for (let at = 0; at < WORDS; at++) rows[into + at]! |= rows[named * WORDS + at]!;
        for (const one of named === component ? this.#members[named]! : [name]) mark(rows, into, one - first);
      }
    }
  }
}

function mark(rows: Uint32Array, into: number, bit: number): void {
  if (bit >= 0 && bit < BLOCK) rows[into + (bit >>> 5)]! |= 1 << (bit & 31);
}
