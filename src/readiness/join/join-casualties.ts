import { compareEntries, instantOf, type Entry } from "#log";
import type { CasualtyState, JoinedSheet } from "../casualty/casualty-state.ts";
import { foldJoined, type SheetLines } from "./fold-joined.ts";
import { Groups } from "./groups.ts";

type Join = NonNullable<CasualtyState["joins"]>[number] & { readonly sheet: string };

/** Reads casualties of which some have more than one sheet; keeps what it gave while nothing about it changes. */
export class CasualtyJoiner {
  #given = new Map<string, { readonly from: readonly CasualtyState[]; readonly joined: CasualtyState }>();

  /**
   * Each casualty once, whatever number of sheets was opened for her. The first opened gives its id, and the others are
   * named under `sheets`.
   *
   * @param sheets - every sheet by its own lines
   * @param linesOf - the lines of a sheet that count, in order
   */
  join(sheets: readonly CasualtyState[], linesOf: (id: string) => readonly Entry[]): readonly CasualtyState[] {
    const joins = joinsOf(sheets);
    if (joins.length === 0) return sheets;
    const given = new Map<string, { readonly from: readonly CasualtyState[]; readonly joined: CasualtyState }>();
    const all = groupsOf(sheets, joins).map(({ group, joins: own }) => {
      if (group.length === 1) return group[0]!;
      const key = group.map(({ id }) => id).join(" ");
      const before = this.#given.get(key);
      const isSame = before?.from.every((one, at) => one === group[at]) ?? false;
      const joined = isSame ? before!.joined : joinGroup(group, own, linesOf);
      given.set(key, { from: group, joined });
      return joined;
    });
    this.#given = given;
    return all;
  }
}

/** Ids of every sheet of a casualty, its own first. */
export function sheetIds(casualty: Pick<CasualtyState, "id" | "sheets">): readonly string[] {
  return casualty.sheets?.map(({ id }) => id) ?? [casualty.id];
}

/** Joinings of two sheets that are both here, in the order in which they were written. */
function joinsOf(sheets: readonly CasualtyState[]): readonly Join[] {
  const known = new Set(sheets.map(({ id }) => id));
  return sheets
    .flatMap(({ id, joins = [] }) => joins.map((join) => ({ ...join, sheet: id })))
    .filter((join) => join.with !== join.sheet && known.has(join.with))
    .toSorted((one, other) => instantOf(one.at) - instantOf(other.at) || (one.entry < other.entry ? -1 : 1));
}

interface Group {
  readonly group: CasualtyState[];
  readonly joins: Join[];
}

/** Sheets of one casualty side by side, the first opened first, with what joined them; in the order of the first of each. */
function groupsOf(sheets: readonly CasualtyState[], joins: readonly Join[]): readonly Group[] {
  const groups = new Groups();
  for (const join of joins) groups.unite(join.sheet, join.with);
  const named = (id: string) => (groups.of(id).size > 1 ? groups.of(id) : id);
  const found = new Map<ReturnType<typeof named>, Group>();
  for (const sheet of sheets.toSorted(firstOpened)) {
    const before = found.get(named(sheet.id));
    if (before) before.group.push(sheet);
    else found.set(named(sheet.id), { group: [sheet], joins: [] });
  }
  for (const join of joins) found.get(named(join.sheet))?.joins.push(join);
  return [...found.values()];
}

function joinGroup(
  group: readonly CasualtyState[],
  joins: readonly Join[],
  linesOf: (id: string) => readonly Entry[],
): CasualtyState {
  const sheets: readonly SheetLines[] = group.map((state) => ({ state, lines: linesOf(state.id) }));
  const joined = foldJoined(sheets, joins, lastUniting(joins));
  return { ...joined, id: group[0]!.id, sheets: group.map(asSheet) };
}

/** The line by which the last of the sheets came to the others: said a second time it tells nothing new. */
function lastUniting(joins: readonly Join[]): Join {
  const groups = new Groups();
  return joins.filter((join) => groups.unite(join.sheet, join.with)).at(-1)!;
}

function asSheet({ id, name, opened, closed }: CasualtyState): JoinedSheet {
  return { id, name, opened, ...(closed && { closed }) };
}

function firstOpened(one: CasualtyState, other: CasualtyState): number {
  return instantOf(one.opened.at) - instantOf(other.opened.at) || (one.id < other.id ? -1 : 1);
}

/** Lines of several sheets in the one order of the log. */
export function mergeLines(lists: readonly (readonly Entry[])[]): readonly Entry[] {
  return lists.flat().toSorted(compareEntries);
}
