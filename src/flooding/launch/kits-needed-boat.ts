import { nth, numberAt } from "#base";
import { STANDARD_GRAVITY } from "#water";
import { BOAT_SHAPES, likelyBeam, type BoatKind } from "../hull/boat-kinds.ts";
import type { ToldBoat, ToldWater } from "./kits-needed-call.ts";
import { LIKELY_COEFFICIENT } from "../openings/opening.ts";
import { deliveryPlace, deliveryShare, EVEN, type DeliveryPrior } from "../soundings/sounding-model.ts";
import { likelyPrior } from "../soundings/sounding.ts";

/** A boat that fits what was told, as one draw has her. Heights above the keel [m]. */
export interface DrawnBoat {
  readonly draught: number;
  /** Plan area of the flooded space at the dry waterline [m²], and the power with which it grows from the keel up. */
  readonly area: number;
  readonly bend: number;
  /** Of the whole boat [m²]: water in her sinks her by its volume over this. */
  readonly waterplane: number;
  /** Water she takes before her deck edge is under [m³]. */
  readonly reserve: number;
  /** Hole above the keel. */
  readonly hole: number;
  /** Water in her when last told [m³]. */
  readonly water: number;
}

/** A boat as she was told of, and as she is until the first kit pumps: the same, or with water run all through her. */
export interface DrawnTwice {
  readonly told: DrawnBoat;
  readonly later: DrawnBoat;
}

/** Draws of a boat: hole, hole's height, coefficient, space's length, its area, water, floor, reserve, size, bulkheads. */
export const DRAWS = 10;
export const [HOLE, HOLE_HEIGHT, COEFFICIENT, SPACE, AREA, WATER, FLOOR, RESERVE, SIZE, TIGHT] = [
  0, 1, 2, 3, 4, 5, 6, 7, 8, 9,
] as const;

const KINDS = Object.keys(BOAT_SHAPES) as readonly BoatKind[];
/** Length of a boat nobody has told of: median [m] and log spread; 5 to 18 m nine times in ten. */
const ANY_LENGTH = { median: 9.5, logSpread: 0.38 };
/** A hole that somebody has told of: seldom larger than told, often half blocked. */
const TOLD_HOLE: DeliveryPrior = { median: 1, logSpread: 0.3, lowSpread: 1.2 };

/**
 * A boat that fits what was told, from one draw of standard normals.
 *
 * @param told - what was told
 * @param water - the same of the water
 * @param z - DRAWS standard normals; of SIZE and TIGHT the chance itself, 0 to 1
 * @returns the boat, the hole's size apart
 * @range boats of 3 to 40 m
 * @source proportions by kind: `BOAT_SHAPES`; spreads: this program's judgement, docs/methods/kits-needed.md
 */
export function drawBoat(told: ToldBoat, water: ToldWater, z: Float64Array): DrawnTwice {
  const { kind, length } = sizeOf(told, numberAt(z, SIZE));
  const share = spaceShare(told, kind, length, numberAt(z, SPACE));
  const hull = drawHull(told, kind, length, z);
  const space = { ...hull, ...spaceIn(hull, share, z) };
  const floor = 0.15 * hull.draught * Math.exp(0.6 * numberAt(z, FLOOR));
  const level = Math.min(levelOf(water.water, floor, hull.draught, numberAt(z, WATER)), 0.97 * hull.depth);
  const inside = Math.min(waterAt(space, level), 0.97 * space.reserve);
  const hole = holeHeight(told.holeDepth, hull.draught + inside / hull.waterplane, numberAt(z, HOLE_HEIGHT));
  const boat = { ...space, water: inside, hole };
  const isTight = numberAt(z, TIGHT) < BULKHEAD_HOLDS;
  return { told: boat, later: isTight ? boat : { ...boat, ...spaceIn(hull, Math.max(share, 1), z) } };
}

/** Chance that the bulkheads of a small boat keep the water in one space: doors, limber holes and cable runs leak [1]. */
const BULKHEAD_HOLDS = 0.5;

interface Hull {
  readonly draught: number;
  readonly depth: number;
  readonly waterplane: number;
  /** Plan area of water all through her at the dry waterline [m²]. */
  readonly whole: number;
  readonly bend: number;
}

function drawHull(told: ToldBoat, kind: BoatKind, length: number, z: Float64Array): Hull {
  const shape = BOAT_SHAPES[kind];
  const grown = length * Math.exp(0.15 * numberAt(z, RESERVE));
  const draught = Math.max(shape.draught * grown, 1.05 * (told.holeDepth ?? 0));
  const plan = length * likelyBeam(length);
  return {
    draught,
    depth: draught + (shape.depth - shape.draught) * grown,
    waterplane: 0.75 * plan * Math.exp(0.1 * numberAt(z, AREA)),
    whole: 0.72 * plan * Math.exp(0.22 * numberAt(z, AREA)),
    bend: 0.4 * Math.exp(0.5 * numberAt(z, FLOOR)),
  };
}

/** A space that takes this share of her length; the nearer an end, the sooner trim puts a deck edge under. */
function spaceIn(hull: Hull, share: number, z: Float64Array): Pick<DrawnBoat, "area" | "reserve"> {
  const sinks = (0.35 + 0.5 * Math.min(1, share)) * Math.exp(0.25 * numberAt(z, RESERVE));
  return { area: hull.whole * share, reserve: hull.waterplane * (hull.depth - hull.draught) * sinks };
}

