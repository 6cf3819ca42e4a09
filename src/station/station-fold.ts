import type { Pattern } from "#kit";
import { createFold, lateBy, type Entry, type History, type KeptEntry } from "#log";
import { addCasualtyRuns, type KitWithRuns } from "./runs/kit-runs.ts";
import { nameTwins } from "./acts/seal-twins.ts";
import { CasualtySheets } from "./joined/casualty-sheets.ts";
import { applyToSubject, blankSubject, type SubjectState } from "./fold/subject-state.ts";
import { SnapshotBase } from "./snapshot/base.ts";
import type { StationSnapshot } from "./snapshot/snapshot.ts";
import type { StationReading } from "./station-reading.ts";
import {
  begunVisit,
  mergeLines,
  type CasualtyState,
  type KitState,
  type Qualification,
  type StepReport,
  type StockPart,
  type Visit,
} from "#readiness";

/** A station's log, folded and kept up to date. */
export interface StationFold {
  /**
   * Takes in entries in any order; those already in are ignored.
   * @returns subjects that were touched
   */
  add(entries: Iterable<Entry | KeptEntry>): ReadonlySet<string>;
  /** The station now; the same object until something is added that changes it. */
  read(): StationReading;
  kit(id: string): KitState | undefined;
  /** Entries of a subject that count, in order; of a casualty those of all her sheets. */
  entriesOf(subject: string): readonly Entry[];
  /** Every entry of a subject, struck ones and strikes too. */
  allEntriesOf(subject: string): readonly Entry[];
  /** The strike that struck an entry, if one did. */
  struckBy(subject: string, entry: string): Entry | undefined;
  /** When the station received an entry, RFC 3339, where that was long after it was written; see `lateBy`. */
  receivedLate(entry: string): string | undefined;
  /** What a new entry about the subject names in `after`. */
  heads(subject: string): readonly string[];
  /** Subjects of which anything is known. */
  subjects(): Iterable<string>;
  has(entry: string): boolean;
  readonly size: number;
}

/**
 * One object that takes a station's entries, in bulk or one by one, and tells kits, places, people and devices.
 *
 * @param patterns - every pattern version the station has
 * @param base - what lines that are not at hand made of it, for lines that came after those
 * @example createStationFold([]).read().kits // []
 */
export function createStationFold(patterns: Iterable<Pattern>, base?: StationSnapshot): StationFold {
  const shelf = new Map([...patterns].map((pattern) => [`${pattern.id}@${pattern.version}`, pattern]));
  return new SubjectsFold(shelf, base && new SnapshotBase(base));
}

