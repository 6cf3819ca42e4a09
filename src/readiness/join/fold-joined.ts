import { compareEntries, instantOf, type Entry } from "#log";
import { applyToCasualty, draftCasualty } from "../casualty/casualty-fold.ts";
import type { CasualtyBodies } from "../kinds/casualty-kinds.ts";
import type { CasualtyPump, CasualtyState } from "../casualty/casualty-state.ts";
import type { CasualtyDraft } from "../drafts/casualty-draft.ts";
import { markOf } from "../draft.ts";
import type { Mark } from "../state.ts";
import { pairsOf, SameThings, translate, type Pair } from "./same-things.ts";

/** A sheet by its own lines, and those lines. */
export interface SheetLines {
  readonly state: CasualtyState;
  /** That count, in order. */
  readonly lines: readonly Entry[];
}

type Join = Mark & CasualtyBodies["casualty-joined"] & { readonly sheet: string };

interface Line {
  readonly entry: Entry;
  readonly sheet: string;
}

/**
 * Several sheets of one casualty as one: every line of each in the one order of the log, the same spaces and pumps under
 * one id. The first opening stands, a later one fills in what it left out. A closing ends her only where every sheet is
 * closed, or where it was written after the sheets were joined; else it ends the pumps that only its own sheet set.
 *
 * @param sheets - the first opened first
 * @param joins - that say so, in order
 * @param united - the one by which the last came to the others
 */
export function foldJoined(sheets: readonly SheetLines[], joins: readonly Join[], united: Mark): CasualtyState {
  const spaces = sameSpaces(sheets, joins);
  const pumps = samePumps(sheets, joins);
  const lines = sheets
    .flatMap(({ state: { id }, lines: own }) =>
      own.map((entry) => ({ entry: translate(entry, id, spaces, pumps), sheet: id })),
    )
    .toSorted((one, other) => compareEntries(one.entry, other.entry));
  const rules: Rules = { first: firstOpening(lines), ends: endsHer(sheets, united), settersOf: settersOf(lines) };
  let draft: CasualtyDraft | undefined;
  for (const line of lines) draft = apply(draft, line, rules);
  return { ...draft!.release(), joins: joins.map(({ sheet: _sheet, ...join }) => join) };
}

interface Rules {
  /** Id of the opening that stands. */
  readonly first: string | undefined;
  readonly ends: (closing: Entry) => boolean;
  /** Sheets on which a pump was set. */
  readonly settersOf: (pump: string) => ReadonlySet<string>;
}

function apply(before: CasualtyDraft | undefined, { entry, sheet }: Line, rules: Rules): CasualtyDraft {
  if (before !== undefined && entry.kind === "casualty-opened" && entry.id !== rules.first)
    return draftCasualty(entry, fillIn(before.release(), entry));
  const draft = before ?? draftCasualty(entry);
  if (entry.kind === "casualty-closed" && !rules.ends(entry))
    return draftCasualty(
      entry,
      endOwnPumps(draft.release(), entry, (pump) => isSetOnlyOn(rules.settersOf(pump), sheet)),
    );
  applyToCasualty(draft, entry);
  return draft;
}

function firstOpening(lines: readonly Line[]): string | undefined {
  return lines.find(({ entry }) => entry.kind === "casualty-opened")?.entry.id;
}

/** What a later opening tells beyond what stands already. Told by radio, the later word stands. */
function fillIn(state: CasualtyState, entry: Entry): CasualtyState {
  const { boat, space, hole, told, situation, note } = entry.body as CasualtyBodies["casualty-opened"];
  const isNew = !state.spaces.some(({ id }) => id === space.id);
  const isLater = told !== undefined && (state.told === undefined || instantOf(told.at) > instantOf(state.told.at));
  return {
    ...state,
    boat: { ...boat, ...state.boat },
    spaces: isNew ? [...state.spaces, space] : state.spaces,
    ...((hole ?? state.hole) && { hole: { ...hole, ...state.hole } }),
    ...((situation ?? state.situation) && { situation: { ...situation, ...state.situation } }),
    ...(isLater && { told }),
    notes: note === undefined ? state.notes : [...state.notes, { ...markOf(entry), about: "boat", note }],
  };
}

function endsHer(sheets: readonly SheetLines[], united: Mark): Rules["ends"] {
  const isAllClosed = sheets.every(({ state }) => state.closed !== undefined);
  return ({ at, id }) => isAllClosed || instantOf(at) > instantOf(united.at) || (at === united.at && id > united.entry);
}

function endOwnPumps(state: CasualtyState, entry: Entry, isOwn: (pump: string) => boolean): CasualtyState {
  const left = new Set((entry.body as CasualtyBodies["casualty-closed"]).leftRunning ?? []);
  const end = (pump: CasualtyPump): CasualtyPump => ({
    ...pump,
    running: false,
    runs: pump.runs.map((run) => (run.to === undefined ? { ...run, to: entry.at } : run)),
  });
  return {
    ...state,
    pumps: state.pumps.map((pump) => (pump.running && isOwn(pump.pump) && !left.has(pump.pump) ? end(pump) : pump)),
  };
}

function settersOf(lines: readonly Line[]): Rules["settersOf"] {
  const found = new Map<string, Set<string>>();
  for (const { entry, sheet } of lines) {
    if (entry.kind !== "pump-set") continue;
    const { pump } = entry.body as CasualtyBodies["pump-set"];
    found.set(pump, (found.get(pump) ?? new Set()).add(sheet));
  }
  return (pump) => found.get(pump) ?? new Set();
}

function isSetOnlyOn(sheets: ReadonlySet<string>, sheet: string): boolean {
  return sheets.size === 1 && sheets.has(sheet);
}

function sameSpaces(sheets: readonly SheetLines[], joins: readonly Join[]): SameThings {
  const things = sheets.flatMap(({ state }) => state.spaces.map(({ id }) => ({ sheet: state.id, id })));
  return new SameThings(things, pairsOf(joins.map((join) => ({ ...join, same: join.spaces ?? [] }))));
}

/** A kit is the same kit wherever it stands; of other pumps only people can say so. */
function samePumps(sheets: readonly SheetLines[], joins: readonly Join[]): SameThings {
  const all = sheets.flatMap(({ state }) => state.pumps.map(({ pump, kit }) => ({ sheet: state.id, id: pump, kit })));
  const kits = all.flatMap((one): readonly Pair[] => {
    const first = one.kit === undefined ? undefined : all.find(({ kit }) => kit === one.kit);
    return first === undefined || first === one ? [] : [[first, one]];
  });
  const told = pairsOf(joins.map((join) => ({ ...join, same: join.pumps ?? [] })));
  return new SameThings(all, [...kits, ...told]);
}
