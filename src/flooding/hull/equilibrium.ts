import { nth, numberAt } from "#base";
import { findRoot } from "#numerics";
import { beginWork, converge, heelStiffness, STEEPEST, totalOf, type Loading, type Work } from "./balance-of-forces.ts";
import type { Tank } from "./compartment.ts";
import { INTEGRALS, V, type Plane } from "./hull-integrals.ts";

export type { Loading } from "./balance-of-forces.ts";

/** Where she comes to rest, or why she does not. */
export type Resting =
  | {
      readonly kind: "afloat";
      readonly plane: Plane;
      /** Water surface in each compartment: height of its plane (same slopes) at the after end on the centre line [m]. */
      readonly levels: readonly number[];
      /** Righting moment per unit of tan(heel), over water density and gravity [m⁴]: displacement × GM, floodwater free. */
      readonly stiffness: number;
      /** Displaced volume, floodwater's weight included [m³]. */
      readonly volume: number;
    }
  | { readonly kind: "founders"; readonly because: string }
  | { readonly kind: "capsizes"; readonly because: string };

/** Settles a boat under given volumes of floodwater. Keeps its last answer as the next first guess. */
export interface Balance {
  settle(water: ArrayLike<number>): Resting;
  /** Where she ends if the spaces marked stay open to the sea: their buoyancy is lost, their water is the sea's. */
  settleOpen(open: readonly boolean[], water?: ArrayLike<number>): Resting;
  /** Held at a heel, with draught and trim free. */
  holdAt(heel: number, water?: ArrayLike<number>, open?: readonly boolean[]): HeldHeel | undefined;
  /** Righting lever at a heel with free trim and free floodwater [m]; undefined where she cannot lie so. */
  leverAt(water: ArrayLike<number>, heel: number): number | undefined;
  /**
   * The same at each of these heels, walked to from upright in small strides, so that steep ones are found too. Where no
   * trim holds her any more, the trim is held as it last was, and from there on.
   */
  leversAt(water: ArrayLike<number>, heels: readonly number[]): readonly (Lever | undefined)[];
  /** Water in a compartment under a level surface at a height above the keel [m³]. */
  waterUnder(index: number, height: number): number;
  readonly tanks: readonly Tank[];
  /** Volume displaced dry [m³]. */
  readonly dryVolume: number;
}

/** A righting lever on the way over. */
export interface Lever {
  /** [m] */
  readonly lever: number;
  /** No trim holds her there by itself. */
  readonly isTrimHeld: boolean;
}

/** A boat held at a heel. */
export interface HeldHeel {
  readonly plane: Plane;
  /** Righting moment over density, gravity and secant of the heel [m⁴]. */
  readonly moment: number;
  readonly stiffness: number;
  readonly volume: number;
}

/**
 * Prepares to settle a boat.
 *
 * Three conditions, exact at any angle, floodwater lying level in its own space:
 * V = V₀ + Σw; the moments M = V·B − V₀·G − Σw·c satisfy M_x + p·M_z = 0 and M_y + q·M_z = 0,
 * with the water's plane z = t + p·x + q·y.
 *
 * @param loading - the boat dry; lengths in [m]
 * @returns the balance
 * @source DERIVED: docs/methods/flooding.md, "Equilibrium"
 */
export function makeBalance(loading: Loading): Balance {
  const work = beginWork(loading);
  return {
    tanks: work.tanks,
    dryVolume: work.dry.volume,
    waterUnder: (index, height) => waterUnder(work, nth(work.tanks, index), height),
    settle: (water) => settle(work, water),
    settleOpen: (open, water) => withOpen(work, open, () => settle(work, water ?? dryOf(work))),
    holdAt: (heel, water, open) => withOpen(work, open ?? [], () => holdAt(work, heel, water ?? dryOf(work))),
    leverAt: (water, heel) => leverAt(work, water, heel),
    leversAt: (water, heels) => withOpen(work, [], () => leversAt(work, water, heels)),
  };
}

function waterUnder(work: Work, tank: Tank, height: number): number {
  const plane: Plane = { height, slopeX: 0, slopeY: 0 };
  return tank.permeability * numberAt(work.gauge.measure(plane, tank.window, new Float64Array(INTEGRALS)), V);
}

function settle(work: Work, water: ArrayLike<number>): Resting {
  const weight = totalOf(work, water);
  if (weight >= work.capacity) {
    return { kind: "founders", because: "boat and floodwater together weigh more than the whole hull displaces" };
  }
  const kept = Float64Array.from(work.at);
  if (converge(work, water, 3) && heelStiffness(work) > 0) return resting(work, weight);
  const heel =
    Math.abs(numberAt(work.at, 2)) < STEEPEST && Number.isFinite(numberAt(work.at, 2))
      ? numberAt(work.at, 2)
      : numberAt(kept, 2);
  if (searchHeel(work, water, kept, heel)) return resting(work, weight);
  work.at.set(kept);
  return { kind: "capsizes", because: "no stable angle of heel below 75 degrees" };
}

function resting(work: Work, volume: number): Resting {
  return {
    kind: "afloat",
    plane: { height: numberAt(work.at, 0), slopeX: numberAt(work.at, 1), slopeY: numberAt(work.at, 2) },
    levels: work.tanks.map((tank) => tank.height),
    stiffness: heelStiffness(work),
    volume,
  };
}

function dryOf(work: Work): Float64Array {
  return new Float64Array(work.tanks.length);
}

