import type { OdeEvent } from "#numerics";
import type { Body } from "../hull/body.ts";
import type { Resting } from "../hull/equilibrium.ts";
import type { FloodEventKind, LevelMark } from "./flood-case.ts";
import { SEA, surfaceAt, type Intake, type Passage, type Piping, type Suction } from "../openings/flows.ts";
import { sillOf } from "../openings/opening.ts";

type Afloat = Extract<Resting, { kind: "afloat" }>;

/** Looks at the boat for a given state; the answer for one state is kept for all who ask about it. */
export interface Outlook {
  lie(y: Float64Array): Afloat;
  /** Not afloat in this state, and why. */
  isLost(y: Float64Array): string | undefined;
}

/** What an event looks at where the boat has one straight space: a height of sea or surface, or a volume of water. */
export interface Seen {
  /** `strainer`: the surface too, but that of an emptied space is told from its floor. */
  readonly what: "sea" | "surface" | "strainer" | "water";
  /** [m], of water [m³] */
  readonly at: number;
  /** Its value falls as the water rises. */
  readonly falls?: true;
}

/** An event of the integration and what it means for the flooding. */
export interface Watch {
  readonly event: OdeEvent;
  readonly name: string;
  /** What its passing upward and downward is called. */
  readonly kinds: Kinds;
  /** Undefined where it cannot happen to a straight space. */
  readonly seen: Seen | undefined;
  /** As pumps stand now it can happen. Undefined: always. */
  readonly isOn?: () => boolean;
  /** What else happens at the event. */
  readonly effect?: (rising: boolean) => void;
  readonly endsRun?: string | undefined;
}

interface Kinds {
  readonly rising?: FloodEventKind;
  readonly falling?: FloodEventKind;
}

/** A strainer at the surface is under it again when the water stands this much above it, above it this much below [m]. */
const AWAY = 2e-3;

/**
 * How a strainer stands to the water under it.
 *
 * @param over - height of the surface above the strainer [m]
 * @returns at the surface within a millionth of a millimetre above and {@link AWAY} below
 */
export function intakeAt(over: number): Intake {
  if (over > 1e-9) return "under";
  return over < -AWAY ? "above" : "skimming";
}

/** Everything that may happen in a run. */
export function makeWatches(
  body: Body,
  piping: Piping,
  outlook: Outlook,
  more: {
    readonly marks: readonly LevelMark[];
    readonly lostAtDeckEdge: boolean;
    readonly submerged: ReadonlySet<string>;
  },
): Watch[] {
  const watches: Watch[] = [];
  for (const passage of piping.openings) watches.push(...openingWatches(passage, outlook, more.submerged));
  for (const pump of piping.pumps) watches.push(...pumpWatches(pump, outlook));
  body.names.forEach((name, i) => watches.push(...fullWatch(body, name, i)));
  for (const mark of more.marks) watches.push(markWatch(body, mark, outlook));
  watches.push(...floatWatches(body, outlook, more.lostAtDeckEdge));
  return watches;
}

type Value = (y: Float64Array) => number;

/** `corner`: the flows have one there, and the run stops and starts again; `passing`: it is noted in passing. */
function eventOf(name: string, value: Value, kinds: Kinds, manner: "corner" | "passing"): OdeEvent {
  const direction = kinds.rising === undefined ? "falling" : kinds.falling === undefined ? "rising" : "either";
  return { name, value: (_t, y) => value(y), direction, terminal: manner === "corner" };
}

function openingWatches(passage: Passage, outlook: Outlook, submerged: ReadonlySet<string>): Watch[] {
  const { from, into } = passage;
  const first = from !== SEA ? "sill-reached" : submerged.has(passage.name) ? "hole-submerged" : "downflooding";
  return [
    sillWatch(passage, from, outlook, { rising: first, falling: "hole-clear" }),
    sillWatch(passage, into, outlook, { rising: "hole-covered", falling: "hole-uncovered" }),
  ];
}

