import type { Pattern } from "#kit";
import { createFold, type Entry, type History, type KeptEntry } from "#log";
import { nameTwins } from "./seal-twins.ts";
import {
  applyCasualtyEntry,
  applyDeviceEntry,
  applyPatternEntry,
  applyPersonEntry,
  applyPlaceEntry,
  applyStationEntry,
  applyToDraft,
  draftKit,
  type CasualtyState,
  type Device,
  type KitDraft,
  type KitState,
  type PatternShelf,
  type Person,
  type Place,
  type StationPolicy,
  type StationState,
  type StepReport,
} from "#readiness";

/** The station as its log tells it. What an entry does not touch keeps its identity from one reading to the next. */
export interface StationReading {
  readonly stationName: string;
  readonly policy: StationPolicy;
  /** Every kit, retired ones too, by name. */
  readonly kits: readonly KitState[];
  readonly places: readonly Place[];
  readonly people: readonly Person[];
  readonly devices: readonly Device[];
  /** Newest first, closed ones too. */
  readonly casualties: readonly CasualtyState[];
  /** By pattern id. */
  readonly reports: ReadonlyMap<string, readonly StepReport[]>;
  /** By "id@version". */
  readonly patterns: ReadonlyMap<string, Pattern>;
}

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
  /** Entries of a subject that count, in order. */
  entriesOf(subject: string): readonly Entry[];
  /** Every entry of a subject, struck ones and strikes too. */
  allEntriesOf(subject: string): readonly Entry[];
  /** The strike that struck an entry, if one did. */
  struckBy(subject: string, entry: string): Entry | undefined;
  /** What a new entry about the subject names in `after`. */
  heads(subject: string): readonly string[];
  has(entry: string): boolean;
  readonly size: number;
}

type SubjectState =
  | { readonly sort: "kit"; readonly draft: KitDraft | undefined }
  | { readonly sort: "person"; readonly person: Person | undefined }
  | { readonly sort: "place"; readonly place: Place | undefined }
  | { readonly sort: "device"; readonly device: Device | undefined }
  | { readonly sort: "casualty"; readonly casualty: CasualtyState | undefined }
  | { readonly sort: "pattern"; readonly reports: readonly StepReport[] }
  | { readonly sort: "station"; readonly station: StationState | undefined }
  | { readonly sort: "other" };

/**
 * One object that takes a station's entries, in bulk or one by one, and tells kits, places, people and devices.
 *
 * @param patterns - every pattern version the station has
 * @example
 * const fold = createStationFold(patterns);
 * fold.add(entries);
 * fold.read().kits;
 */
export function createStationFold(patterns: Iterable<Pattern>): StationFold {
  return new SubjectsFold(new Map([...patterns].map((pattern) => [`${pattern.id}@${pattern.version}`, pattern])));
}

