import type { OdeEvent } from "#numerics";
import type { Body } from "./body.ts";
import type { Resting } from "./equilibrium.ts";
import type { FloodEventKind, Mark } from "./flood-case.ts";
import { SEA, surfaceAt, type Passage, type Piping, type Suction } from "./flows.ts";
import { sillOf } from "./opening.ts";

type Afloat = Extract<Resting, { kind: "afloat" }>;

/** Looks at the boat for a given state; the answer for one state is kept for all who ask about it. */
export interface Outlook {
  lie(y: Float64Array): Afloat;
  /** Not afloat in this state, and why. */
  isLost(y: Float64Array): string | undefined;
}

/** An event of the integration and what it means for the flooding. */
export interface Watch {
  readonly event: OdeEvent;
  readonly name: string;
  kindOf(rising: boolean): FloodEventKind | undefined;
  /** What else happens at the event. */
  readonly effect?: (rising: boolean) => void;
  readonly endsRun?: string;
  /** The flows have no corner here: it is noted in passing. */
  readonly inPassing?: true;
}

/** A bare strainer is wet again when the water stands this much above it [m]. */
const WET_AGAIN = 2e-3;

/** Everything that may happen in the phase to come, as pumps and openings stand now. */
export function makeWatches(
  body: Body,
  piping: Piping,
  outlook: Outlook,
  more: { readonly marks: readonly Mark[]; readonly lostAtDeckEdge: boolean; readonly submerged: ReadonlySet<string> },
): Watch[] {
  return [
    ...piping.openings.flatMap((passage) => openingWatches(passage, outlook, more.submerged)),
    ...piping.pumps.filter((pump) => pump.share > 0).map((pump) => pumpWatch(pump, outlook)),
    ...body.names.flatMap((name, i) => fullWatch(body, name, i)),
    ...more.marks.map((mark) => markWatch(body, mark, outlook)),
    ...floatWatches(body, outlook, more.lostAtDeckEdge),
  ];
}

function watch(
  name: string,
  value: (y: Float64Array) => number,
  kinds: { readonly rising?: FloodEventKind; readonly falling?: FloodEventKind },
  more: Partial<Watch> = {},
): Watch {
  const direction = kinds.rising === undefined ? "falling" : kinds.falling === undefined ? "rising" : "either";
  return {
    event: { name, value: (_t, y) => value(y), direction, terminal: more.inPassing !== true },
    name,
    kindOf: (rising) => (rising ? kinds.rising : kinds.falling),
    ...more,
  };
}

function openingWatches(passage: Passage, outlook: Outlook, submerged: ReadonlySet<string>): Watch[] {
  const sill = sillOf(passage.opening);
  const over = (side: number) => (y: Float64Array) => surfaceAt(outlook.lie(y), side, passage.x, passage.y) - sill;
  const first = passage.from !== SEA ? "sill-reached" : submerged.has(passage.name) ? "hole-submerged" : "downflooding";
  return [
    watch(passage.name, over(passage.from), { rising: first, falling: "hole-clear" }),
    watch(passage.name, over(passage.into), { rising: "hole-covered", falling: "hole-uncovered" }),
  ];
}

function pumpWatch(pump: Suction, outlook: Outlook): Watch {
  const margin = pump.bare ? WET_AGAIN : 0;
  const over = (y: Float64Array): number =>
    surfaceAt(outlook.lie(y), pump.compartment, pump.x, pump.y) - pump.height - margin;
  // No surface falls below the floor: where the strainer lies on it, water that is not there says that it is bare.
  const value = (y: Float64Array): number => over(y) + Math.min(0, y[pump.compartment]!);
  const kinds = pump.bare ? { rising: "suction-wet" as const } : { falling: "suction-dry" as const };
  return watch(pump.name, value, kinds, { effect: (rising) => void (pump.bare = !rising) });
}

function fullWatch(body: Body, name: string, index: number): Watch[] {
  const capacity = body.capacities[index]!;
  return Number.isFinite(capacity)
    ? [watch(name, (y) => y[index]! - capacity, { rising: "full" }, { inPassing: true })]
    : [];
}

function markWatch(body: Body, mark: Mark, outlook: Outlook): Watch {
  const index = body.names.indexOf(mark.compartment);
  const { x, y: side } = body.middles[index]!;
  const value = (y: Float64Array): number => surfaceAt(outlook.lie(y), index, x, side) - mark.level;
  return watch(mark.compartment, value, { rising: "mark", falling: "mark" }, { inPassing: true });
}

function floatWatches(body: Body, outlook: Outlook, lostAtDeckEdge: boolean): Watch[] {
  if (body.hull === undefined) return [];
  const edge = watch(
    "deck edge",
    (y) => body.freeboard(outlook.lie(y)) ?? 1,
    { falling: "deck-edge" },
    lostAtDeckEdge ? { endsRun: "the deck edge is under water" } : {},
  );
  const gone = watch(
    "boat",
    (y) => (outlook.isLost(y) === undefined ? 1 : -1),
    { falling: "lost" },
    { endsRun: "she has no position of rest left" },
  );
  return [edge, gone];
}
