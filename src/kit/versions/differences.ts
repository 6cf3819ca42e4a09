import { allSteps, checkNamed, titleOfMode } from "../look-ups.ts";
import type { Check, Mode, Pattern, Step } from "../pattern.ts";

export type PatternPart = "item" | "mode" | "check" | "step";

/** One item, mode, check or step that is not in one version of a pattern as it is in another. */
export interface PatternDifference {
  readonly part: PatternPart;
  readonly id: string;
  /** What people call it: an item's name, a mode with its item, what a check asks, what a step says. */
  readonly name: string;
  readonly how: "added" | "removed" | "changed";
  /** What of it changed, in words; empty where it was added or removed. */
  readonly changed: readonly string[];
}

/** What fields of a part are called. */
const WORDS: Readonly<Record<string, string>> = {
  after: "when it is done",
  afterwards: "what is done after its answers",
  against: "what it is held against",
  ask: "what is asked",
  atLeast: "limit",
  atMost: "limit",
  behind: "what may be behind its readings",
  beyond: "day it must reach",
  cautions: "cautions",
  checks: "checks",
  description: "description",
  dimension: "what is measured",
  does: "work it does",
  effect: "effect",
  exactly: "number",
  expect: "what is right",
  extendable: "whether a look extends it",
  finds: "what it finds",
  first: "what is compared",
  forbids: "work it forbids",
  hazards: "hazards",
  item: "item",
  kind: "kind",
  lapse: "what a lapse does",
  lapseLimit: "limit after a lapse",
  life: "life",
  lift: "lifting by machine",
  limit: "limit",
  loss: "whether it is a loss",
  measuresDelivery: "measuring of delivery",
  name: "name",
  needs: "people, tools and time",
  of: "what is counted",
  once: "whether it is measured once",
  oneLook: "what one look shows",
  optional: "whether it may be left out",
  part: "part to draw",
  partOf: "what it is fixed to",
  place: "place",
  provedBy: "proof",
  quantity: "quantity",
  reads: "how it is read",
  remedy: "remedy",
  renews: "what it renews",
  second: "what is compared",
  stows: "what it puts back",
  text: "words",
  trend: "what its readings tell of over the years",
  timer: "clock",
  unit: "unit",
  unread: "what an unread date does",
  unreadLimit: "limit after an unread date",
  why: "reason",
  withNext: "lines done together",
};

/** A step's number moves when another comes or goes: that is no change of it. */
const MOVES = new Set(["line"]);

/**
 * What differs between two versions of a pattern: items, modes, checks and steps added, removed or changed, in that order,
 * and each in the order of the version that has it.
 *
 * @param from - the version a kit is built to
 * @param to - the version it moves to
 * @returns empty where nothing of the four differs
 * @source DERIVED: docs/methods/pattern-versions.md
 * @example
 * const before = { items: [{ id: "torch", name: "Torch", quantity: 1 }], modes: [], checks: [], stages: [] };
 * const after = { ...before, items: [{ id: "torch", name: "Torch", quantity: 2 }] };
 * differencesOf(before, after)[0].changed // ["quantity"]
 */
export function differencesOf(from: Pattern, to: Pattern): readonly PatternDifference[] {
  return [
    ...between({ part: "item", all: ({ items }) => items, name: ({ name }) => name }, from, to),
    ...between({ part: "mode", all: ({ modes }) => modes, name: nameOfMode }, from, to),
    ...between({ part: "check", all: ({ checks }) => checks, name: ({ ask }) => ask }, from, to),
    ...between({ part: "step", all: allSteps, name: ({ text }) => text }, from, to),
  ];
}

function nameOfMode({ item, name }: Mode, { items }: Pattern): string {
  return titleOfMode(items.find(({ id }) => id === item)?.name ?? item, name);
}

/** Parts of one sort: where they stand in a pattern and what people call one. */
interface Sort<One> {
  readonly part: PatternPart;
  readonly all: (pattern: Pattern) => readonly One[];
  readonly name: (one: One, pattern: Pattern) => string;
}

function between<One extends { readonly id: string }>(
  { part, all, name }: Sort<One>,
  from: Pattern,
  to: Pattern,
): readonly PatternDifference[] {
  const old = new Map(all(from).map((one) => [one.id, one]));
  const kept = new Set(all(to).map(({ id }) => id));
  const now = all(to).flatMap((one): readonly PatternDifference[] => {
    const was = old.get(one.id);
    const changed = was ? fieldsChanged(was, one) : [];
    if (was && changed.length === 0) return [];
    return [{ part, id: one.id, name: name(one, to), how: was ? "changed" : "added", changed }];
  });
  const gone = all(from).filter(({ id }) => !kept.has(id));
  return [
    ...now,
    ...gone.map((one) => ({ part, id: one.id, name: name(one, from), how: "removed", changed: [] }) as const),
  ];
}

function fieldsChanged(before: object, after: object): readonly string[] {
  const [one, other] = [new Map(Object.entries(before)), new Map(Object.entries(after))];
  const names = [...new Set([...one.keys(), ...other.keys()])].filter((name) => !MOVES.has(name));
  const differing = names.filter((name) => JSON.stringify(one.get(name)) !== JSON.stringify(other.get(name)));
  return [...new Set(differing.map((name) => WORDS[name] ?? "something else"))];
}

/** A check of the new version, and the step that asks it. */
export interface LookAgain {
  readonly check: Check;
  readonly step: Step | undefined;
}

/**
 * What a kit that moves to another version has to be looked at again for, whatever its last turnaround saw: every check that
 * is new or asks something else, that finds a mode which is new or has another effect, or that looks at an item which is new
 * or of which there are now more or fewer.
 *
 * @param from - the version it is built to
 * @param to - the version it moves to
 * @returns checks of `to` in the order of its steps
 * @source DERIVED: docs/methods/pattern-versions.md
 */
export function toLookAtAgain(from: Pattern, to: Pattern): readonly LookAgain[] {
  const matters = differencesOf(from, to).filter(isMaterial);
  const ids = (part: PatternPart) => new Set(matters.filter((one) => one.part === part).map(({ id }) => id));
  const [items, modes, checks] = [ids("item"), ids("mode"), ids("check")];
  const isNew = ({ id, item, finds }: Check) =>
    checks.has(id) || items.has(item) || finds.some((one) => modes.has(one));
  const asked = new Map<string, Step>();
  for (const step of allSteps(to)) for (const id of step.checks) if (!asked.has(id)) asked.set(id, step);
  const inOrder = [...asked.keys()].flatMap((id) => checkNamed(to, id) ?? []);
  return inOrder.filter(isNew).map((check) => ({ check, step: asked.get(check.id) }));
}

/** Changes after which an earlier look proves nothing any more. */
const MATERIAL: Readonly<Record<PatternPart, readonly string[]>> = {
  item: ["quantity", "life", "place", "what it is fixed to"],
  mode: ["effect"],
  check: [
    "what is asked",
    "limit",
    "number",
    "what is right",
    "what it finds",
    "kind",
    "what is compared",
    "day it must reach",
  ],
  step: [],
};

function isMaterial({ part, how, changed }: PatternDifference): boolean {
  return how === "added" || changed.some((one) => MATERIAL[part].includes(one));
}
