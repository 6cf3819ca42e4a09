import { compareEntries, instantOf, type Entry } from "#log";
import { applyToCasualty, draftCasualty } from "../casualty/casualty-fold.ts";
import type { CasualtyBodies } from "../kinds/kinds.ts";
import type { CasualtyState } from "../casualty/casualty-state.ts";
import type { CasualtyDraft } from "../drafts/casualty-draft.ts";
import { markOf } from "../draft.ts";
import type { Mark } from "../state.ts";
import { OwnPumps, type Line } from "./own-pumps.ts";
import { pairsOf, SameThings, translate, type Pair } from "./same-things.ts";

/** A sheet by its own lines, and those lines. */
export interface SheetLines {
  readonly state: CasualtyState;
  /** That count, in order. */
  readonly lines: readonly Entry[];
}

type Join = Mark & CasualtyBodies["casualty-joined"] & { readonly sheet: string };

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
  const rules: Rules = { first: firstOpening(lines), ends: endsHer(sheets, united), own: new OwnPumps(lines) };
  const draft = draftCasualty(lines[0]!.entry);
  for (const line of lines) apply(draft, line, rules);
  return { ...draft.release(), joins: joins.map(({ sheet: _sheet, ...join }) => join) };
}

interface Rules {
  /** Id of the opening that stands. */
  readonly first: string | undefined;
  readonly ends: (closing: Entry) => boolean;
  readonly own: OwnPumps;
}

function apply(draft: CasualtyDraft, line: Line, rules: Rules): void {
  const { entry } = line;
  if (entry.kind === "casualty-opened" && entry.id !== rules.first) return fillIn(draft, entry);
  if (entry.kind === "casualty-closed" && !rules.ends(entry)) return endOwnPumps(draft, line, rules.own);
  if (entry.kind === "pump-set") rules.own.note(line);
  applyToCasualty(draft, entry);
}

function firstOpening(lines: readonly Line[]): string | undefined {
  return lines.find(({ entry }) => entry.kind === "casualty-opened")?.entry.id;
}

/** What a later opening tells beyond what stands already. Told by radio, the later word stands. */
function fillIn(draft: CasualtyDraft, entry: Entry): void {
  const { state } = draft;
  const { boat, space, hole, told, situation, note } = entry.body as CasualtyBodies["casualty-opened"];
  const isLater = told !== undefined && (state.told === undefined || instantOf(told.at) > instantOf(state.told.at));
  Object.assign(
    state,
    { boat: { ...boat, ...state.boat } },
    (hole ?? state.hole) && { hole: { ...hole, ...state.hole } },
    (situation ?? state.situation) && { situation: { ...situation, ...state.situation } },
    isLater && { told },
  );
  if (!draft.hasSpace(space.id)) draft.putSpace(space);
  if (note !== undefined) draft.addNote({ ...markOf(entry), about: "boat", note });
}

function endsHer(sheets: readonly SheetLines[], united: Mark): Rules["ends"] {
  const isAllClosed = sheets.every(({ state }) => state.closed !== undefined);
  return ({ at, id }) => isAllClosed || instantOf(at) > instantOf(united.at) || (at === united.at && id > united.entry);
}

function endOwnPumps({ pumps }: CasualtyDraft, { entry, sheet }: Line, own: OwnPumps): void {
  const { leftRunning } = entry.body as CasualtyBodies["casualty-closed"];
  for (const pump of own.takeRunning(sheet, leftRunning)) pumps.stop(pump, entry.at);
}

function sameSpaces(sheets: readonly SheetLines[], joins: readonly Join[]): SameThings {
  const things = sheets.flatMap(({ state }) => state.spaces.map(({ id }) => ({ sheet: state.id, id })));
  return new SameThings(things, pairsOf(joins.map((join) => ({ ...join, same: join.spaces ?? [] }))));
}

/** A kit is the same kit wherever it stands; of other pumps only people can say so. */
function samePumps(sheets: readonly SheetLines[], joins: readonly Join[]): SameThings {
  const all = sheets.flatMap(({ state }) => state.pumps.map(({ pump, kit }) => ({ sheet: state.id, id: pump, kit })));
  const firsts = new Map<string, (typeof all)[number]>();
  const kits = all.flatMap((one): readonly Pair[] => {
    if (one.kit === undefined) return [];
    const first = firsts.get(one.kit);
    if (first === undefined) firsts.set(one.kit, one);
    return first === undefined ? [] : [[first, one]];
  });
  const told = pairsOf(joins.map((join) => ({ ...join, same: join.pumps ?? [] })));
  return new SameThings(all, [...kits, ...told]);
}