class SubjectsFold implements StationFold {
  readonly #fold = createFold<SubjectState>({
    init,
    apply: (state, entry, history) => apply(state, entry, history, this.#patterns),
  });
  readonly #patterns: ReadonlyMap<string, Pattern>;
  readonly #kits = new Map<string, KitState>();
  /** By subject, as they were read: with the other kit that carries the same seal, where one does. */
  #read: ReadonlyMap<string, KitState> = new Map();
  #reading: StationReading | undefined;

  constructor(patterns: ReadonlyMap<string, Pattern>) {
    this.#patterns = patterns;
  }

  add(entries: Iterable<Entry | KeptEntry>): ReadonlySet<string> {
    const touched = this.#fold.add(bare(entries));
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
    return this.#read.get(`kit:${id}`);
  }

  entriesOf(subject: string): readonly Entry[] {
    return this.#fold.entries(subject);
  }

  allEntriesOf(subject: string): readonly Entry[] {
    return this.#fold.allEntries(subject);
  }

  struckBy(subject: string, entry: string): Entry | undefined {
    return this.#fold.struckBy(subject, entry);
  }

  heads(subject: string): readonly string[] {
    return this.#fold.heads(subject);
  }

  has(entry: string): boolean {
    return this.#fold.has(entry);
  }

  get size(): number {
    return this.#fold.size;
  }

  /** Takes what was folded out of the draft, so that later entries leave what was given out as it is. */
  #release(subject: string): void {
    const state = this.#fold.state(subject);
    if (state?.sort !== "kit") return;
    if (state.draft) this.#kits.set(subject, { ...state.draft.release(), heads: this.#fold.heads(subject) });
    else this.#kits.delete(subject);
  }

  #compose(): StationReading {
    const states = [...this.#fold.subjects()].flatMap((subject) => this.#fold.state(subject) ?? []);
    const station = states.find((state) => state.sort === "station")?.station;
    this.#read = nameTwins(this.#kits, this.#read);
    return {
      stationName: station?.name ?? "",
      policy: station?.policy ?? {},
      kits: [...this.#read.values()].sort(byName),
      places: states.flatMap((state) => (state.sort === "place" ? (state.place ?? []) : [])).sort(byName),
      people: states.flatMap((state) => (state.sort === "person" ? (state.person ?? []) : [])).sort(byName),
      devices: states.flatMap((state) => (state.sort === "device" ? (state.device ?? []) : [])).sort(byName),
      casualties: states
        .flatMap((state) => (state.sort === "casualty" ? (state.casualty ?? []) : []))
        .sort(newestFirst),
      reports: this.#reports(),
      patterns: this.#patterns,
    };
  }

  #reports(): ReadonlyMap<string, readonly StepReport[]> {
    const found = new Map<string, readonly StepReport[]>();
    for (const subject of this.#fold.subjects()) {
      const state = this.#fold.state(subject);
      if (state?.sort === "pattern") found.set(subject.slice("pattern:".length), state.reports);
    }
    return found;
  }
}

function init(subject: string): SubjectState {
  const sort = subject.split(":", 1)[0];
  if (sort === "kit") return { sort, draft: undefined };
  if (sort === "person") return { sort, person: undefined };
  if (sort === "place") return { sort, place: undefined };
  if (sort === "device") return { sort, device: undefined };
  if (sort === "casualty") return { sort, casualty: undefined };
  if (sort === "pattern") return { sort, reports: [] };
  return sort === "station" ? { sort, station: undefined } : { sort: "other" };
}

function apply(state: SubjectState, entry: Entry, history: History, patterns: PatternShelf): SubjectState {
  switch (state.sort) {
    case "kit": {
      const draft = state.draft ?? draftKit(entry, history, patterns);
      applyToDraft(draft, entry);
      return state.draft ? state : { sort: "kit", draft };
    }
    case "person":
      return { sort: "person", person: applyPersonEntry(state.person, entry) };
    case "place":
      return { sort: "place", place: applyPlaceEntry(state.place, entry) };
    case "device":
      return { sort: "device", device: applyDeviceEntry(state.device, entry) };
    case "casualty":
      return { sort: "casualty", casualty: applyCasualtyEntry(state.casualty, entry) };
    case "pattern":
      return { sort: "pattern", reports: applyPatternEntry(state.reports, entry) };
    case "station":
      return { sort: "station", station: applyStationEntry(state.station, entry) };
    case "other":
      return state;
  }
}

function* bare(entries: Iterable<Entry | KeptEntry>): Iterable<Entry> {
  for (const entry of entries) yield "entry" in entry ? entry.entry : entry;
}

function byName(one: { readonly name: string; readonly id: string }, other: typeof one): number {
  const [first, second] = one.name === other.name ? [one.id, other.id] : [one.name, other.name];
  return first < second ? -1 : first > second ? 1 : 0;
}

function newestFirst(one: CasualtyState, other: CasualtyState): number {
  return Date.parse(other.opened.at) - Date.parse(one.opened.at) || (one.id < other.id ? -1 : 1);
}
