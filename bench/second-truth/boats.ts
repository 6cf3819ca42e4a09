// Boats drawn by chance: what she truly is, and what is known of her on scene.
import type { Chance } from "./chance.ts";
import { columnsOf, EMPTY, heightOf, under, type FilledTo, type Shape } from "./columns.ts";
import { lieOf, liesOf, type Lies, type Surfaces } from "./lies.ts";
import type { Boat } from "./lying.ts";
import type { Setting } from "./settings.ts";
import { taperingHull } from "./shapes.ts";

export type Kind = "open boat" | "motor boat" | "sailing yacht" | "fishing boat";

/** What the sheet is told of her. */
export interface Told {
  readonly boat: { readonly kind: Kind; readonly length: number; readonly beam?: number };
  readonly space: { readonly name: string; readonly sort: Sort; readonly part: Part };
}

type Sort = "engine-room" | "cabin" | "hold" | "open";
type Part = "aft" | "middle" | "forward" | "whole";

/** A boat, every lie of hers, and where things are in the flooded space. */
export interface Afloat {
  readonly told: Told;
  readonly lies: Lies;
  readonly shape: Shape;
  /** Ends of the space, forward of the middle of the boat [m]. */
  readonly from: number;
  readonly to: number;
  /** The stick stands here, on the inner floor. */
  readonly stick: { readonly x: number; readonly floor: number };
  /** The inner floor lies so far above the shell [m]. */
  readonly floor: number;
}

interface Proportions {
  /** Depth and draught of the hull over the length; KG over the depth. */
  readonly depth: readonly [number, number];
  readonly draught: readonly [number, number];
  readonly transom: readonly [number, number];
  readonly sections: { readonly m: readonly [number, number]; readonly n: readonly [number, number] };
}

/**
 * Proportions of small craft by kind.
 *
 * @source FROM MEMORY, of published boats: Larsson and Eliasson, Principles of Yacht Design; Fyson, Design of Small
 *   Fishing Vessels (FAO)
 */
const PROPORTIONS: Readonly<Record<Kind, Proportions>> = {
  "open boat": {
    depth: [0.11, 0.15],
    draught: [0.045, 0.065],
    transom: [0.5, 0.9],
    sections: { m: [1.8, 3], n: [1.6, 2.4] },
  },
  "motor boat": {
    depth: [0.14, 0.19],
    draught: [0.06, 0.085],
    transom: [0.75, 0.95],
    sections: { m: [2, 3.5], n: [1.3, 2] },
  },
  "sailing yacht": {
    depth: [0.13, 0.17],
    draught: [0.05, 0.07],
    transom: [0.3, 0.7],
    sections: { m: [1.8, 2.6], n: [1.4, 2.2] },
  },
  "fishing boat": {
    depth: [0.17, 0.22],
    draught: [0.09, 0.125],
    transom: [0.6, 0.9],
    sections: { m: [2, 4], n: [1.8, 3] },
  },
};

/** Usual places of the thirds, as shares of the length from the after end. */
const PARTS: Readonly<Record<Part, readonly [number, number]>> = {
  aft: [0.01, 1 / 3],
  middle: [1 / 3, 2 / 3],
  forward: [2 / 3, 0.98],
  whole: [0.02, 0.97],
};

/** What stands in a space leaves so much free: low down, and higher up; to a height as a share of the depth. */
const FREE: Readonly<Record<Sort, readonly [readonly [number, number], readonly [number, number]]>> = {
  "engine-room": [
    [0.6, 0.85],
    [0.82, 0.95],
  ],
  cabin: [
    [0.75, 0.95],
    [0.9, 0.97],
  ],
  hold: [
    [0.6, 0.85],
    [0.7, 0.9],
  ],
  open: [
    [0.85, 0.97],
    [0.95, 0.99],
  ],
};

/**
 * Draws a boat; one that does not float dry with some freeboard is drawn anew.
 *
 * @param chance - this casualty's
 * @param heel - held at, to starboard [rad]
 * @param canBeLost - one that does not stay afloat with the space flooded, and no other
 */
export function drawBoat(chance: Chance, heel: number, canBeLost: boolean, setting: Setting): Afloat {
  for (;;) {
    const found = tryBoat(chance, heel, setting);
    if (found === undefined || found.lies.rows[0]!.freeboard <= 0.15) continue;
    if (!canBeLost || isLostFlooded(found)) return found;
  }
}

/** True where the deck edge goes under before it is as high inside as outside. */
function isLostFlooded({ lies, stick }: Afloat): boolean {
  const { sea, inside } = lieOf(lies, lies.lostWith);
  return Number.isFinite(lies.lostWith) && heightOf(inside, stick.x, 0) < heightOf(sea, stick.x, 0) - 0.05;
}

function tryBoat(chance: Chance, heel: number, setting: Setting): Afloat | undefined {
  const told = drawTold(chance, setting);
  const size = drawSize(chance, told.boat.kind, told.boat.length, setting);
  const [from, to] = drawEnds(chance, told.space.part, told.boat.length, setting.believedWrong);
  const floor = chance.between(0.004, 0.012) * told.boat.length;
  const boat = floating(chance, { ...size, told, from, to, floor, heel });
  const full = under(boat.space.columns, { middle: 99, slope: 0, across: 0 }, boat.space.filled).volume;
  const lies = liesOf(boat, size.draught, 0.98 * full);
  const isBeamTold = chance.happens(setting.beamTold);
  const beam = Math.round(10 * size.beam * (1 + 0.03 * chance.normal())) / 10;
  return (
    lies && {
      told: isBeamTold ? { ...told, boat: { ...told.boat, beam } } : told,
      lies,
      shape: size.shape,
      from,
      to,
      stick: stickIn(size.shape, from, to, floor),
      floor,
    }
  );
}

