import type { History } from "./ancestry.ts";
import { ENTRY_LIMITS } from "./entry-limits.ts";
import type { Entry } from "./entry.ts";
import { Timeline } from "./timeline.ts";

/** How the room above reads one subject's entries into a state. Both must depend on nothing but what they are given. */
export interface FoldRule<State> {
  /** A fresh state for a subject before its first entry. Never the same object twice, if `apply` writes to it. */
  init(subject: string): State;
  /**
   * The state after one more entry that counts; entries come in order, struck ones and strikes never. May write to
   * `state` and return it: the fold keeps no other copy. `history` covers all entries of the subject that have
   * arrived, also later and struck ones.
   */
  apply(state: State, entry: Entry, history: History): State;
}

/** A log read into one state per subject, kept up to date as entries arrive in any order. */
export interface Fold<State> {
  /**
   * Takes in entries; those already in are ignored. An entry that comes last in its subject costs one `apply`; one
   * that comes earlier, or strikes, re-reads its own subject and no other.
   *
   * @returns subjects that were touched
   */
  add(entries: Iterable<Entry>): ReadonlySet<string>;
  /** State of a subject, or undefined where nothing about it has arrived. */
  state(subject: string): State | undefined;
  /** Subjects about which something has arrived. */
  subjects(): Iterable<string>;
  /** Entries of a subject that count, in order: neither struck nor strikes. */
  entries(subject: string): readonly Entry[];
  /** Every entry of a subject in order, struck ones and strikes too. */
  allEntries(subject: string): readonly Entry[];
  /** The strike that struck an entry of this subject, if one did. */
  struckBy(subject: string, id: string): Entry | undefined;
  /** What a new entry about this subject names in `after`: the newest entries that no other names, at most 16. */
  heads(subject: string): readonly string[];
  /** Who knew what among the entries of this subject. */
  history(subject: string): History | undefined;
  has(id: string): boolean;
  /** Number of entries taken in. */
  readonly size: number;
}

/**
 * Reads a log into states, one per subject, in the order of `compareEntries`.
 *
 * The same entries give the same states whatever the order, the grouping and the number of times they arrive: an
 * entry is only applied on top of what was read where that is what reading everything anew would give.
 *
 * @param rule - what an entry does to a state
 * @returns an empty fold
 * @example
 * const counts = createFold<number>({ init: () => 0, apply: (count) => count + 1 });
 * counts.state("kit:7f3k"); // undefined
 */
export function createFold<State>(rule: FoldRule<State>): Fold<State> {
  return new SubjectFold(rule);
}

interface Read<State> {
  readonly timeline: Timeline;
  state: State;
}

class SubjectFold<State> implements Fold<State> {
  readonly #rule: FoldRule<State>;
  readonly #reads = new Map<string, Read<State>>();

  constructor(rule: FoldRule<State>) {
    this.#rule = rule;
  }

  add(entries: Iterable<Entry>): ReadonlySet<string> {
    const touched = new Set<string>();
    for (const [subject, offered] of groupBySubject(entries)) if (this.#takeIn(subject, offered)) touched.add(subject);
    return touched;
  }

  state(subject: string): State | undefined {
    return this.#reads.get(subject)?.state;
  }

  subjects(): Iterable<string> {
    return this.#reads.keys();
  }

  entries(subject: string): readonly Entry[] {
    return this.#reads.get(subject)?.timeline.counting() ?? [];
  }

  allEntries(subject: string): readonly Entry[] {
    return this.#reads.get(subject)?.timeline.all() ?? [];
  }

  struckBy(subject: string, id: string): Entry | undefined {
    return this.#reads.get(subject)?.timeline.struckBy(id);
  }

  heads(subject: string): readonly string[] {
    return this.#reads.get(subject)?.timeline.heads(ENTRY_LIMITS.after) ?? [];
  }

  history(subject: string): History | undefined {
    return this.#reads.get(subject)?.timeline.history;
  }

  has(id: string): boolean {
    return [...this.#reads.values()].some(({ timeline }) => timeline.has(id));
  }

  get size(): number {
    return [...this.#reads.values()].reduce((total, { timeline }) => total + timeline.size, 0);
  }

  /** @returns true where any of them was new */
  #takeIn(subject: string, offered: readonly Entry[]): boolean {
    const read = this.#readOf(subject);
    const change = read.timeline.add(offered);
    if (change.kind === "extended") this.#apply(read, change.by);
    if (change.kind === "rewritten") this.#reread(subject, read);
    read.timeline.rest();
    return change.kind !== "unchanged";
  }

  #readOf(subject: string): Read<State> {
    const known = this.#reads.get(subject);
    if (known !== undefined) return known;
    const begun = { timeline: new Timeline(), state: this.#rule.init(subject) };
    this.#reads.set(subject, begun);
    return begun;
  }

  #reread(subject: string, read: Read<State>): void {
    read.state = this.#rule.init(subject);
    this.#apply(read, read.timeline.counting());
  }

  #apply(read: Read<State>, entries: readonly Entry[]): void {
    const history = read.timeline.history;
    for (const entry of entries) read.state = this.#rule.apply(read.state, entry, history);
  }
}

/** Ids are compared within a subject only: its own few hundred are at hand, all of a station's are not. */
function groupBySubject(entries: Iterable<Entry>): Map<string, Entry[]> {
  const groups = new Map<string, Entry[]>();
  for (const entry of entries) {
    const group = groups.get(entry.subject);
    if (group === undefined) groups.set(entry.subject, [entry]);
    else group.push(entry);
  }
  return groups;
}
