import { STANDARD_GRAVITY } from "#water";
import { AREA_SHARE, DELIVERY, HOLE, OUTSIDE, START_LEVEL, STRENGTH, type Casualty } from "../level/places.ts";
import { roomForSteps, stepLevel } from "../level/step-level.ts";
import { LIKELY_COEFFICIENT } from "../openings/opening.ts";
import type { SoundedSpace } from "./sounding-space.ts";

export * from "../level/places.ts";
export { inflowAt, stepLevel } from "../level/step-level.ts";

export interface Reading {
  /** [s] */
  readonly at: number;
  /** Above the floor of the space [m]. */
  readonly level: number;
}

/** What was pumped from this space: from and until [s], stated delivery [m³/s]. Open-ended where `to` is absent. */
export interface Pumped {
  readonly from: number;
  readonly to?: number;
  readonly flow: number;
}

/**
 * Share of the stated delivery that is really moved. Log spreads above and below the median: a pump seldom moves more
 * than stated, and may move much less.
 */
export interface DeliveryPrior {
  readonly median: number;
  readonly logSpread: number;
  readonly lowSpread: number;
}

/** What is thought before any sounding. Spreads are standard deviations; of logarithms where the name says so. */
export interface SoundingPrior {
  /** Hole area, median [m²] and log spread. */
  readonly holeArea: { readonly median: number; readonly logSpread: number };
  /** Share of floodable area found over drawn. */
  readonly areaLogSpread: number;
  /** Delivery found over stated. */
  readonly delivery: DeliveryPrior;
  /** Level at the first reading [m]. */
  readonly startLevel: { readonly median: number; readonly spread: number };
  /** Error of one sounding [m]. */
  readonly noise: number;
}

/** Unknowns, each a standard normal before any sounding: hole, area, delivery, hole's height, start, outside level. */
export const UNKNOWNS = 6;

/** Steps from one instant to another: length [s], pumping as stated [m³/s], number of the reading at its end or -1. */
export interface Plan {
  readonly lengths: Float64Array;
  readonly pumped: Float64Array;
  readonly readings: Int32Array;
}

const LOG_ROOT = Math.sqrt(2 * STANDARD_GRAVITY);
/** Logistic with this slope is near enough to the normal's spread: the hole's height is then about evenly likely. */
export const EVEN = 1.6;

/**
 * Turns a point of standard normals into a casualty.
 *
 * @param space - the space
 * @param prior - what is thought beforehand
 * @param z - points, one after another
 * @param at - where this one begins
 * @param out - the casualty, written
 * @returns nothing; see `out`
 * @source DERIVED: docs/methods/soundings.md, "Before any sounding"
 */
export function casualtyAt(
  space: SoundedSpace,
  prior: SoundingPrior,
  z: Float64Array,
  at: number,
  out: Casualty,
): void {
  out[STRENGTH] = strengthAt(prior, z[at]!);
  out[AREA_SHARE] = Math.exp(prior.areaLogSpread * z[at + 1]!);
  out[DELIVERY] = deliveryShare(prior.delivery, z[at + 2]!);
  out[OUTSIDE] = Math.max(0.02, space.outside + space.outsideDoubt * z[at + 5]!);
  out[HOLE] = out[OUTSIDE]! / (1 + Math.exp(-EVEN * z[at + 3]!));
  out[START_LEVEL] = Math.max(0, prior.startLevel.median + prior.startLevel.spread * z[at + 4]!);
}

/** Cd·A·√(2g) of the hole that a standard normal stands for [m^2.5/s]. */
export function strengthAt({ holeArea }: SoundingPrior, z: number): number {
  return LIKELY_COEFFICIENT * LOG_ROOT * holeArea.median * Math.exp(holeArea.logSpread * z);
}

/** How sharply one spread passes into the other: half a standard normal. */
const KNEE = 0.5;

/**
 * Share of the stated delivery: ln(share/median) = (u + l)/2·z − (l − u)/2·(√(z² + c²) − c), u and l the log spreads
 * above and below, c = 0.5. A hyperbola with slope u far above and l far below; a log-normal where they are equal.
 */
export function deliveryShare(prior: DeliveryPrior, z: number): number {
  const middle = (prior.logSpread + prior.lowSpread) / 2;
  const skew = (prior.lowSpread - prior.logSpread) / 2;
  return prior.median * Math.exp(middle * z - skew * (Math.sqrt(z * z + KNEE * KNEE) - KNEE));
}

