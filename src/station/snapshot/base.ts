import type { Entry, History } from "#log";
import {
  PartDraft,
  ReportsDraft,
  StationDraft,
  type CasualtyState,
  type KitState,
  type Practised,
  type StepReport,
  type StockPart,
} from "#readiness";
import type { SubjectState } from "../fold/subject-state.ts";
import type { StationSnapshot } from "./snapshot.ts";

/** The most that a line names in `after`. */
const MOST_HEADS = 16;

/** A snapshot as what lines that came after it are folded onto. */
export class SnapshotBase {
  readonly kits: ReadonlyMap<string, KitState>;
  readonly casualties: ReadonlyMap<string, CasualtyState>;
  /** By pattern id. */
  readonly reports: ReadonlyMap<string, readonly StepReport[]>;
  readonly parts: ReadonlyMap<string, StockPart>;
  readonly practised: readonly Practised[];
  readonly #snapshot: StationSnapshot;
  readonly #after: ReadonlyMap<string, readonly string[]>;
  readonly #states: ReadonlyMap<string, SubjectState>;

  constructor(snapshot: StationSnapshot) {
    this.#snapshot = snapshot;
    this.kits = new Map(snapshot.kits.map((kit) => [`kit:${kit.id}`, kit]));
    this.casualties = new Map(snapshot.casualties.map((casualty) => [`casualty:${casualty.id}`, casualty]));
    this.reports = new Map(snapshot.reports);
    this.parts = new Map(snapshot.parts.map((part) => [`part:${part.id}`, part]));
    this.practised = snapshot.practised;
    this.#after = new Map(snapshot.after);
    this.#states = new Map(statesOf(snapshot));
  }

  /** A subject as the snapshot has it, to fold onto; undefined where it has nothing of it. */
  state(subject: string): SubjectState | undefined {
    const [sort, id = ""] = subject.split(":");
    if (sort === "pattern") return { sort, draft: new ReportsDraft(this.reports.get(id) ?? []) };
    if (sort === "station") return this.#station();
    const part = this.parts.get(subject);
    if (part) return { sort: "part", draft: new PartDraft(part) };
    return this.#states.get(subject);
  }

  /** Every subject of which a state is shown, as the snapshot has it. */
  *states(): Iterable<readonly [string, SubjectState]> {
    yield* this.#states;
    for (const subject of this.#after.keys()) if (subject.startsWith("station")) yield [subject, this.#station()];
  }

  subjects(): Iterable<string> {
    return this.#after.keys();
  }

  /** What a new line names: the snapshot's heads that no line after it names, and the heads among those lines. */
  headsWith(heads: readonly string[], lines: readonly Entry[], subject: string): readonly string[] {
    const named = new Set(lines.flatMap(({ after }) => after ?? []));
    const known = (this.#after.get(subject) ?? []).filter((id) => !named.has(id) && !heads.includes(id));
    return [...known, ...heads].slice(-MOST_HEADS);
  }

  /**
   * Who knew what, where the older lines are not at hand: a line was made in sight of them where what it names leads out
   * of the lines that are. Where it does not it counts as made apart, and what it says is shown as a difference.
   */
  sight(history: History): History {
    const knew = (later: string, earlier: string) =>
      history.entry(earlier) === undefined ? leadsOut(history, later) : history.knew(later, earlier);
    return {
      entry: (id) => history.entry(id),
      knew,
      madeApart: (one, other) => one !== other && !knew(one, other) && !knew(other, one),
    };
  }

  #station(): SubjectState {
    const { stationName: name, policy, broughtBack } = this.#snapshot;
    return { sort: "station", draft: new StationDraft({ name, policy, broughtBack }) };
  }
}

function leadsOut(history: History, from: string): boolean {
  const seen = new Set<string>([from]);
  for (const id of seen) {
    const entry = history.entry(id);
    if (entry === undefined) return true;
    for (const name of entry.after ?? []) seen.add(name);
  }
  return false;
}

function* statesOf(snapshot: StationSnapshot): Iterable<[string, SubjectState]> {
  for (const base of snapshot.kits) yield [`kit:${base.id}`, { sort: "kit", draft: undefined, base }];
  for (const base of snapshot.casualties) yield [`casualty:${base.id}`, { sort: "casualty", draft: undefined, base }];
  for (const person of snapshot.people) yield [`person:${person.id}`, { sort: "person", person }];
  for (const place of snapshot.places) yield [`place:${place.id}`, { sort: "place", place }];
  for (const device of snapshot.devices) yield [`device:${device.id}`, { sort: "device", device }];
  for (const one of snapshot.qualifications) {
    yield [`qualification:${one.id}`, { sort: "qualification", qualification: one }];
  }
  for (const visit of snapshot.visits) yield [`visit:${visit.id}`, { sort: "visit", visit }];
  for (const boat of snapshot.boats) yield [`boat:${boat.id}`, { sort: "boat", boat }];
}