function sillWatch(passage: Passage, side: number, outlook: Outlook, kinds: Kinds): Watch {
  const { name, x, y: across } = passage;
  const sill = sillOf(passage.opening);
  const value: Value = (y) => surfaceAt(outlook.lie(y), side, x, across) - sill;
  const seen: Seen = { what: side === SEA ? "sea" : "surface", at: sill };
  return { name, kinds, seen, event: eventOf(name, value, kinds, "corner") };
}

/** The four ways in which water and strainer part and meet. */
function pumpWatches(pump: Suction, outlook: Outlook): Watch[] {
  const always = [
    pumpWatch(pump, outlook, { from: "under", to: "skimming", above: 0, kinds: BARING }),
    pumpWatch(pump, outlook, { from: "skimming", to: "under", above: AWAY, kinds: WETTING }),
  ];
  if (pump.followsWater) return always;
  return [
    ...always,
    pumpWatch(pump, outlook, { from: "skimming", to: "above", above: -AWAY, kinds: {}, way: "falling" }),
    pumpWatch(pump, outlook, { from: "above", to: "skimming", above: 0, kinds: {}, way: "rising" }),
  ];
}

interface Meeting {
  readonly from: Intake;
  readonly to: Intake;
  /** Where the surface stands then above the strainer [m]. */
  readonly above: number;
  readonly kinds: Kinds;
  /** Which way the surface goes, where its kinds do not say. */
  readonly way?: "rising" | "falling";
}

function pumpWatch(pump: Suction, outlook: Outlook, meeting: Meeting): Watch {
  const { name, compartment, x, y: across } = pump;
  const { kinds, way } = meeting;
  const at = pump.height + meeting.above;
  // No surface falls below the floor: where the strainer lies on it, water that is not there says that it is bare.
  const value: Value = (y) => surfaceAt(outlook.lie(y), compartment, x, across) - at + Math.min(0, y[compartment]!);
  const event = eventOf(name, value, kinds, "corner");
  return {
    name,
    kinds,
    seen: { what: "strainer", at },
    event: way === undefined ? event : { ...event, direction: way },
    isOn: () => pump.share > 0 && pump.intake === meeting.from,
    effect: () => void (pump.intake = meeting.to),
  };
}

const WETTING: Kinds = { rising: "suction-wet" };
const BARING: Kinds = { falling: "suction-dry" };
const FILLING: Kinds = { rising: "full" };
const MARKED: Kinds = { rising: "mark", falling: "mark" };
const EDGE_UNDER: Kinds = { falling: "deck-edge" };
const GONE: Kinds = { falling: "lost" };

function fullWatch(body: Body, name: string, index: number): Watch[] {
  const capacity = body.capacities[index]!;
  if (!Number.isFinite(capacity)) return [];
  const event = eventOf(name, (y) => y[index]! - capacity, FILLING, "passing");
  return [{ name, kinds: FILLING, seen: { what: "water", at: capacity }, event }];
}

function markWatch(body: Body, mark: LevelMark, outlook: Outlook): Watch {
  const { compartment: name, level: at } = mark;
  const index = body.names.indexOf(name);
  const { x, y: side } = body.middles[index]!;
  const value: Value = (y) => surfaceAt(outlook.lie(y), index, x, side) - at;
  return { name, kinds: MARKED, seen: { what: "surface", at }, event: eventOf(name, value, MARKED, "passing") };
}

function floatWatches(body: Body, outlook: Outlook, lostAtDeckEdge: boolean): Watch[] {
  if (body.hull === undefined) return [];
  const seen: Seen = { what: "sea", at: body.hull.depth, falls: true };
  const edge: Value = (y) => body.freeboard(outlook.lie(y)) ?? 1;
  const event = eventOf("deck edge", edge, EDGE_UNDER, "corner");
  const endsRun = lostAtDeckEdge ? "the deck edge is under water" : undefined;
  return [{ name: "deck edge", kinds: EDGE_UNDER, seen, event, endsRun }, goneWatch(outlook)];
}

function goneWatch(outlook: Outlook): Watch {
  const value: Value = (y) => (outlook.isLost(y) === undefined ? 1 : -1);
  const event = eventOf("boat", value, GONE, "corner");
  return { name: "boat", kinds: GONE, seen: undefined, event, endsRun: "she has no position of rest left" };
}