function drawTold(chance: Chance, setting: Setting): Told {
  const kind = chance.pick<Kind>([
    "motor boat",
    "motor boat",
    "sailing yacht",
    "fishing boat",
    "fishing boat",
    "open boat",
  ]);
  const length = Math.round(10 * chance.between(...setting.length)) / 10;
  const part =
    kind === "open boat" ? "whole" : chance.pick<Part>(["aft", "aft", "aft", "middle", "middle", "forward", "whole"]);
  return { boat: { kind, length }, space: { name: "space", sort: sortOf(chance, kind, part), part } };
}

function sortOf(chance: Chance, kind: Kind, part: Part): Sort {
  if (kind === "open boat") return "open";
  if (part === "aft") return chance.happens(0.75) ? "engine-room" : "cabin";
  return kind === "fishing boat" && part !== "forward" ? "hold" : "cabin";
}

interface Size {
  readonly shape: Shape;
  readonly beam: number;
  readonly depth: number;
  readonly draught: number;
}

/** Beam about the two-thirds power of the length in feet and a foot more: Gerr, The Nature of Boats, FROM MEMORY. */
function drawSize(chance: Chance, kind: Kind, length: number, setting: Setting): Size {
  const { depth: deep, draught, transom, sections } = PROPORTIONS[kind];
  const feet = length / 0.3048;
  const beam = (feet ** (2 / 3) + 1) * 0.3048 * Math.exp(setting.beamSpread * chance.normal());
  const [shallow, high] = setting.deeper;
  const depth = chance.between(deep[0] * shallow, deep[1] * high) * length;
  const shape = taperingHull({
    length,
    beam,
    depth,
    widest: chance.between(-0.1, 0.06),
    transom: chance.between(...transom),
    bluntness: chance.between(1.8, 3),
    sternRise: chance.between(0, 0.25),
    stemRise: chance.between(0.5, 0.95),
    sheer: chance.between(0, 0.25),
    m: setting.fullness * chance.between(...sections.m),
    n: setting.fullness * chance.between(...sections.n),
  });
  return { shape, beam, depth, draught: chance.between(...draught) * length };
}

/** The bulkheads stand elsewhere than believed. */
function drawEnds(chance: Chance, part: Part, length: number, wrong: number): readonly [number, number] {
  const [aft, fore] = PARTS[part];
  const factor = Math.exp(wrong * chance.normal());
  const long = Math.min(0.95, (fore - aft) * factor);
  const [from, to] =
    part === "aft"
      ? [aft, aft + long]
      : part === "forward"
        ? [fore - long, fore]
        : [Math.max(0.02, (aft + fore - long) / 2), Math.min(0.97, (aft + fore + long) / 2)];
  return [(from - 0.5) * length, (to - 0.5) * length];
}

interface Making extends Size {
  readonly told: Told;
  readonly from: number;
  readonly to: number;
  readonly floor: number;
  readonly heel: number;
}

function floating(chance: Chance, { shape, depth, draught, told, from, to, floor, heel }: Making): Boat {
  const half = shape.length / 2;
  const hull = columnsOf(shape, { from: -half, to: half, stations: 32, across: 20, floor: 0 });
  const afloat = under(hull, { middle: draught, slope: 0, across: 0 }, EMPTY);
  const columns = columnsOf(shape, { from, to, stations: 14, across: 18, floor });
  const trimmed = 0.004 * chance.normal() * shape.length;
  return {
    shape,
    hull,
    space: { columns, filled: drawFilled(chance, told.space.sort, lowest(columns.bottom), depth) },
    weight: afloat.volume,
    gravity: { x: afloat.alongMoment / afloat.volume + trimmed, z: chance.between(0.7, 0.95) * depth },
    across: Math.tan(heel),
  };
}

function lowest(heights: Float64Array): number {
  return heights.reduce((low, one) => Math.min(low, one), Number.POSITIVE_INFINITY);
}

/** The share that water can fill changes evenly with height up to `over`, and is the same above. */
function drawFilled(chance: Chance, sort: Sort, floor: number, depth: number): FilledTo {
  const [low, high] = [chance.between(...FREE[sort][0]), chance.between(...FREE[sort][1])];
  const over = chance.between(0.25, 0.6) * depth;
  return (height) => {
    const up = Math.max(0, height - floor);
    const within = Math.min(up, over);
    return low * within + ((high - low) * within ** 2) / (2 * over) + high * (up - within);
  };
}

/** Amidships, in the middle three fifths of the space, where the floor is lowest. */
function stickIn(shape: Shape, from: number, to: number, floor: number): Afloat["stick"] {
  const places = Array.from({ length: 13 }, (_, n) => from + (to - from) * (0.2 + (0.6 * n) / 12));
  const x = places.reduce((best, one) => (shape.keel(one) < shape.keel(best) - 1e-9 ? one : best), places[6]!);
  return { x, floor: shape.keel(x) + floor };
}

/** Water on the stick [m]; 0 where it stands dry. */
export function levelOn({ stick }: Afloat, { inside }: Surfaces): number {
  return Math.max(0, heightOf(inside, stick.x, 0) - stick.floor);
}
