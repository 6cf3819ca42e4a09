import type { FixedVessel, FloatingVessel } from "./vessel.ts";

/** A space pressed full stands in an imagined pipe of this share of its plan above it. */
export const PIPE_SHARE = 1 / 200;
/** Less than this share of a space is no water. */
const DRY_SHARE = 1e-12;

/**
 * One space whose level, and the sea's beside it, are straight lines in its water: sea = seaDry + seaRise·w,
 * surface = floor + w/area, and above the capacity in the pipe.
 */
export interface StraightSpace {
  /** Height of the sea above the keel with the space dry [m], and its rise with the water in the space [m⁻²]. */
  readonly seaDry: number;
  readonly seaRise: number;
  readonly floor: number;
  /** Plan area times permeability [m²]. */
  readonly area: number;
  readonly capacity: number;
  /** The lines are true for every volume of water between two. */
  holds(low: number, high: number): boolean;
}

/** Height of the water surface above the keel [m]. */
export function surfaceWith(space: StraightSpace, water: number): number {
  if (water <= space.capacity) return space.floor + Math.max(0, water) / space.area;
  return space.floor + space.capacity / space.area + (water - space.capacity) / (space.area * PIPE_SHARE);
}

/** Water that brings the surface to a height; NaN below the floor, where it never stands. */
export function waterAtSurface(space: StraightSpace, height: number): number {
  const water = (height - space.floor) * space.area;
  if (water < 0) return Number.NaN;
  return water <= space.capacity ? water : space.capacity + (water - space.capacity) * PIPE_SHARE;
}

/** Water that brings the sea to a height beside the boat; not finite where she does not sink. */
export function waterAtSea(space: StraightSpace, height: number): number {
  return space.seaRise === 0 ? Number.NaN : (height - space.seaDry) / space.seaRise;
}

/** A vessel held at a level, with one space; undefined for more. */
export function straightFixed(vessel: FixedVessel): StraightSpace | undefined {
  const [space, ...more] = vessel.compartments;
  if (space === undefined || more.length > 0) return undefined;
  const area = space.area * (space.permeability ?? 1);
  const floor = space.floor ?? 0;
  return {
    seaDry: vessel.outsideLevel,
    seaRise: 0,
    floor,
    area,
    capacity: space.top === undefined ? Number.POSITIVE_INFINITY : (space.top - floor) * area,
    holds: (low) => low >= 0,
  };
}

/** A box on even keel with one space in its middle: she sinks without trim or heel while she is stiff. */
export interface StraightBoat extends StraightSpace {
  /** Her volume displaced dry, with water in [m³]. */
  readonly dryVolume: number;
  /** Righting moment per unit of tan(heel), over water density and gravity [m⁴]. */
  stiffnessWith(water: number): number;
}

/** How near to her middle a space must lie, of her length. */
const MIDDLE = 1e-12;

/**
 * Finds whether a boat sinks evenly: box hull, level and upright dry, one space with its middle in her middle.
 *
 * Draught T = T₀ + w/LB. Stiffness LB³/12 − μ·l·b³/12 + LB·T²/2 − V₀·KG − w·z_w, z_w the height of the water's middle.
 *
 * @param vessel - a valid boat
 * @param depth - height to which her sides are followed [m]
 * @param kg - height of the centre of gravity dry [m]
 * @returns the boat's lines; undefined for any other boat
 * @source DERIVED: docs/methods/flooding.md, "Closed form"
 */
export function straightBoat(vessel: FloatingVessel, depth: number, kg: number): StraightBoat | undefined {
  const { hull } = vessel;
  const [space] = vessel.compartments;
  if (hull.form !== "box" || vessel.compartments.length !== 1 || space === undefined || (vessel.trim ?? 0) !== 0)
    return undefined;
  const [from, to] = [Math.max(space.from, 0), Math.min(space.to, hull.length)];
  const [port, starboard] = [
    Math.max(space.sideFrom ?? Number.NEGATIVE_INFINITY, -hull.beam / 2),
    Math.min(space.sideTo ?? Number.POSITIVE_INFINITY, hull.beam / 2),
  ];
  const floor = Math.max(space.floor ?? 0, 0);
  const tall = Math.min(space.top ?? depth, depth) - floor;
  if (Math.abs(from + to - hull.length) > MIDDLE * hull.length || Math.abs(port + starboard) > MIDDLE * hull.beam)
    return undefined;
  if (!(to > from && starboard > port && tall > 0)) return undefined;
  const size = { length: to - from, breadth: starboard - port, floor, tall, permeability: space.permeability };
  return linesOf({ length: hull.length, beam: hull.beam, depth, draught: vessel.draught ?? hull.draught, kg }, size);
}

interface EvenBox {
  readonly length: number;
  readonly beam: number;
  readonly depth: number;
  readonly draught: number;
  readonly kg: number;
}

interface EvenSpace {
  readonly length: number;
  readonly breadth: number;
  readonly floor: number;
  readonly tall: number;
  readonly permeability: number;
}

function linesOf(box: EvenBox, space: EvenSpace): StraightBoat {
  const plane = box.length * box.beam;
  const area = space.permeability * space.length * space.breadth;
  const capacity = area * space.tall;
  const stiffness = {
    plane,
    area,
    capacity,
    hull: (plane * box.beam ** 2) / 12,
    surface: (area * space.breadth ** 2) / 12,
  };
  const stiffnessWith = (water: number): number => stiffnessOf(box, space, stiffness, water);
  const lowest = (low: number, high: number): number => leastOf(box, space, stiffness, low, high);
  return {
    seaDry: box.draught,
    seaRise: 1 / plane,
    floor: space.floor,
    area,
    capacity,
    dryVolume: plane * box.draught,
    stiffnessWith,
    holds: (low, high) => low >= 0 && box.draught + high / plane < box.depth && lowest(low, high) > 0,
  };
}

interface Stiffness {
  readonly plane: number;
  readonly area: number;
  readonly capacity: number;
  /** Second moments of the waterplane and of the space's free surface, ends upright [m⁴]. */
  readonly hull: number;
  readonly surface: number;
}

function stiffnessOf(box: EvenBox, space: EvenSpace, of: Stiffness, water: number): number {
  const isSlack = water > of.capacity * DRY_SHARE && water < of.capacity;
  return withoutSurface(box, space, of, water) - (isSlack ? of.surface : 0);
}

function withoutSurface(box: EvenBox, space: EvenSpace, of: Stiffness, water: number): number {
  const draught = box.draught + water / of.plane;
  const middle = space.floor + Math.min(water, of.capacity) / (2 * of.area);
  return of.hull + (of.plane * draught ** 2) / 2 - of.plane * box.draught * box.kg - water * middle;
}

/** A bound from below: slack, the stiffness bends downward and is least at an end; full, it bends upward. */
function leastOf(box: EvenBox, space: EvenSpace, of: Stiffness, low: number, high: number): number {
  const slack = Math.min(high, of.capacity);
  const turn = of.plane * (space.floor + space.tall / 2 - box.draught);
  const full = Math.min(high, Math.max(turn, of.capacity));
  const at = (water: number): number => withoutSurface(box, space, of, water);
  return Math.min(
    at(low) - of.surface,
    at(slack) - of.surface,
    high > of.capacity ? Math.min(at(full), at(high)) : Infinity,
  );
}
