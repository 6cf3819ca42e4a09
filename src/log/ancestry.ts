import type { Entry } from "./entry.ts";
import { ReachTable } from "./knowledge/reach-table.ts";

/** Steps of one walk. Honest logs need a few; beyond this all is worked out at once, see {@link ReachTable}. */
const STEPS = 32;

/** What was known when an entry was made, for rooms that must tell haste from habit: two hands, or one after another. */
export interface History {
  /** The entry with this id, struck or not, if it has arrived. */
  entry(id: string): Entry | undefined;
  /**
   * True where whoever made `later` had `earlier` on the device: same device and made before it, or reached through
   * `after`. Both are ids of the subject.
   */
  knew(later: string, earlier: string): boolean;
  /** True where neither knew the other: made without sight of each other. */
  madeApart(one: string, other: string): boolean;
}

/**
 * Which entries of one subject knew which.
 *
 * `after` names make a graph that points backwards in knowledge. Each entry gets a depth, one more than the deepest
 * it names, so a walk stops as soon as it is below what it looks for: for the usual question about neighbours that is
 * at once, however long the log.
 */
export class Ancestry implements History {
  readonly #entries = new Map<string, Entry>();
  /** By id, in order of arrival from 0; there while the table is. */
  readonly #numbers = new Map<string, number>();
  #inOrder: Entry[] = [];
  #table: ReachTable | undefined;
  /** Made when first needed, as there are many subjects of a line or two. */
  #depthsMade: Map<string, number> | undefined;
  /** Named by some entry before they came themselves: most logs come in order and have none. */
  #awaited: Set<string> | undefined;
  readonly #heads = new Set<string>();
  /** The entry that was asked about last, until another comes. */
  #asked: { readonly of: Entry; readonly named: readonly string[] } | undefined;

  /** @returns true where an entry that came before already named this one: what was said of that one may change */
  add(entry: Entry): boolean {
    this.#entries.set(entry.id, entry);
    this.#asked = undefined;
    if (this.#table !== undefined) this.#number(entry);
    for (const id of entry.after ?? []) {
      this.#heads.delete(id);
      if (!this.#entries.has(id)) (this.#awaited ??= new Set()).add(id);
    }
    const awaited = this.#awaited?.delete(entry.id) ?? false;
    if (awaited) this.#forget();
    else this.#heads.add(entry.id);
    return awaited;
  }

  /** Lets go of what was worked out for many questions at once. */
  rest(): void {
    if (this.#table === undefined) return;
    this.#table = undefined;
    this.#numbers.clear();
    this.#inOrder = [];
  }

  /** Ids of the entries that no other names: what a new entry puts in `after`. */
  heads(): ReadonlySet<string> {
    return this.#heads;
  }

  entry(id: string): Entry | undefined {
    return this.#entries.get(id);
  }

  knew(later: string, earlier: string): boolean {
    const one = this.#entries.get(later);
    const other = this.#entries.get(earlier);
    if (one === undefined || other === undefined || later === earlier) return false;
    return (one.device === other.device && earlier < later) || this.#reaches(one, earlier);
  }

  madeApart(one: string, other: string): boolean {
    return one !== other && !this.knew(one, other) && !this.knew(other, one);
  }

  #reaches(from: Entry, sought: string): boolean {
    const named = this.#namedBy(from);
    if (named.length === 0) return false;
    if (named.includes(sought)) return true;
    if (this.#table !== undefined) return this.#lookUp(from.id, sought);
    const floor = this.#depthOf(sought);
    const seen = new Set<string>();
    const open = [from];
    for (let next = open.pop(); next !== undefined; next = open.pop()) {
      if (seen.size > STEPS) return this.#lookUp(from.id, sought);
      for (const id of next.after ?? []) {
        if (id === sought) return true;
        const entry = this.#entries.get(id);
        if (entry === undefined || seen.has(id) || !isAbove(this.#depthOf(id), floor)) continue;
        seen.add(id);
        open.push(entry);
      }
    }
    return false;
  }

  /** What it names and has arrived: several questions about one entry follow each other. */
  #namedBy(from: Entry): readonly string[] {
    if (this.#asked?.of !== from) this.#asked = { of: from, named: this.#namesOf(from.id) };
    return this.#asked.named;
  }

  #lookUp(from: string, sought: string): boolean {
    this.#table ??= this.#newTable();
    return this.#table.reaches(this.#numbers.get(from)!, this.#numbers.get(sought)!);
  }

  #newTable(): ReachTable {
    for (const entry of this.#entries.values()) this.#number(entry);
    const inOrder = this.#inOrder;
    const numberOf = (id: string) => this.#numbers.get(id) ?? [];
    return new ReachTable({
      get size() {
        return inOrder.length;
      },
      names: (node) => inOrder[node]!.after?.flatMap(numberOf) ?? [],
    });
  }

  #number(entry: Entry): void {
    this.#numbers.set(entry.id, this.#inOrder.length);
    this.#inOrder.push(entry);
  }

  get #depths(): Map<string, number> {
    return (this.#depthsMade ??= new Map());
  }

  #forget(): void {
    this.#depthsMade = undefined;
    this.rest();
  }

  /** Longest way down; Infinity for what leads into a ring, which only a forger can make. Walked without recursion. */
  #depthOf(id: string): number {
    const known = this.#depths.get(id);
    if (known !== undefined) return known;
    const path = [id];
    const onPath = new Set<string>();
    for (let top = path.at(-1); top !== undefined; top = path.at(-1)) {
      const below = this.#namesOf(top);
      const next = onPath.has(top) || this.#depths.has(top) ? undefined : below;
      onPath.add(top);
      const unknown = next?.filter((name) => !this.#depths.has(name) && !onPath.has(name)) ?? [];
      if (unknown.length > 0) path.push(...unknown);
      else this.#settleDepth(path, below, onPath);
    }
    return this.#depths.get(id) ?? 0;
  }

  #settleDepth(path: string[], below: readonly string[], onPath: Set<string>): void {
    const id = path.pop();
    if (id === undefined || this.#depths.has(id)) return;
    const deepest = below.reduce((most, name) => Math.max(most, this.#depths.get(name) ?? Infinity), 0);
    this.#depths.set(id, deepest + 1);
    onPath.delete(id);
  }

  #namesOf(id: string): readonly string[] {
    return this.#entries.get(id)?.after?.filter((name) => this.#entries.has(name)) ?? [];
  }
}

function isAbove(depth: number, floor: number): boolean {
  return depth > floor || depth === Infinity;
}