function withOpen<T>(work: Work, open: readonly boolean[], act: () => T): T {
  const kept = Float64Array.from(work.at);
  work.open = open;
  const result = act();
  work.open = [];
  work.at.set(kept);
  return result;
}

function holdAt(work: Work, heel: number, water: ArrayLike<number>): HeldHeel | undefined {
  const moment = momentAt(work, water, Math.tan(heel), Float64Array.from(work.at));
  if (moment === undefined) return undefined;
  const plane = { height: numberAt(work.at, 0), slopeX: numberAt(work.at, 1), slopeY: numberAt(work.at, 2) };
  return { plane, moment, stiffness: heelStiffness(work), volume: totalOf(work, water) };
}

/** Righting moment (over density, gravity and secant) at a fixed tan(heel) with draught (1), or draught and trim (2), free. */
function momentAt(
  work: Work,
  water: ArrayLike<number>,
  slopeY: number,
  from: Float64Array,
  free: 1 | 2 = 2,
): number | undefined {
  work.at[0] = numberAt(from, 0);
  work.at[1] = numberAt(from, 1);
  work.at[2] = slopeY;
  if (!converge(work, water, free)) return undefined;
  from.set(work.at);
  return numberAt(work.residual, 2);
}

/** tan of a heel nobody sees: unstable upright but righted there, she lies no further over than that. */
const HARDLY = 1e-4;

/** Walks to the side she falls to until the moment turns round, then settles between. Upright and unstable: to starboard. */
function searchHeel(work: Work, water: ArrayLike<number>, kept: Float64Array, heel: number): boolean {
  const from = Float64Array.from(kept);
  const isUpright = Math.abs(heel) < 1e-6;
  let low = isUpright ? HARDLY : heel;
  const first = momentAt(work, water, low, from);
  if (first === undefined) return false;
  if (isUpright && first >= 0) return heelStiffness(work) > 0;
  const direction = first < 0 ? 1 : -1;
  for (let stride = 0.05; Math.abs(low) < STEEPEST; stride *= 1.3) {
    const high = clampHeel(low + direction * stride);
    const moment = momentAt(work, water, high, from);
    if (moment === undefined) return false;
    if (moment * direction >= 0)
      return fromBetween(work, water, [low, high]) || settleBetween(work, water, [low, high], from);
    low = high;
  }
  return false;
}

function clampHeel(slope: number): number {
  return Math.min(STEEPEST, Math.max(-STEEPEST, slope));
}

/** Newton from the far end of the bracket, where what she comes to lies inside it and is stable. */
function fromBetween(work: Work, water: ArrayLike<number>, [low, high]: readonly [number, number]): boolean {
  if (!converge(work, water, 3) || !(heelStiffness(work) > 0)) return false;
  const heel = numberAt(work.at, 2);
  return heel > Math.min(low, high) && heel < Math.max(low, high);
}

function settleBetween(
  work: Work,
  water: ArrayLike<number>,
  [low, high]: readonly [number, number],
  from: Float64Array,
): boolean {
  const outcome = findRoot((q) => momentAt(work, water, q, from) ?? Number.NaN, low, high, { rootTolerance: 1e-13 });
  if (outcome.kind === "not-bracketed") return false;
  return momentAt(work, water, outcome.root, from) !== undefined && heelStiffness(work) > 0;
}

function leverAt(work: Work, water: ArrayLike<number>, heel: number): number | undefined {
  const held = withOpen(work, [], () => holdAt(work, heel, water));
  return held && (held.moment * Math.cos(heel)) / held.volume;
}

/** Longest stride from one heel to the next [rad]. */
const STRIDE = (3 * Math.PI) / 180;

function leversAt(work: Work, water: ArrayLike<number>, heels: readonly number[]): readonly (Lever | undefined)[] {
  const start = Float64Array.from(work.at);
  const levers = new Map<number, Lever | undefined>();
  for (const side of [1, -1]) {
    const outward = heels.filter((heel) => heel * side > 0 || (heel === 0 && side > 0));
    const sorted = outward.toSorted((a, b) => Math.abs(a) - Math.abs(b));
    walkOver(work, water, sorted, Float64Array.from(start)).forEach((lever, k) => levers.set(sorted[k]!, lever));
  }
  return heels.map((heel) => levers.get(heel));
}

/** Levers at heels to one side, each further over than the one before. */
function walkOver(
  work: Work,
  water: ArrayLike<number>,
  heels: readonly number[],
  from: Float64Array,
): (Lever | undefined)[] {
  let reached = 0;
  let free: 1 | 2 = 2;
  return heels.map((heel) => {
    let moment = walkTo(work, water, from, [reached, heel], free);
    if (moment === undefined && free === 2) {
      free = 1;
      moment = walkTo(work, water, from, [reached, heel], free);
    }
    if (moment === undefined) return undefined;
    reached = heel;
    return { lever: (moment * Math.cos(heel)) / totalOf(work, water), isTrimHeld: free === 1 };
  });
}

/** Moment at the end of a walk; undefined where she cannot lie so on the way. */
function walkTo(
  work: Work,
  water: ArrayLike<number>,
  from: Float64Array,
  [start, end]: readonly [number, number],
  free: 1 | 2,
): number | undefined {
  const strides = Math.max(1, Math.ceil(Math.abs(end - start) / STRIDE));
  let moment: number | undefined;
  for (let k = 1; k <= strides; k += 1) {
    moment = momentAt(work, water, Math.tan(start + ((end - start) * k) / strides), from, free);
    if (moment === undefined) return undefined;
  }
  return moment;
}
