// What runs in by holes and what pumps take out.
import { heightOf } from "./columns.ts";
import type { Surfaces } from "./lies.ts";

const G = 9.80665;

export interface Hole {
  readonly x: number;
  readonly y: number;
  /** Height of its middle [m]. */
  readonly z: number;
  /** Of a round hole [m]. */
  readonly diameter: number;
  readonly dischargeCoefficient: number;
  /** Share of it that is open. */
  readonly open: number;
}

export interface Pump {
  readonly x: number;
  readonly y: number;
  /** Height of the strainer [m]. */
  readonly strainer: number;
  /** Height of its outlet [m]. */
  readonly outlet: number;
  /** What it moves at `knownLift` [m³/s]. */
  readonly flow: number;
  readonly knownLift: number;
  /** At this lift nothing comes any more [m]. */
  readonly shutOff: number;
}

/** Slices of a round hole: middles over the radius, and their share of its area (chords). */
const SLICES = [-0.8, -0.4, 0, 0.4, 0.8].map((place) => ({ place, chord: Math.sqrt(1 - place ** 2) }));
const CHORDS = SLICES.reduce((sum, { chord }) => sum + chord, 0);
/** The law is straight for heads well below this [m]. */
const SMALL = 2e-5;

/**
 * Flow in by a round hole, slice by slice: Cd·a·√(2g·Δh), Δh from the water above the slice on either side.
 *
 * @param hole - round, standing upright
 * @param surfaces - sea and water inside
 * @returns in [m³/s]; out of her where the water inside stands higher
 * @source Torricelli, with a discharge coefficient
 */
export function inflowBy(hole: Hole, { sea, inside }: Surfaces): number {
  const [out, within] = [heightOf(sea, hole.x, hole.y), heightOf(inside, hole.x, hole.y)];
  const area = (Math.PI / 4) * hole.diameter ** 2 * hole.open * hole.dischargeCoefficient;
  const speeds = SLICES.reduce((sum, { place, chord }) => {
    const z = hole.z + (place * hole.diameter) / 2;
    return sum + chord * speedFor(Math.max(0, out - z) - Math.max(0, within - z));
  }, 0);
  return (area * speeds) / CHORDS;
}

function speedFor(head: number): number {
  return (Math.sqrt(2 * G) * head) / Math.sqrt(Math.abs(head) + SMALL);
}

/** The strainer takes in more and more air over so much of its height [m]. */
const AIR_OVER = 0.02;

/**
 * What a pump takes out: a parabola of lift against flow, less as the strainer comes out of the water. With the
 * strainer awash it takes what comes to it and no more.
 *
 * @param pump - on its curve
 * @param surfaces - water inside
 * @returns out [m³/s]
 */
export function takenBy(pump: Pump, { inside }: Surfaces): number {
  const level = heightOf(inside, pump.x, pump.y);
  const wet = Math.max(0, Math.min(1, (level - pump.strainer) / AIR_OVER));
  const left = (pump.shutOff - (pump.outlet - level)) / (pump.shutOff - pump.knownLift);
  return pump.flow * wet * Math.sqrt(Math.max(0, left));
}
