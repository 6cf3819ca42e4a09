import type { Compartment } from "./compartment.ts";
import { makeBalance, type Balance, type Resting } from "./equilibrium.ts";
import { halfBreadthOf } from "./half-breadth.ts";
import { makeHull, PIECE, RAISED, raiseSides, type Hull, type HullSize } from "./hull-form.ts";
import type { Plane } from "./hull-integrals.ts";
import { measureHydrostatics } from "./hydrostatics.ts";
import {
  PIPE_SHARE,
  straightBoat,
  straightFixed,
  surfaceWith,
  type StraightBoat,
  type StraightSpace,
} from "./straight-space.ts";
import type { FixedVessel, FloatingVessel, Prism, Vessel } from "./vessel.ts";

type Afloat = Extract<Resting, { kind: "afloat" }>;

/** A vessel as the simulation sees it: volumes of water in, where everything lies out. */
export interface Body {
  readonly names: readonly string[];
  /** Volume of water in each compartment at the start, and at most [m³]. */
  readonly water: readonly number[];
  readonly capacities: readonly number[];
  /** Middle of each compartment, and the height of its floor there [m]. */
  readonly middles: readonly { readonly x: number; readonly y: number; readonly floor: number; readonly top: number }[];
  settle(water: ArrayLike<number>): Resting;
  /** As if held upright: where the water stands in a boat that has no lie of her own. */
  holdUpright(water: ArrayLike<number>): Afloat;
  /** Least height of the deck edge above the water [m]; undefined where there is no deck edge. */
  freeboard(resting: Afloat): number | undefined;
  /** Left out where she is held and has none. */
  readonly hull?: Pick<Hull, "length" | "depth">;
  /** One space whose levels are straight lines in its water. */
  readonly straight?: StraightSpace | undefined;
}

/**
 * Makes the body of a vessel already found valid.
 *
 * @param vessel - afloat or held at a level, SI units
 * @returns the body; one straight space is settled by its lines
 * @source DERIVED: docs/methods/flooding.md
 */
export function makeBody(vessel: Vessel): Body {
  if (vessel.kind === "fixed") return fixedBody(vessel, straightFixed(vessel));
  const boat = vessel.hull.form === "box" ? evenBoat(vessel, vessel.hull) : undefined;
  return boat === undefined ? floatingBody(vessel) : evenBody(vessel, boat);
}

/**
 * The same by the balance of forces alone, as every boat is settled that does not sink evenly.
 *
 * @param vessel - afloat or held at a level, SI units
 * @returns the body
 * @source DERIVED: docs/methods/flooding.md, "Equilibrium"
 */
export function makeGeneralBody(vessel: Vessel): Body {
  return vessel.kind === "fixed" ? fixedBody(vessel) : floatingBody(vessel);
}

function fixedBody(vessel: FixedVessel, straight?: StraightSpace): Body {
  const spaces = vessel.compartments;
  const plane = { height: vessel.outsideLevel, slopeX: 0, slopeY: 0 };
  const areas = spaces.map((space) => space.area * (space.permeability ?? 1));
  const capacities = spaces.map((space, i) => (tallness(space) ?? Number.POSITIVE_INFINITY) * areas[i]!);
  const levelsWith = (water: ArrayLike<number>): Afloat => ({
    kind: "afloat",
    plane,
    levels: spaces.map((space, i) => prismLevel(space, areas[i]!, capacities[i]!, water[i]!)),
    stiffness: 0,
    volume: 0,
  });
  return {
    names: spaces.map((space) => space.name),
    water: spaces.map((space, i) => space.water ?? Math.max(0, (space.level ?? 0) - (space.floor ?? 0)) * areas[i]!),
    capacities,
    middles: spaces.map((space) => ({
      x: 0,
      y: 0,
      floor: space.floor ?? 0,
      top: space.top ?? Number.POSITIVE_INFINITY,
    })),
    settle: levelsWith,
    holdUpright: levelsWith,
    freeboard: () => undefined,
    straight,
  };
}

function tallness(space: Prism): number | undefined {
  return space.top === undefined ? undefined : space.top - (space.floor ?? 0);
}

function prismLevel(space: Prism, area: number, capacity: number, water: number): number {
  const floor = space.floor ?? 0;
  if (water <= capacity) return floor + Math.max(0, water) / area;
  return space.top! + (water - capacity) / (area * PIPE_SHARE);
}

/** KB and BM of a box are T/2 and B²/12T. */
function evenBoat(vessel: FloatingVessel, box: HullSize): StraightBoat | undefined {
  const draught = vessel.draught ?? box.draught;
  const kg = vessel.kg ?? gravityHeightUnder(draught / 2 + box.beam ** 2 / (12 * draught), box.depth);
  return straightBoat(vessel, vessel.lostWhen === "foundered" ? box.depth : RAISED * box.depth, kg);
}

function gravityHeightOf(vessel: FloatingVessel, hull: Hull): number {
  return vessel.kg ?? likelyGravityHeight(hull, vessel.draught ?? hull.draught);
}

/** Where the deck edge counts as loss her sides are carried on above it. */
function sidesOf(vessel: FloatingVessel, hull: Hull): Hull {
  return vessel.lostWhen === "foundered" ? hull : raiseSides(hull);
}

function balanceOf(vessel: FloatingVessel, hull: Hull): Balance {
  return makeBalance({
    hull: sidesOf(vessel, hull),
    dry: { draught: vessel.draught ?? hull.draught, trim: vessel.trim ?? 0 },
    kg: gravityHeightOf(vessel, hull),
    compartments: vessel.compartments,
  });
}

