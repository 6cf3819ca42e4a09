import type { Met, Pattern } from "#kit";
import type { Entry, History } from "#log";
import { Differences } from "./drafts/differences.ts";
import { DrawnUses } from "./drafts/drawn-uses.ts";
import { Positions } from "./drafts/positions.ts";
import { Waiting } from "./drafts/waiting.ts";
import type { Drill } from "./drill/drill-state.ts";
import type { Difference, Finding, KitState, Mark, Run, Turnaround } from "./state.ts";

/** Pattern versions to be had here, by "id@version". */
export type PatternsByVersion = ReadonlyMap<string, Pattern>;

export type Mutable<T> = { -readonly [Key in keyof T]: T[Key] };

/**
 * A kit while entries are folded into it. Each part is copied the first time it is written, so a batch of entries costs
 * one copy of what it touches and the state it started from stays as it was. What grows with the log is looked up here,
 * never searched: a line costs the same however many there are.
 */
export class KitDraft {
  kit: Mutable<KitState>;
  /** What only some kits need is made when it is first asked for. */
  readonly #before: KitState;
  #waiting: Waiting | undefined;
  #drawn: DrawnUses | undefined;
  #met: Set<Met> | undefined;
  #differences: Differences | undefined;
  readonly #others: Map<string, Mutable<Turnaround>>;
  readonly #closed: Positions;
  readonly #findings: Positions;
  readonly #runs: Positions;
  readonly #drills: Positions;
  /** Ids of the drills that are on, the first one first. */
  readonly #drillsOn: Set<string>;
  readonly #untold = new Set<string>();
  private owned = new Set<object>();
  private isOthersChanged = false;

  constructor(
    before: KitState,
    readonly history: History,
    private readonly patterns: PatternsByVersion,
  ) {
    this.kit = { ...before };
    this.#before = before;
    this.#others = new Map(before.otherTurnarounds?.map((other) => [other.id, other]));
    this.#closed = new Positions(before.turnarounds.map(({ id }) => id));
    this.#findings = new Positions(before.findings.map(({ id }) => id));
    for (const { id } of this.openTurnarounds()) this.#untold.add(id);
    const drills = before.drills ?? [];
    this.#drills = new Positions(drills.map(({ id }) => id));
    this.#drillsOn = new Set(drills.flatMap(({ id, ended }) => (ended ? [] : [id])));
    this.#runs = new Positions(before.runs.map(({ turnaround = "" }) => turnaround));
  }