/** The standard normal that stands for this share: the hyperbola of `deliveryShare` turned round. */
export function deliveryPlace(prior: DeliveryPrior, share: number): number {
  const middle = (prior.logSpread + prior.lowSpread) / 2;
  const skew = (prior.lowSpread - prior.logSpread) / 2;
  const product = prior.logSpread * prior.lowSpread;
  const off = Math.log(share / prior.median) - skew * KNEE;
  return (middle * off + skew * Math.sqrt(off * off + product * KNEE * KNEE)) / product;
}

/**
 * Area of the hole whose strength this is, with the likeliest discharge coefficient.
 *
 * @param strength - Cd·A·√(2g) [m^2.5/s]
 * @returns area [m²]
 * @source see `strengthOf`
 */
export function holeAreaOf(strength: number): number {
  return strength / (LIKELY_COEFFICIENT * LOG_ROOT);
}

/**
 * Cuts time into steps at readings and pump changes, none longer than `longest`.
 *
 * @param times - instants at which the level is read off, the first the start [s]
 * @param pumping - what is pumped
 * @param longest - longest step [s]
 * @returns the plan
 * @source DERIVED: docs/methods/soundings.md
 */
export function planSteps(times: readonly number[], pumping: readonly Pumped[], longest: number): Plan {
  const start = times[0]!;
  const end = times[times.length - 1]!;
  const corners = pumping.flatMap((one) => (one.to === undefined ? [one.from] : [one.from, one.to]));
  const cuts = [...new Set([...times, ...corners.filter((t) => t > start && t < end)])].sort((a, b) => a - b);
  const [lengths, pumped, readings]: [number[], number[], number[]] = [[], [], []];
  for (let k = 0; k + 1 < cuts.length; k += 1) {
    const [from, to] = [cuts[k]!, cuts[k + 1]!];
    const parts = Math.max(1, Math.ceil((to - from) / longest));
    for (let part = 1; part <= parts; part += 1) {
      lengths.push((to - from) / parts);
      pumped.push(flowAt(pumping, (from + to) / 2));
      readings.push(part === parts ? times.indexOf(to) : -1);
    }
  }
  return {
    lengths: Float64Array.from(lengths),
    pumped: Float64Array.from(pumped),
    readings: Int32Array.from(readings),
  };
}

/**
 * What is pumped, as stated, at an instant.
 *
 * @param pumping - what is pumped
 * @param t - instant [s]
 * @returns flow [m³/s]
 * @source sum of the pumps running
 */
export function flowAt(pumping: readonly Pumped[], t: number): number {
  return pumping.reduce((sum, one) => (t >= one.from && t < (one.to ?? Infinity) ? sum + one.flow : sum), 0);
}

/**
 * Follows the level through a plan of steps; writes the level at each reading into `out` and returns the last level.
 *
 * Each step is an exponential Rosenbrock step of order 3(2): dh/dt = f + f'·(h − h₀) is followed exactly and what is
 * left corrected with φ₃; stable however fast levels equalise. A level that a step has left where it was stays there
 * through every step like it.
 *
 * @param space - the space
 * @param casualty - the unknowns
 * @param plan - steps and readings
 * @param from - level at the start [m]
 * @param out - level at each reading, written [m]
 * @returns level at the end [m]
 * @source Hochbruck & Ostermann, Exponential integrators, Acta Numerica 19 (2010) 209-286, exprb32 (FROM MEMORY)
 */
export function followLevel(
  space: SoundedSpace,
  casualty: Casualty,
  plan: Plan,
  from: number,
  out: Float64Array,
): number {
  const { lengths, pumped, readings } = plan;
  const room = roomForSteps();
  let h = from;
  let isStill = false;
  for (let k = 0; k < lengths.length; k += 1) {
    isStill &&= lengths[k] === lengths[k - 1] && pumped[k] === pumped[k - 1];
    if (!isStill) {
      const next = stepLevel(space, casualty, h, lengths[k]!, pumped[k]!, room);
      isStill = next === h;
      h = next;
    }
    const reading = readings[k]!;
    if (reading >= 0) out[reading] = h;
  }
  return h;
}