/** Kind and length as told, else any of the four kinds and a length of small craft. */
function sizeOf(told: ToldBoat, chance: number): { readonly kind: BoatKind; readonly length: number } {
  const slot = Math.min(KINDS.length - 1, Math.floor(chance * KINDS.length));
  const rest = chance * KINDS.length - slot;
  const z = Math.log(Math.max(rest, 1e-6) / Math.max(1 - rest, 1e-6)) / EVEN;
  const any = ANY_LENGTH.median * Math.exp(ANY_LENGTH.logSpread * z);
  return { kind: told.kind ?? nth(KINDS, slot), length: told.length ?? Math.min(24, Math.max(4, any)) };
}

/** Share of her length that the flooded space takes: a third or the half of most boats, nearly all of an open one. */
function spaceShare({ spaceLength }: ToldBoat, kind: BoatKind, length: number, z: number): number {
  if (spaceLength !== undefined) return Math.min(1, spaceLength / length) * Math.exp(0.1 * z);
  const least = kind === "open boat" ? 0.7 : 0.2;
  return least + (1 - least) / (1 + Math.exp(-EVEN * z + 0.9));
}

/** Level above the keel: what was told and the floor it stands on; else from a little to four fifths of her draught. */
function levelOf(told: number | undefined, floor: number, draught: number, z: number): number {
  if (told === undefined) return (0.9 * draught) / (1 + 2 * Math.exp(-EVEN * z));
  return told === 0 ? floor / 2 : floor + told * Math.exp(0.1 * z);
}

/** As deep below the sea as told, else evenly likely between keel and sea. */
function holeHeight(depth: number | undefined, sea: number, z: number): number {
  return depth === undefined ? sea / (1 + Math.exp(-EVEN * z)) : sea - depth * Math.exp(0.15 * z);
}

type Space = Pick<DrawnBoat, "area" | "bend" | "draught">;

/** Water in the space under a level [m³]: areas as (h/T)^m up to the waterline, upright above it. */
function waterAt({ area, bend, draught }: Space, level: number): number {
  const below = Math.min(level, draught);
  return (area * draught * (below / draught) ** (bend + 1)) / (bend + 1) + area * (level - below);
}

/** Level that so much water stands at [m]. */
export function levelAt({ area, bend, draught }: Space, water: number): number {
  const below = (area * draught) / (bend + 1);
  if (water > below) return draught + (water - below) / area;
  return draught * (water / below) ** (1 / (bend + 1));
}

/** Area of the water's surface at a level [m²]. */
export function surfaceAt({ area, bend, draught }: Space, level: number): number {
  return area * Math.min(1, Math.max(0.1, level / draught)) ** bend;
}

/** Head over the hole with so much water in her [m]; with `level` 0, as far as the hole lets it be. */
export function headAt(boat: DrawnBoat, water: number, level: number): number {
  const sea = boat.draught + water / boat.waterplane;
  return Math.max(0, sea - Math.max(level, boat.hole));
}

/** Area of the hole that a standard normal stands for [m²], and back. */
export interface HoleScale {
  readonly at: (z: number) => number;
  readonly place: (area: number) => number;
  /** Cd·A is never more than this [m²]. */
  readonly most: number;
}

/**
 * How large the hole may be: as told, with its doubt, else as it is thought of on scene before any sounding.
 *
 * @param diameter - as told [m]
 * @returns area by standard normal; no more passes than the hole told at a coefficient of 1
 * @source on scene: docs/methods/soundings.md, "Before any sounding"; told: this program's judgement
 */
export function holeScale(diameter: number | undefined): HoleScale {
  if (diameter !== undefined) {
    const told = (Math.PI / 4) * diameter ** 2;
    const place = (area: number) => deliveryPlace(TOLD_HOLE, area / told);
    return { at: (z) => told * deliveryShare(TOLD_HOLE, z), place, most: told };
  }
  const { median, logSpread } = likelyPrior(0).holeArea;
  const place = (area: number) => Math.log(area / median) / logSpread;
  return { at: (z) => median * Math.exp(logSpread * z), place, most: Number.POSITIVE_INFINITY };
}

const ROOT = Math.sqrt(2 * STANDARD_GRAVITY);

/** Discharge coefficient of a draw [1]. */
export function coefficientOf(z: number): number {
  return Math.min(1, LIKELY_COEFFICIENT * Math.exp(0.08 * z));
}

/** Cd·A·√(2g) [m^2.5/s]. */
export function strengthOf(area: number, coefficient: number, most: number): number {
  return ROOT * Math.min(most, coefficient * area);
}

/** How she lies later. */
export interface Later {
  readonly water: number;
  readonly isLost: boolean;
}

const STEPS = 60;

/**
 * How she lies after so long, nobody pumping: water followed by midpoint steps, none larger than a sixteenth of what she
 * can take.
 *
 * @param boat - as drawn
 * @param strength - Cd·A·√(2g) [m^2.5/s]
 * @param time - [s]
 * @returns water in her [m³]; lost from where her deck edge is under
 * @source DERIVED: dV/dt = Cd·A·√(2g·H)
 */
export function lieAfter(boat: DrawnBoat, strength: number, time: number): Later {
  const flowAt = (water: number) => strength * Math.sqrt(headAt(boat, water, levelAt(boat, water)));
  const most = boat.reserve / 16;
  let [water, rest] = [boat.water, time];
  for (let k = 0; k < STEPS && rest > 0 && water < boat.reserve; k += 1) {
    const first = flowAt(water);
    const step = Math.min(rest, most / Math.max(first, 1e-12));
    water += step * flowAt(water + (step * first) / 2);
    rest -= step;
  }
  return { water: Math.min(water, boat.reserve), isLost: water >= boat.reserve };
}
