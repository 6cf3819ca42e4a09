import { Ancestry, type History } from "./ancestry.ts";
import type { Entry } from "./entry.ts";
import { instantOf } from "./instant.ts";
import { compareText } from "./order.ts";
import { isStrike, settleStrikes } from "./strikes.ts";

/** An entry with its instant read once, since sorting asks for it many times. */
export interface Placed {
  readonly entry: Entry;
  readonly instant: number;
}

/** What entries did to a subject: nothing new, only followed on at the end, or changed something already read. */
export type Change =
  { readonly kind: "unchanged" | "rewritten" } | { readonly kind: "extended"; readonly by: readonly Entry[] };

/** All entries of one subject in order, with what is struck and who knew what. */
export class Timeline {
  readonly #ancestry = new Ancestry();
  readonly #strikes: Entry[] = [];
  #placed: Placed[] = [];
  #struck: ReadonlyMap<string, Entry> | undefined;
  #counting: readonly Entry[] | undefined;

  /** Takes in entries in any order; those it has stay as they are. */
  add(offered: readonly Entry[]): Change {
    const { entries, named } = this.#takeNew(offered);
    if (entries.length === 0) return { kind: "unchanged" };
    const placed = entries.map(placeEntry);
    if (!isSorted(placed)) placed.sort(comparePlaced);
    const awaited = named && this.#placed.length > 0;
    const restruck = this.#takeStrikes(entries);
    const follows = this.#follows(placed);
    this.#placed = follows ? append(this.#placed, placed) : merge(this.#placed, placed);
    this.#counting = undefined;
    if (awaited || restruck || !follows) return { kind: "rewritten" };
    return { kind: "extended", by: placed.map((one) => one.entry).filter((entry) => this.#counts(entry)) };
  }

  get history(): History {
    return this.#ancestry;
  }

  /** Number of entries, struck ones and strikes too. */
  get size(): number {
    return this.#placed.length;
  }

  has(id: string): boolean {
    return this.#ancestry.entry(id) !== undefined;
  }

  /** Entries that count, in order: neither struck nor strikes. */
  counting(): readonly Entry[] {
    this.#counting ??= this.#placed.map((one) => one.entry).filter((entry) => this.#counts(entry));
    return this.#counting;
  }

  /** Every entry in order, struck ones and strikes too. */
  all(): readonly Entry[] {
    return this.#placed.map((one) => one.entry);
  }

  /** The strike that struck an entry, if one did. */
  struckBy(id: string): Entry | undefined {
    return this.#struck?.get(id);
  }

  /** Ids of the newest entries that no other names, oldest first, at most `limit`. */
  heads(limit: number): readonly string[] {
    const heads = this.#ancestry.heads();
    const found: string[] = [];
    const most = Math.min(limit, heads.size);
    for (let at = this.#placed.length - 1; found.length < most; at--) {
      const { id } = this.#placed[at]!.entry;
      if (heads.has(id)) found.push(id);
    }
    return found.reverse();
  }

  /** Ends a reading: lets go of what only helped with it. */
  rest(): void {
    this.#ancestry.rest();
  }

  /** The entries not had before, and whether any of them was named by one that came before it. */
  #takeNew(offered: readonly Entry[]): { readonly entries: readonly Entry[]; readonly named: boolean } {
    const entries: Entry[] = [];
    let named = false;
    for (const entry of offered) {
      if (this.has(entry.id)) continue;
      if (this.#ancestry.add(entry)) named = true;
      entries.push(entry);
    }
    return { entries, named };
  }

  #counts(entry: Entry): boolean {
    return !isStrike(entry) && this.#struck?.has(entry.id) !== true;
  }

  #follows(placed: readonly Placed[]): boolean {
    const last = this.#placed.at(-1);
    const first = placed[0];
    return last === undefined || first === undefined || comparePlaced(last, first) < 0;
  }

  /** True where the new strikes may have changed what was read before. */
  #takeStrikes(entries: readonly Entry[]): boolean {
    const strikes = entries.filter(isStrike);
    if (strikes.length === 0) return false;
    this.#strikes.push(...strikes);
    this.#struck = settleStrikes(this.#strikes);
    return this.#placed.length > 0;
  }
}

function placeEntry(entry: Entry): Placed {
  return { entry, instant: instantOf(entry.at) };
}

function comparePlaced(one: Placed, other: Placed): number {
  return one.instant - other.instant || compareText(one.entry.id, other.entry.id);
}

function isSorted(placed: readonly Placed[]): boolean {
  return placed.every((one, at) => at === 0 || comparePlaced(placed[at - 1] as Placed, one) < 0);
}

function append(into: Placed[], placed: readonly Placed[]): Placed[] {
  for (const one of placed) into.push(one);
  return into;
}

/** Two sorted lists as one, without sorting again. */
function merge(one: readonly Placed[], other: readonly Placed[]): Placed[] {
  const merged: Placed[] = [];
  let at = 0;
  for (const next of other) {
    for (let held = one[at]; held !== undefined && comparePlaced(held, next) < 0; held = one[at]) {
      merged.push(held);
      at += 1;
    }
    merged.push(next);
  }
  return append(merged, one.slice(at));
}
