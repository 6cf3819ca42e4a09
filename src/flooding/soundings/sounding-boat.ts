import { firstOf, lastOf } from "#base";
import { monotoneCubic, straightSegments, type Curve } from "#numerics";
import { likelyGravityHeight } from "../hull/body.ts";
import { makeBalance } from "../hull/equilibrium.ts";
import { makeHull, raiseSides, type Hull } from "../hull/hull-form.ts";
import { riseWithWater } from "../hull/hydrostatics.ts";
import type { SoundedSpace } from "./sounding-space.ts";
import type { FloatingVessel } from "../hull/vessel.ts";

/** Levels at which areas are kept, and volumes at which the outside level is. */
const NODES = 65;
/** Fillings the boat is settled with; closer together near the floor. */
const FILLINGS = 20;

/**
 * A compartment of a boat, upright, trim free: areas at its middle level by level as she settles, and the outside
 * level there.
 *
 * @param vessel - the boat
 * @param name - of the compartment
 * @param edge - `dip`: by how much her list brings one deck edge down [m]; `sheer`: by how much it stands higher at her
 *   bow than amidships [m]; none of either if left out
 * @returns the space, with levels counted from the compartment's floor
 * @source DERIVED: docs/methods/soundings.md, "The space"
 */
export function spaceOf(vessel: FloatingVessel, name: string, edge: DeckEdge = {}): SoundedSpace {
  const afloat = makeAfloat(vessel, name, edge.sheer ?? 0);
  const filled = settleFilled(afloat);
  const { hull, middle, height, attitude } = afloat;
  const waterAt = monotoneCubic(filled.map(({ level, water }) => ({ x: level, y: water })));
  const outsideAt = monotoneCubic(filled.map(({ water, outside }) => ({ x: water, y: outside })));
  const most = lastOf(filled).water;
  const water = most / (NODES - 1);
  return {
    ...areasBelow(waterAt, height),
    outside: firstOf(filled).outside,
    outsideDoubt: 0.03,
    sinkage: riseWithWater(hull, attitude, { water: middle, seen: middle }),
    rises: {
      water,
      values: Float64Array.from({ length: NODES }, (_, k) => outsideAt.value(k * water) - firstOf(filled).outside),
    },
    lossLevel: lossLevelOf(filled, height, edge.dip ?? 0),
    uprightLoss: lossLevelOf(filled, height, 0),
  };
}

/** How her deck edge runs [m]. */
export interface DeckEdge {
  readonly dip?: number;
  readonly sheer?: number;
}

interface Afloat {
  readonly hull: Hull;
  readonly attitude: { readonly draught: number; readonly trim: number };
  readonly middle: { readonly x: number };
  readonly floor: number;
  /** From floor to ceiling [m]. */
  readonly height: number;
  /** Water surfaces at the middle above the floor, and the least freeboard, with so much in her; none if she founders. */
  settle(water: number): Filled | undefined;
  /** Water under a level surface, above the floor, on even keel [m³]. */
  waterUnder(level: number): number;
}

interface Filled {
  readonly water: number;
  readonly level: number;
  readonly outside: number;
  readonly freeboard: number;
}

function makeAfloat(vessel: FloatingVessel, name: string, sheer: number): Afloat {
  const hull = makeHull(vessel.hull);
  const compartment = vessel.compartments.find((one) => one.name === name)!;
  const attitude = { draught: vessel.draught ?? hull.draught, trim: vessel.trim ?? 0 };
  const kg = vessel.kg ?? likelyGravityHeight(hull, attitude.draught);
  const balance = makeBalance({ hull: raiseSides(hull), dry: attitude, kg, compartments: [compartment] });
  const floor = compartment.floor ?? 0;
  const x = (compartment.from + compartment.to) / 2;
  return {
    hull,
    attitude,
    middle: { x },
    floor,
    height: (compartment.top ?? hull.depth) - floor,
    waterUnder: (level) => balance.waterUnder(0, floor + level),
    settle(water) {
      const plane = balance.holdAt(0, [water])?.plane;
      if (plane === undefined) return undefined;
      const over = plane.slopeX * x - floor;
      const highest = Math.max(plane.height, plane.height + plane.slopeX * hull.length - sheer);
      const level = water > 0 ? firstOf(balance.tanks).height + over : 0;
      return { water, level, outside: plane.height + over, freeboard: hull.depth - highest };
    },
  };
}

/** She settled with more and more water, until the space is full or she founders; levels rise strictly. */
function settleFilled(afloat: Afloat): readonly Filled[] {
  const most = afloat.waterUnder(afloat.height);
  const all = [afloat.settle(0)!];
  for (let k = 1; k <= FILLINGS; k += 1) {
    const filled = afloat.settle(most * (k / FILLINGS) ** 2);
    if (filled === undefined || filled.level > 1.02 * afloat.height) break;
    if (filled.level > lastOf(all).level + 1e-4) all.push(filled);
  }
  return all;
}

function areasBelow(waterAt: Curve, height: number): Pick<SoundedSpace, "areas" | "step" | "volumes"> {
  const step = height / (NODES - 1);
  const areas = Float64Array.from({ length: NODES }, (_, k) => {
    const [low, high] = [Math.max(0, k - 0.5), Math.min(NODES - 1, k + 0.5)];
    return Math.max(1e-3, (waterAt.value(high * step) - waterAt.value(low * step)) / ((high - low) * step));
  });
  return { areas, step, volumes: Float64Array.from({ length: NODES }, (_, k) => Math.max(0, waterAt.value(k * step))) };
}

/** Level at which the deck edge goes under at either end; the ceiling where it never does. */
function lossLevelOf(filled: readonly Filled[], height: number, dip: number): number {
  const under = filled.findIndex(({ freeboard }) => freeboard <= dip);
  if (under < 0) return height;
  if (under === 0) return 0;
  const around = filled.slice(under - 1, under + 1).map(({ freeboard, level }) => ({ x: dip - freeboard, y: level }));
  return straightSegments(around).value(0);
}
