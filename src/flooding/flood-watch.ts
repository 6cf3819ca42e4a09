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
  /** Left out where it cannot happen to a straight space. */
  readonly seen?: Seen;
  kindOf(rising: boolean): FloodEventKind | undefined;
  /** As pumps stand now it can happen. Left out: always. */
  readonly isOn?: () => boolean;
  /** What else happens at the event. */
  readonly effect?: (rising: boolean) => void;
  readonly endsRun?: string;
  /** The flows have no corner here: it is noted in passing. */
  readonly inPassing?: true;
}

/** A bare strainer is wet again when the water stands this much above it [m]. */
const WET_AGAIN = 2e-3;

/** Everything that may happen in a run. */
export function makeWatches(
  body: Body,
  piping: Piping,
  outlook: Outlook,
  more: { readonly marks: readonly Mark[]; readonly lostAtDeckEdge: boolean; readonly submerged: ReadonlySet<string> },
): Watch[] {
  return [
    ...piping.openings.flatMap((passage) => openingWatches(passage, outlook, more.submerged)),
    ...piping.pumps.flatMap((pump) => [pumpWatch(pump, outlook, false), pumpWatch(pump, outlook, true)]),
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
  const seen = (side: number): Partial<Watch> => ({ seen: { what: side === SEA ? "sea" : "surface", at: sill } });
  const first = passage.from !== SEA ? "sill-reached" : submerged.has(passage.name) ? "hole-submerged" : "downflooding";
  return [
    watch(passage.name, over(passage.from), { rising: first, falling: "hole-clear" }, seen(passage.from)),
    watch(passage.name, over(passage.into), { rising: "hole-covered", falling: "hole-uncovered" }, seen(passage.into)),
  ];
}

function pumpWatch(pump: Suction, outlook: Outlook, bare: boolean): Watch {
  const margin = bare ? WET_AGAIN : 0;
  const over = (y: Float64Array): number =>
    surfaceAt(outlook.lie(y), pump.compartment, pump.x, pump.y) - pump.height - margin;
  // No surface falls below the floor: where the strainer lies on it, water that is not there says that it is bare.
  const value = (y: Float64Array): number => over(y) + Math.min(0, y[pump.compartment]!);
  const kinds = bare ? { rising: "suction-wet" as const } : { falling: "suction-dry" as const };
  return watch(pump.name, value, kinds, {
    seen: { what: "strainer", at: pump.height + margin },
    isOn: () => pump.share > 0 && pump.bare === bare,
    effect: (rising) => void (pump.bare = !rising),
  });
}

function fullWatch(body: Body, name: string, index: number): Watch[] {
  const capacity = body.capacities[index]!;
  return Number.isFinite(capacity)
    ? [
        watch(
          name,
          (y) => y[index]! - capacity,
          { rising: "full" },
          { inPassing: true, seen: { what: "water", at: capacity } },
        ),
      ]
    : [];
}

function markWatch(body: Body, mark: Mark, outlook: Outlook): Watch {
  const index = body.names.indexOf(mark.compartment);
  const { x, y: side } = body.middles[index]!;
  const value = (y: Float64Array): number => surfaceAt(outlook.lie(y), index, x, side) - mark.level;
  const seen = { what: "surface", at: mark.level } as const;
  return watch(mark.compartment, value, { rising: "mark", falling: "mark" }, { inPassing: true, seen });
}

function floatWatches(body: Body, outlook: Outlook, lostAtDeckEdge: boolean): Watch[] {
  if (body.hull === undefined) return [];
  const seen = { what: "sea", at: body.hull.depth, falls: true } as const;
  const edge = watch(
    "deck edge",
    (y) => body.freeboard(outlook.lie(y)) ?? 1,
    { falling: "deck-edge" },
    lostAtDeckEdge ? { seen, endsRun: "the deck edge is under water" } : { seen },
  );
  const gone = watch(
    "boat",
    (y) => (outlook.isLost(y) === undefined ? 1 : -1),
    { falling: "lost" },
    { endsRun: "she has no position of rest left" },
  );
  return [edge, gone];
}
