import { makeHull } from "./hull-form.ts";
import { gmFromRollPeriod } from "./stability.ts";
import { lieWithWater, type Lying } from "./lying.ts";
import type { FloatingVessel } from "./vessel.ts";

/** What people see of how she lies; left out where nobody told. Angles [rad]. */
export interface SeenOfHer {
  /** List, to starboard. */
  readonly list?: number;
  /** Trim, bow down. */
  readonly trim?: number;
  /** A full roll out and back [s]. */
  readonly rollPeriod?: number;
  readonly righting?: "comes-back" | "slowly" | "stays";
}

/** A list no larger than this is none [rad]; a heel computed beyond it is against one seen upright. */
const UPRIGHT = (4 * Math.PI) / 180;
/** Metacentric height of a boat that is seen to come back, at least [m]. */
const COMES_BACK = 0.15;
/** Breadth at her ends over that amidships. */
const ENDS = 0.7;

/**
 * How she lies with the water in her, the guessed centre of gravity given up where it is against what is seen: a boat
 * that is seen upright, comes back or rolls briskly is not laid over by a guess, and one that is seen to list has her
 * deck edge as low as that list and trim bring it.
 *
 * @param vessel - as guessed, with levels in her compartments
 * @param seen - what people see
 * @returns as `lieWithWater`, with list and trim as seen, freeboard at the lowest deck edge, GM as the roll has it
 * @range lists below 60°; the lowest deck edge by the plane of the water through her middle
 * @source DERIVED: docs/methods/flooding.md, "Equilibrium"; weighing: this program's judgement
 * @example
 * const hull = { form: "box", length: 9, beam: 2.6, depth: 1.4, draught: 0.7 };
 * lieAsSeen({ kind: "floating", hull, kg: 0.6, compartments: [] }, { list: 0, righting: "comes-back" }).kind // "afloat"
 */
export function lieAsSeen(vessel: FloatingVessel, seen: SeenOfHer): Lying {
  const guessed = lieWithWater(vessel);
  const isAgainst = isLaidOver(guessed) && isSeenUpright(vessel, seen);
  const hull = makeHull(vessel.hull);
  const steady = isAgainst || seen.list !== undefined ? lieWithWater({ ...vessel, kg: 0.3 * hull.depth }) : guessed;
  if (steady.kind !== "afloat") return isAgainst ? steady : guessed;
  const tilted = tiltAsSeen(vessel, steady, seen);
  return { ...tilted, gm: gmAsSeen(vessel, guessed.kind === "afloat" ? guessed.gm : 0, seen) };
}

function isLaidOver(lying: Lying): boolean {
  return lying.kind !== "afloat" || Math.abs(lying.heel) > UPRIGHT || lying.gm <= 0.05;
}

function isSeenUpright(vessel: FloatingVessel, seen: SeenOfHer): boolean {
  if (seen.righting === "stays" || Math.abs(seen.list ?? 0) > UPRIGHT) return false;
  const isBrisk = (rolledGm(vessel, seen) ?? 0) > COMES_BACK;
  return seen.list !== undefined || seen.righting === "comes-back" || isBrisk;
}

function rolledGm(vessel: FloatingVessel, { rollPeriod }: SeenOfHer): number | undefined {
  if (rollPeriod === undefined) return undefined;
  const { length, beam, draught } = sizeOf(vessel);
  return gmFromRollPeriod({ length, beam, draught, period: rollPeriod }).atLeast;
}

function sizeOf({ hull }: FloatingVessel): { length: number; beam: number; depth: number; draught: number } {
  const { length, depth, draught } = makeHull(hull);
  return { length, depth, draught, beam: hull.form === "offsets" ? length / 3 : hull.beam };
}

/** A timed roll outranks the guess; a boat that comes back has some. */
function gmAsSeen(vessel: FloatingVessel, guessed: number, seen: SeenOfHer): number {
  const rolled = rolledGm(vessel, seen);
  if (rolled !== undefined) return rolled;
  return seen.righting === "comes-back" ? Math.max(guessed, COMES_BACK) : guessed;
}

type Afloat = Extract<Lying, { kind: "afloat" }>;

function tiltAsSeen(vessel: FloatingVessel, lying: Afloat, seen: SeenOfHer): Afloat {
  const { length, beam, depth } = sizeOf(vessel);
  const middle = (lying.aft + lying.forward) / 2;
  const half = seen.trim === undefined ? (lying.forward - lying.aft) / 2 : (Math.tan(seen.trim) * length) / 2;
  const heel = seen.list ?? lying.heel;
  const dip = Math.tan(Math.abs(heel)) * (beam / 2);
  const highest = Math.max(middle + dip, middle + Math.abs(half) + ENDS * dip);
  return {
    ...lying,
    aft: middle - half,
    forward: middle + half,
    heel,
    freeboard: (depth - highest) * Math.cos(heel),
  };
}
