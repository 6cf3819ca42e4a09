import type { Pattern } from "#kit";
import type { Entry, History } from "#log";
import type { Difference, KitState, Mark, Turnaround } from "./state.ts";

/** Pattern versions to be had here, by "id@version". */
export type PatternShelf = ReadonlyMap<string, Pattern>;

export type Mutable<T> = { -readonly [Key in keyof T]: T[Key] };

/**
 * A kit while entries are folded into it. Each part is copied the first time it is written, so a batch of entries costs
 * one copy of what it touches and the state it started from stays as it was.
 */
export class KitDraft {
  kit: Mutable<KitState>;
  private owned = new Set<object>();

  constructor(
    before: KitState,
    readonly history: History,
    private readonly patterns: PatternShelf,
  ) {
    this.kit = { ...before };
  }

  /** The pattern the kit is built to at this point of its log; before its enrolment came, the one the entry names. */
  patternAt(entry: Entry): Pattern | undefined {
    return this.patterns.get(this.kit.pattern) ?? this.patterns.get(entry.pattern ?? "");
  }

  /** The kit as it stands, never written to again by this draft; what is folded in later goes to a copy. */
  release(): KitState {
    const done = this.kit;
    this.kit = { ...done };
    this.owned = new Set();
    return done;
  }

  /** The list itself where this draft made it, else a copy to write to. */
  list<T>(items: readonly T[] | undefined): T[] {
    if (items && this.owned.has(items)) return items as T[];
    const copy = items ? items.slice() : [];
    this.owned.add(copy);
    return copy;
  }

  /** The object itself where this draft made it, else a copy to write to. */
  part<T extends object>(part: T): Mutable<T> {
    if (this.owned.has(part)) return part;
    const copy = { ...part };
    this.owned.add(copy);
    return copy;
  }

  /** The turnaround to write to, wherever it stands; one not yet heard of is begun on the spot. */
  turnaround(id: string, entry: Entry): Mutable<Turnaround> {
    return this.knownTurnaround(id) ?? this.beginTurnaround(id, entry);
  }

  /** The turnaround to write to, if it has been heard of. */
  knownTurnaround(id: string): Mutable<Turnaround> | undefined {
    if (this.kit.turnaround?.id === id) return (this.kit.turnaround = this.part(this.kit.turnaround));
    return this.writableIn("otherTurnarounds", id) ?? this.writableIn("turnarounds", id);
  }

  /** Begins a turnaround; a second one open at once stands beside the first until that is settled. */
  beginTurnaround(id: string, entry: Entry): Mutable<Turnaround> {
    const begun: Mutable<Turnaround> = this.part(blankTurnaround(id, entry));
    if (!this.kit.turnaround) return (this.kit.turnaround = begun);
    this.kit.otherTurnarounds = [...this.list(this.kit.otherTurnarounds), begun];
    return begun;
  }

  /** Moves a turnaround among the closed ones. */
  closeTurnaround(turnaround: Mutable<Turnaround>, closed: NonNullable<Turnaround["closed"]>): void {
    turnaround.closed = closed;
    const others = (this.kit.otherTurnarounds ?? []).filter((other) => other.id !== turnaround.id);
    if (this.kit.turnaround?.id === turnaround.id) delete this.kit.turnaround;
    const next = this.kit.turnaround ?? others.shift();
    if (next) this.kit.turnaround = next;
    if (others.length > 0) this.kit.otherTurnarounds = others;
    else delete this.kit.otherTurnarounds;
    this.kit.turnarounds = this.list(this.kit.turnarounds);
    (this.kit.turnarounds as Turnaround[]).push(turnaround);
  }

  /** True where the entry was made on another device without sight of what the mark stands for. */
  isBlindTo(mark: Mark, entry: Entry): boolean {
    return mark.device !== entry.device && !this.history.knew(entry.id, mark.entry);
  }

  /** Notes a difference to settle; a third opinion on the same thing joins the first two. */
  differ(what: Omit<Difference, "entries" | "marks">, marks: readonly Mark[]): void {
    const known = this.kit.toSettle.find((one) => isAboutSame(one, what));
    const all = [...new Map([...(known?.marks ?? []), ...marks].map((mark) => [mark.entry, mark])).values()];
    const difference = { ...what, entries: all.map((mark) => mark.entry), marks: all.map(bareMark) };
    this.kit.toSettle = [...this.kit.toSettle.filter((one) => one !== known), difference];
  }

  private writableIn(where: "otherTurnarounds" | "turnarounds", id: string): Mutable<Turnaround> | undefined {
    const at = this.kit[where]?.findLastIndex((turnaround) => turnaround.id === id) ?? -1;
    if (at < 0) return undefined;
    const list = this.list(this.kit[where]);
    this.kit[where] = list;
    return (list[at] = this.part(list[at]!));
  }
}

/** Who, when and where of an entry. */
export function markOf(entry: Entry): Mark {
  return { entry: entry.id, at: entry.at, by: entry.by, device: entry.device };
}

/** Only who, when and where, of a fact that carries more. */
export function bareMark({ entry, at, by, device }: Mark): Mark {
  return { entry, at, by, device };
}

function blankTurnaround(id: string, entry: Entry): Turnaround {
  return {
    id,
    because: "routine",
    opened: { ...markOf(entry), sealSeen: "" },
    ...(entry.pattern === undefined ? {} : { pattern: entry.pattern }),
    answers: {},
    timers: {},
    measured: [],
  };
}

type About = Omit<Difference, "entries" | "marks">;

function isAboutSame(one: About, other: About): boolean {
  const fields = ["what", "turnaround", "step", "check", "item"] as const;
  return fields.every((field) => one[field] === other[field]);
}