class SubjectsFold implements StationFold {
  readonly #fold = createFold<SubjectState>({
    init: (subject) => this.#base?.state(subject) ?? blankSubject(subject),
    apply: (state, entry, history) => applyToSubject(state, entry, this.#sight(history), this.#patterns),
  });
  readonly #patterns: ReadonlyMap<string, Pattern>;
  readonly #base: SnapshotBase | undefined;
  readonly #kits: Map<string, KitState>;
  readonly #casualties: Map<string, CasualtyState>;
  readonly #reports: Map<string, readonly StepReport[]>;
  readonly #parts: Map<string, StockPart>;
  /** By subject, with the other kit that carries the same seal, where one does. */
  #named: ReadonlyMap<string, KitState> = new Map();
  /** By subject, as they were read: with their runs on casualties too. */
  #read: ReadonlyMap<string, KitWithRuns> = new Map();
  #reading: StationReading | undefined;
  /** Times of receipt by id, of lines received late. */
  readonly #late = new Map<string, string>();
  readonly #sheets = new CasualtySheets((subject) => this.#fold.entries(subject));

  constructor(patterns: ReadonlyMap<string, Pattern>, base: SnapshotBase | undefined) {
    this.#patterns = patterns;
    this.#base = base;
    this.#kits = new Map(base?.kits);
    this.#casualties = new Map(base?.casualties);
    this.#reports = new Map(base?.reports);
    this.#parts = new Map(base?.parts);
  }

  add(entries: Iterable<Entry | KeptEntry>): ReadonlySet<string> {
    const touched = this.#fold.add(this.#bare(entries));
    for (const subject of touched) this.#release(subject);
    if (touched.size > 0) this.#reading = undefined;
    return touched;
  }

  read(): StationReading {
    this.#reading ??= this.#compose();
    return this.#reading;
  }

  kit(id: string): KitState | undefined {
    this.read();
    return this.#read.get(`kit:${id}`)?.kit;
  }

  entriesOf(subject: string): readonly Entry[] {
    return this.#ofEach(subject, (one) => this.#fold.entries(one));
  }

  allEntriesOf(subject: string): readonly Entry[] {
    return this.#ofEach(subject, (one) => this.#fold.allEntries(one));
  }

  struckBy(subject: string, entry: string): Entry | undefined {
    for (const one of this.#subjectsOf(subject)) {
      const strike = this.#fold.struckBy(one, entry);
      if (strike !== undefined) return strike;
    }
    return undefined;
  }

  receivedLate(entry: string): string | undefined {
    return this.#late.get(entry);
  }

  heads(subject: string): readonly string[] {
    const heads = this.#fold.heads(subject);
    return this.#base ? this.#base.headsWith(heads, this.#fold.allEntries(subject), subject) : heads;
  }

  subjects(): Iterable<string> {
    return new Set([...(this.#base?.subjects() ?? []), ...this.#fold.subjects()]);
  }

  has(entry: string): boolean {
    return this.#fold.has(entry);
  }

  get size(): number {
    return this.#fold.size;
  }

  /** The entries themselves; of those that a log kept it is noted which came late, also of one known before as unsent. */
  *#bare(entries: Iterable<Entry | KeptEntry>): Iterable<Entry> {
    for (const one of entries) {
      if (!("entry" in one)) {
        yield one;
        continue;
      }
      if (lateBy(one.entry.at, one.received) !== undefined) this.#late.set(one.entry.id, one.received);
      yield one.entry;
    }
  }

  /** Lines of every sheet of a casualty, or of any other subject alone. */
  #ofEach(subject: string, linesOf: (subject: string) => readonly Entry[]): readonly Entry[] {
    const [first, ...others] = this.#subjectsOf(subject);
    return others.length === 0 ? linesOf(first!) : mergeLines([first!, ...others].map(linesOf));
  }

  #subjectsOf(subject: string): readonly string[] {
    if (!subject.startsWith("casualty:")) return [subject];
    this.read();
    return this.#sheets.subjectsOf(subject);
  }

  /** Takes what was folded out of the draft, so that later entries leave what was given out as it is. */
  #release(subject: string): void {
    const state = this.#fold.state(subject);
    if (state?.sort === "kit") this.#releaseKit(subject, state);
    if (state?.sort === "casualty") put(this.#casualties, subject, state.draft?.release() ?? state.base);
    if (state?.sort === "part") this.#parts.set(subject, state.draft.release());
    if (state?.sort === "pattern") this.#reports.set(subject.slice("pattern:".length), state.draft.release());
  }

  #releaseKit(subject: string, { draft, base }: SubjectState & { sort: "kit" }): void {
    put(this.#kits, subject, draft ? { ...draft.release(), heads: this.heads(subject) } : base);
  }

  /** What was made in sight of the lines that are not at hand counts as such. */
  #sight(history: History): History {
    return this.#base ? this.#base.sight(history) : history;
  }

  #states(): readonly SubjectState[] {
    const states = new Map(this.#base?.states());
    for (const subject of this.#fold.subjects()) put(states, subject, this.#fold.state(subject));
    return [...states.values()];
  }

  /** Sheets are joined by their lines: where older lines are not at hand each stands as the snapshot has it. */
  #readCasualties(): readonly CasualtyState[] {
    const isWhole = (subject: string) => this.#base?.casualties.has(subject) !== true;
    const [whole, rest] = [new Array<CasualtyState>(), new Array<CasualtyState>()];
    for (const [subject, casualty] of this.#casualties) (isWhole(subject) ? whole : rest).push(casualty);
    return [...this.#sheets.read(whole), ...rest];
  }

  #compose(): StationReading {
    const states = this.#states();
    const station = states.find((state) => state.sort === "station")?.draft?.release();
    const casualties = this.#readCasualties();
    this.#named = nameTwins(this.#kits, this.#named);
    this.#read = addCasualtyRuns(this.#named, casualties, this.#read);
    return {
      stationName: station?.name ?? "",
      policy: station?.policy ?? {},
      broughtBack: station?.broughtBack ?? [],
      kits: [...this.#read.values()].map(({ kit }) => kit).sort(byName),
      places: states.flatMap((state) => (state.sort === "place" ? (state.place ?? []) : [])).sort(byName),
      people: states.flatMap((state) => (state.sort === "person" ? (state.person ?? []) : [])).sort(byName),
      devices: states.flatMap((state) => (state.sort === "device" ? (state.device ?? []) : [])).sort(byName),
      boats: states.flatMap((state) => (state.sort === "boat" ? (state.boat ?? []) : [])).sort(byName),
      parts: [...this.#parts.values()].sort(byName),
      qualifications: states.flatMap((state) => qualificationIn(state) ?? []).sort(byName),
      practised: this.#base?.practised ?? [],
      casualties: casualties.toSorted(newestFirst),
      visits: states.flatMap((state) => visitIn(state) ?? []).sort(newestVisit),
      reports: new Map(this.#reports),
      patterns: this.#patterns,
    };
  }
}

function qualificationIn(state: SubjectState): Qualification | undefined {
  return state.sort === "qualification" ? state.qualification : undefined;
}

function visitIn(state: SubjectState): Visit | undefined {
  return state.sort === "visit" ? begunVisit(state.visit) : undefined;
}

function newestVisit(one: Visit, other: Visit): number {
  return Date.parse(other.begun.at) - Date.parse(one.begun.at) || (one.id < other.id ? -1 : 1);
}

/** Puts a value in a map, or takes the old one out where there is none. */
function put<Value>(into: Map<string, Value>, key: string, value: Value | undefined): void {
  if (value === undefined) into.delete(key);
  else into.set(key, value);
}

function byName(one: { readonly name: string; readonly id: string }, other: typeof one): number {
  const [first, second] = one.name === other.name ? [one.id, other.id] : [one.name, other.name];
  return first < second ? -1 : first > second ? 1 : 0;
}

function newestFirst(one: CasualtyState, other: CasualtyState): number {
  return Date.parse(other.opened.at) - Date.parse(one.opened.at) || (one.id < other.id ? -1 : 1);
}
