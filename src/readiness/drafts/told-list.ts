import type { Entry } from "#log";
import type { WrittenLate } from "../kinds/casualty-parts.ts";
import { markWhenTaken, type MarkWhenTaken } from "../casualty/casualty-late.ts";

type Line<Body> = MarkWhenTaken & Omit<Body, "taken">;

/**
 * Lines in order of the time they tell of, after any of the same time, while more are folded in. They are put in order
 * when they are read, all at once: a line written down late costs no more than any other.
 */
export class ToldList<Body extends WrittenLate> {
  #lines: readonly Line<Body>[];
  #fresh: Line<Body>[] = [];

  constructor(before: readonly Line<Body>[]) {
    this.#lines = before;
  }

  add({ taken, ...body }: Body, entry: Entry): void {
    this.#fresh.push({ ...markWhenTaken(taken, entry), ...body });
  }

  /** All of them; the same list until more are added. */
  read(): readonly Line<Body>[] {
    if (this.#fresh.length === 0) return this.#lines;
    const timed = [...this.#lines, ...this.#fresh].map((line) => ({ line, ms: Date.parse(line.at) }));
    const isInOrder = timed.every(({ ms }, at) => at === 0 || timed[at - 1]!.ms <= ms);
    if (!isInOrder) timed.sort((one, other) => one.ms - other.ms);
    this.#fresh = [];
    return (this.#lines = timed.map(({ line }) => line));
  }
}