  get waiting(): Waiting {
    return (this.#waiting ??= new Waiting(this.#before.waiting ?? [], this.history));
  }

  get drawn(): DrawnUses {
    return (this.#drawn ??= new DrawnUses(this.#before.drawn ?? []));
  }

  /** What it met since it was last sealed, each once, in the order in which it met it. */
  get met(): Set<Met> {
    return (this.#met ??= new Set(this.#before.met?.flatMap(({ what }) => what)));
  }

  /** The pattern the kit is built to at this point of its log; before its enrolment came, the one the entry names. */
  patternAt(entry: Entry): Pattern | undefined {
    return this.patterns.get(this.kit.pattern) ?? this.patterns.get(entry.pattern ?? "");
  }

  /** The kit as it stands, never written to again by this draft; what is folded in later goes to a copy. */
  release(): KitState {
    this.writeOut();
    const done = this.kit;
    this.kit = { ...done };
    if (this.owned.size > 0) this.owned = new Set();
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
    const other = this.#others.get(id);
    if (other) return this.putOther(this.part(other));
    const at = this.#closed.of(id);
    if (at === undefined) return undefined;
    const list = this.list(this.kit.turnarounds);
    this.kit.turnarounds = list;
    return (list[at] = this.part(list[at]!));
  }

  /** Begins a turnaround; a second one open at once stands beside the first until that is settled. */
  beginTurnaround(id: string, entry: Entry): Mutable<Turnaround> {
    const begun: Mutable<Turnaround> = this.part(blankTurnaround(id, entry));
    this.#untold.add(id);
    if (!this.kit.turnaround) return (this.kit.turnaround = begun);
    this.kit.otherTurnarounds ??= [];
    return this.putOther(begun);
  }

  /** Turnarounds that are open, the first one first. */
  *openTurnarounds(): Iterable<Turnaround> {
    if (this.kit.turnaround) yield this.kit.turnaround;
    yield* this.#others.values();
  }

  /**
   * Ids of the open turnarounds that are to be told what the kit met.
   *
   * @param isNews - it met something that none of them knows
   */
  takeUntold(isNews: boolean): readonly string[] {
    const isOpen = (id: string) => this.kit.turnaround?.id === id || this.#others.has(id);
    const ids = isNews ? [...this.openTurnarounds()].map(({ id }) => id) : [...this.#untold].filter(isOpen);
    this.#untold.clear();
    return ids;
  }

  /** Moves a turnaround among the closed ones. */
  closeTurnaround(turnaround: Mutable<Turnaround>, closed: NonNullable<Turnaround["closed"]>): void {
    turnaround.closed = closed;
    this.isOthersChanged = this.#others.delete(turnaround.id) || this.isOthersChanged;
    if (this.kit.turnaround?.id === turnaround.id) delete this.kit.turnaround;
    const next = this.kit.turnaround ?? this.shiftOther();
    if (next) this.kit.turnaround = next;
    if (this.#others.size === 0) delete this.kit.otherTurnarounds;
    const list = this.list(this.kit.turnarounds);
    this.kit.turnarounds = list;
    this.#closed.note(turnaround.id, list.push(turnaround) - 1);
  }

  /** Adds a finding, unless one of its id is there. */
  addFinding(finding: Finding): boolean {
    if (this.#findings.of(finding.id) !== undefined) return false;
    const findings = this.list(this.kit.findings);
    this.#findings.note(finding.id, findings.push(finding) - 1);
    this.kit.findings = findings;
    return true;
  }

  /** The finding to write to, if it has been heard of. */
  finding(id: string): Mutable<Finding> | undefined {
    const at = this.#findings.of(id);
    if (at === undefined) return undefined;
    const findings = this.list(this.kit.findings);
    this.kit.findings = findings;
    return (findings[at] = this.part(findings[at]!));
  }

  /** The drill to write to, if it has been heard of. */
  drill(id: string): Mutable<Drill> | undefined {
    const at = this.#drills.of(id);
    if (at === undefined) return undefined;
    const drills = this.list(this.kit.drills);
    this.kit.drills = drills;
    return (drills[at] = this.part(drills[at]!));
  }

  /** Adds a drill of which nothing was heard. */
  addDrill(drill: Drill): Mutable<Drill> {
    const added = this.part(drill);
    const drills = this.list(this.kit.drills);
    this.#drills.note(drill.id, drills.push(added) - 1);
    this.#drillsOn.add(drill.id);
    this.kit.drills = drills;
    return added;
  }

  /** Id of the drill that is on, the first one where there are several. */
  drillOn(): string | undefined {
    return this.#drillsOn.values().next().value;
  }

  /** A drill is over. */
  endDrill(id: string): void {
    this.#drillsOn.delete(id);
  }

  run(turnaround: string): Run | undefined {
    const at = this.#runs.of(turnaround);
    return at === undefined ? undefined : this.kit.runs[at];
  }

  /** Adds to what is known of a turnaround's run. */
  putRun(turnaround: string, said: Partial<Run>, entry: Entry): void {
    const drill = this.knownTurnaround(turnaround)?.drill;
    const found = drill === undefined ? said : { ...said, drill };
    const runs = this.list(this.kit.runs);
    const at = this.#runs.of(turnaround);
    if (at === undefined) this.#runs.note(turnaround, runs.push({ turnaround, at: entry.at, ...found }) - 1);
    else runs[at] = { ...runs[at]!, ...found };
    this.kit.runs = runs;
  }

  /** True where the entry was made on another device without sight of what the mark stands for. */
  isBlindTo(mark: Mark, entry: Entry): boolean {
    return mark.device !== entry.device && !this.history.knew(entry.id, mark.entry);
  }

  /** Notes a difference to settle; a third opinion on the same thing joins the first two. */
  differ(what: Omit<Difference, "entries" | "marks">, marks: readonly Mark[]): void {
    this.differences().note(what, marks);
  }

  /** Takes out the differences that one entry settles, of which every entry was looked at. */
  takeSettled(stands: string, looked: ReadonlySet<string>): readonly Difference[] {
    return this.differences().take(stands, looked);
  }

  /** Does something that settles a difference, and makes none. */
  quietly(act: () => void): void {
    this.differences().quietly(act);
  }

  private differences(): Differences {
    return (this.#differences ??= new Differences(this.#before.toSettle));
  }

  private shiftOther(): Mutable<Turnaround> | undefined {
    for (const [id, other] of this.#others) {
      this.#others.delete(id);
      this.isOthersChanged = true;
      return other;
    }
    return undefined;
  }

  private putOther(turnaround: Mutable<Turnaround>): Mutable<Turnaround> {
    this.#others.set(turnaround.id, turnaround);
    this.isOthersChanged = true;
    return turnaround;
  }

  private writeOut(): void {
    this.kit.toSettle = this.#differences?.changed() ?? this.kit.toSettle;
    const waiting = this.#waiting?.changed();
    if (waiting !== undefined && this.kit.waiting !== undefined) this.kit.waiting = waiting;
    const drawn = this.#drawn?.takeChanged();
    if (drawn !== undefined) this.kit.drawn = drawn;
    if (this.isOthersChanged && this.kit.otherTurnarounds) this.kit.otherTurnarounds = [...this.#others.values()];
    this.isOthersChanged = false;
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
