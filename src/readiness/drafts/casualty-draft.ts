import type { Entry } from "#log";
import { markWhenTaken } from "../casualty/casualty-late.ts";
import type { CasualtyState } from "../casualty/casualty-state.ts";
import type {
  CasualtySpace,
  HolePatched,
  PumpSeen,
  PumpSet,
  PumpStartTold,
  SoundingTaken,
} from "../kinds/casualty-parts.ts";
import { CasualtyPumps } from "./casualty-pumps.ts";
import { ToldList } from "./told-list.ts";

type Writable = { -readonly [Key in keyof CasualtyState]: CasualtyState[Key] };

/**
 * A casualty while lines are folded into it: lists grow in place, and what is searched for by its id is looked up. A line
 * costs the same however many there are. What was given out is never written to again.
 */
export class CasualtyDraft {
  /** What does not grow with the log; the rest is written into it when it is given out. */
  readonly state: Writable;
  readonly pumps: CasualtyPumps;
  readonly #soundings: ToldList<SoundingTaken>;
  readonly #patches: ToldList<HolePatched>;
  readonly #pumpSeen: ToldList<PumpSeen>;
  readonly #starts: ToldList<PumpStartTold>;
  readonly #joins: NonNullable<CasualtyState["joins"]>[number][];
  readonly #spaces: Map<string, CasualtySpace>;
  readonly #notes: CasualtyState["notes"][number][];
  readonly #reviewNotes: NonNullable<CasualtyState["reviewNotes"]>[number][];
  #changed = new Set<"spaces" | "notes" | "joins" | "reviewNotes">();

  constructor(before: CasualtyState) {
    this.state = { ...before };
    this.pumps = new CasualtyPumps(before.pumps);
    this.#soundings = new ToldList(before.soundings);
    this.#patches = new ToldList(before.patches);
    this.#pumpSeen = new ToldList(before.pumpSeen ?? []);
    this.#starts = new ToldList(before.starts ?? []);
    this.#joins = [...(before.joins ?? [])];
    this.#spaces = new Map(before.spaces.map((space) => [space.id, space]));
    this.#notes = [...before.notes];
    this.#reviewNotes = [...(before.reviewNotes ?? [])];
  }

  /** A further space, or what is now known of one. */
  putSpace(space: CasualtySpace): void {
    this.#spaces.set(space.id, space);
    this.#changed.add("spaces");
  }

  hasSpace(id: string): boolean {
    return this.#spaces.has(id);
  }

  addNote(note: CasualtyState["notes"][number]): void {
    this.#notes.push(note);
    this.#changed.add("notes");
  }

  addReviewNote(note: NonNullable<CasualtyState["reviewNotes"]>[number]): void {
    this.#reviewNotes.push(note);
    this.#changed.add("reviewNotes");
  }

  addSounding(body: SoundingTaken, entry: Entry): void {
    this.#soundings.add(body, entry);
  }

  addPatch(body: HolePatched, entry: Entry): void {
    this.#patches.add(body, entry);
  }

  addPumpSeen(body: PumpSeen, entry: Entry): void {
    this.state.pumpSeen ??= [];
    this.#pumpSeen.add(body, entry);
  }

  addStart(body: PumpStartTold, entry: Entry): void {
    this.state.starts ??= [];
    this.#starts.add(body, entry);
  }

  addJoin(join: NonNullable<CasualtyState["joins"]>[number]): void {
    this.#joins.push(join);
    this.#changed.add("joins");
  }

  setPump({ taken, ...setting }: PumpSet, entry: Entry): void {
    this.pumps.set(setting, markWhenTaken(taken, entry).at);
  }

  /** The casualty as it stands. */
  release(): CasualtyState {
    const { state } = this;
    state.soundings = this.#soundings.read();
    state.patches = this.#patches.read();
    state.pumps = this.pumps.read();
    if (state.pumpSeen) state.pumpSeen = this.#pumpSeen.read();
    if (state.starts) state.starts = this.#starts.read();
    if (this.#changed.has("joins")) state.joins = [...this.#joins];
    if (this.#changed.has("spaces")) state.spaces = [...this.#spaces.values()];
    if (this.#changed.has("notes")) state.notes = [...this.#notes];
    if (this.#changed.has("reviewNotes")) state.reviewNotes = [...this.#reviewNotes];
    this.#changed = new Set();
    return { ...state };
  }
}
