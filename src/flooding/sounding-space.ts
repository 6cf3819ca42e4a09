import { makeBalance } from "./equilibrium.ts";
import { makeHull } from "./hull-form.ts";
import { riseWithWater } from "./hydrostatics.ts";
import { likelyGravityHeight } from "./body.ts";
import type { FloatingVessel } from "./vessel.ts";

/** The space being sounded, as levels above its own floor see it. */
export interface SoundedSpace {
  /** Water area against level: even steps of `step` from the floor up, held beyond the last [m²]. */
  readonly areas: Float64Array;
  readonly step: number;
  /** Water under each of those levels [m³]. */
  readonly volumes: Float64Array;
  /** Outside level above the floor with the space empty [m], and how sure that is (standard deviation) [m]. */
  readonly outside: number;
  readonly outsideDoubt: number;
  /** Rise of the outside level against the space for each cubic metre let in [m⁻²]; 0 for a vessel held in place. */
  readonly sinkage: number;
  /** Level at which she is lost [m], where that is known. */
  readonly lossLevel?: number;
}

const NODES = 65;

/**
 * A space with upright sides.
 *
 * @param given - `area` of floodable plan [m²]; `outside` level above the floor [m]
 * @returns the space
 * @source DERIVED: docs/methods/soundings.md, "The space"
 */
export function uprightSpace(given: {
  readonly area: number;
  readonly outside: number;
  readonly outsideDoubt: number;
  readonly sinkage?: number;
  readonly lossLevel?: number;
}): SoundedSpace {
  return {
    areas: new Float64Array(2).fill(given.area),
    step: 1,
    volumes: Float64Array.of(0, given.area),
    outside: given.outside,
    outsideDoubt: given.outsideDoubt,
    sinkage: given.sinkage ?? 0,
    ...(given.lossLevel === undefined ? {} : { lossLevel: given.lossLevel }),
  };
}

/**
 * A compartment of a boat, at small angles: its areas level by level, the boat's sinkage (with trim) at its middle.
 *
 * @param vessel - the boat
 * @param name - of the compartment
 * @returns the space, with levels counted from the compartment's floor
 * @source DERIVED: docs/methods/soundings.md, "The space"
 */
export function spaceOf(vessel: FloatingVessel, name: string): SoundedSpace {
  const hull = makeHull(vessel.hull);
  const compartment = vessel.compartments.find((one) => one.name === name)!;
  const draught = vessel.draught ?? hull.draught;
  const kg = vessel.kg ?? likelyGravityHeight(hull, draught);
  const balance = makeBalance({ hull, dry: { draught, trim: vessel.trim ?? 0 }, kg, compartments: [compartment] });
  const floor = compartment.floor ?? 0;
  const step = ((compartment.top ?? hull.depth) - floor) / (NODES - 1);
  const middle = { x: (compartment.from + compartment.to) / 2 };
  const attitude = { draught, trim: vessel.trim ?? 0 };
  const outside = draught - ((vessel.trim ?? 0) / hull.length) * (middle.x - hull.length / 2) - floor;
  const waterAt = (k: number): number => balance.waterUnder(0, floor + k * step);
  const areas = Float64Array.from({ length: NODES }, (_, k) => {
    const [low, high] = [Math.max(0, k - 0.5), Math.min(NODES - 1, k + 0.5)];
    return Math.max(1e-3, (waterAt(high) - waterAt(low)) / ((high - low) * step));
  });
  const volumes = Float64Array.from({ length: NODES }, (_, k) => waterAt(k));
  const sinking = riseWithWater(hull, attitude, { water: middle, seen: { x: hull.length / 2 } });
  return {
    areas,
    step,
    volumes,
    outside,
    outsideDoubt: 0.03,
    sinkage: riseWithWater(hull, attitude, { water: middle, seen: middle }),
    lossLevel: levelHolding(volumes, step, (hull.depth - draught) / sinking),
  };
}

/** Level at which the space holds so much water; the last level where it never does. */
function levelHolding(volumes: Float64Array, step: number, water: number): number {
  const above = volumes.findIndex((volume) => volume >= water);
  if (above < 0) return step * (volumes.length - 1);
  if (above === 0) return 0;
  const [low, high] = [volumes[above - 1]!, volumes[above]!];
  return step * (above - 1 + (water - low) / (high - low));
}