function floatingBody(vessel: FloatingVessel): Body {
  const hull = makeHull(vessel.hull);
  const balance = balanceOf(vessel, hull);
  return {
    names: vessel.compartments.map((space) => space.name),
    water: vessel.compartments.map((space, i) => space.water ?? balance.waterUnder(i, space.level ?? 0)),
    capacities: balance.tanks.map((tank) => tank.capacity),
    middles: middlesOf(vessel, hull.depth),
    settle: (water) => balance.settle(water),
    holdUpright: (water) => uprightOf(balance, hull.depth, water),
    freeboard: ({ plane }) => leastFreeboard(hull, plane),
    hull,
  };
}

/** Draught and trim free while she is held; where even that sinks her, on even keel with her deck awash. */
function uprightOf(balance: Balance, depth: number, water: ArrayLike<number>): Afloat {
  const held = balance.holdAt(0, water);
  const plane = held?.plane ?? { height: depth, slopeX: 0, slopeY: 0 };
  balance.tanks.forEach((tank, i) => tank.fill(Math.max(0, water[i]!), plane.slopeX, plane.slopeY));
  return {
    kind: "afloat",
    plane,
    levels: balance.tanks.map((tank) => tank.height),
    stiffness: held?.stiffness ?? 0,
    volume: held?.volume ?? 0,
  };
}

function middlesOf(vessel: FloatingVessel, depth: number): Body["middles"] {
  return vessel.compartments.map((space) => ({
    x: (space.from + space.to) / 2,
    y: acrossOf(space),
    floor: space.floor ?? 0,
    top: space.top ?? depth,
  }));
}

/** A boat that sinks evenly: settled by her lines while they hold, else by the balance of forces from there. */
function evenBody(vessel: FloatingVessel, boat: StraightBoat): Body {
  const [space] = vessel.compartments;
  const { length, depth } = vessel.hull as HullSize;
  let balance: Balance | undefined;
  let hull: Hull | undefined;
  let even = 0;
  const balanceNow = (): Balance => (balance ??= balanceOf(vessel, makeHull(vessel.hull)));
  function settle(water: ArrayLike<number>): Resting {
    const inside = Math.max(0, water[0]!);
    if (boat.holds(inside, inside)) {
      even = inside;
      return evenResting(boat, inside);
    }
    if (balance === undefined) balanceNow().settle([even]);
    return balanceNow().settle(water);
  }
  const tall = boat.capacity / boat.area;
  return {
    names: [space!.name],
    water: [space!.water ?? boat.area * Math.min(tall, Math.max(0, (space!.level ?? 0) - boat.floor))],
    capacities: [boat.capacity],
    middles: middlesOf(vessel, depth),
    settle,
    holdUpright: (water) => uprightOf(balanceNow(), depth, water),
    freeboard: ({ plane }) =>
      isLevel(plane) ? depth - plane.height : leastFreeboard((hull ??= makeHull(vessel.hull)), plane),
    hull: { length, depth },
    straight: boat,
  };
}

function evenResting(boat: StraightBoat, water: number): Resting {
  return {
    kind: "afloat",
    plane: { height: boat.seaDry + boat.seaRise * water, slopeX: 0, slopeY: 0 },
    levels: [surfaceWith(boat, water)],
    stiffness: boat.stiffnessWith(water),
    volume: boat.dryVolume + water,
  };
}

function acrossOf({ sideFrom, sideTo }: Compartment): number {
  return sideFrom === undefined || sideTo === undefined ? 0 : (sideFrom + sideTo) / 2;
}

/**
 * Centre of gravity taken where nobody knows it: 0.8 of the depth, but never so high that less than 0.35 m of GM is
 * left. A measured roll period is better, see `gmFromRollPeriod`.
 *
 * @param hull - the hull
 * @param draught - as she floats dry [m]
 * @returns height above the keel [m]
 * @source this program's judgement
 */
export function likelyGravityHeight(hull: Hull, draught: number): number {
  const { kb, bm } = measureHydrostatics(hull, { draught });
  return gravityHeightUnder(kb + bm, hull.depth);
}

function gravityHeightUnder(metacentre: number, depth: number): number {
  return Math.min(0.8 * depth, Math.max(0.3 * depth, metacentre - 0.35));
}

const isLevel = ({ slopeX, slopeY }: Plane): boolean => slopeX === 0 && slopeY === 0;

function leastFreeboard(hull: Hull, plane: Plane): number {
  const { height, slopeX, slopeY } = plane;
  if (isLevel(plane)) return hull.depth - height;
  const section = new Float64Array(5 * 64);
  let highest = Number.NEGATIVE_INFINITY;
  for (let k = 0; k <= DECK_STEPS; k += 1) {
    const x = (hull.length * k) / DECK_STEPS;
    const half = slopeY === 0 ? 0 : deckHalfBreadth(hull, x, section);
    highest = Math.max(highest, height + slopeX * x + Math.abs(slopeY) * half);
  }
  return (hull.depth - highest) / Math.hypot(1, slopeX, slopeY);
}

const DECK_STEPS = 24;

function deckHalfBreadth(hull: Hull, x: number, section: Float64Array): number {
  const count = hull.sectionAt(x, section);
  if (count === 0) return 0;
  const highest = section[PIECE * (count - 1) + 1]!;
  return halfBreadthOf(section, count - 1, highest);
}
