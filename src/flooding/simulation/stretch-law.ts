/**
 * What the water in a space does while one law holds: dw/dt = K·r(h) − Q with the head a straight line in the water,
 * h = head + slope·w, and r the root of h with its sign, or h/√h₀ near equal levels, or nothing.
 */
export interface StretchLaw {
  /** Side of the head under the root; 0: straight in the head. */
  readonly side: -1 | 0 | 1;
  /** K, of the root [m^2.5/s] or of the head [m²/s]; below zero for a pump that lifts by a parabola. */
  readonly strength: number;
  readonly head: number;
  readonly slope: number;
  /** Q [m³/s]. */
  readonly drain: number;
}

const NEWTON = 60;
/** Less than this share of the way left is none. */
const AS_GOOD_AS_REST = 1e-12;

/** How far rest may lie from where the law holds, in roots of a metre: beyond it digits are lost. */
const FARTHEST_REST = 1e5;

/** Whether the closed form keeps its digits: a pump ever so much stronger than the hole is carried otherwise. */
export function isSound(law: StretchLaw): boolean {
  return law.strength === 0 || law.slope === 0 || Math.abs(law.drain) <= FARTHEST_REST * Math.abs(law.strength);
}

function rateWith(law: StretchLaw, water: number): number {
  const head = law.head + law.slope * water;
  const root = law.side === 0 ? head : law.side * Math.sqrt(Math.max(0, law.side * head));
  return law.strength * root - law.drain;
}

const isEven = (law: StretchLaw): boolean => law.strength === 0 || law.slope === 0;

/**
 * Time for the water to go from one volume to another under one law.
 *
 * u = √|h|, u_e = ±Q/K where it would rest: t = 2/(bK)·(u − u₀ + u_e·ln((u − u_e)/(u₀ − u_e))), b the slope of h.
 *
 * @param law - the law
 * @param from - water at the start [m³]
 * @param to - water at the end [m³]
 * @returns time [s]; infinite where it never comes there
 * @source DERIVED: docs/methods/flooding.md, "Closed form"
 */
export function timeBetween(law: StretchLaw, from: number, to: number): number {
  if (isEven(law)) return reached((to - from) / rateWith(law, from));
  return law.side === 0 ? timeStraight(law, from, to) : timeRooted(law, from, to);
}

function reached(time: number): number {
  return time >= 0 ? time : Number.POSITIVE_INFINITY;
}

function timeStraight(law: StretchLaw, from: number, to: number): number {
  const far = law.head + law.slope * from - law.drain / law.strength;
  return reached(fadeTo((law.slope * (to - from)) / far) / (law.slope * law.strength));
}

/** ln of what is left of a way to rest; what ends within rounding of rest never comes there. */
function fadeTo(change: number): number {
  return change + 1 < AS_GOOD_AS_REST ? Number.NaN : Math.log1p(change);
}

function timeRooted(law: StretchLaw, from: number, to: number): number {
  const [first, last] = [rootOf(law, from), rootOf(law, to)];
  const rest = (law.side * law.drain) / law.strength;
  const change = (law.side * law.slope * (to - from)) / (first + last);
  const fade = rest === 0 ? 0 : rest * fadeTo(change / (first - rest));
  return reached((2 * (change + fade)) / (law.slope * law.strength));
}

function rootOf(law: StretchLaw, water: number): number {
  return Math.sqrt(Math.max(0, law.side * (law.head + law.slope * water)));
}

/**
 * Water after a time under one law, which must hold so long.
 *
 * @param law - the law
 * @param from - water at the start [m³]
 * @param seconds - time [s]
 * @returns water [m³]
 * @source DERIVED: docs/methods/flooding.md, "Closed form"
 */
export function waterAfter(law: StretchLaw, from: number, seconds: number): number {
  if (isEven(law)) return from + rateWith(law, from) * seconds;
  if (law.side === 0) {
    const far = law.head + law.slope * from - law.drain / law.strength;
    return from + (far * Math.expm1(law.slope * law.strength * seconds)) / law.slope;
  }
  const first = rootOf(law, from);
  const change = rootChange(first, (law.side * law.drain) / law.strength, (-law.slope * law.strength * seconds) / 2);
  return from + (law.side * change * (2 * first + change)) / law.slope;
}

/**
 * Change of u after τ, where u = u_e + (u₀ − u_e)e^(−s) and u_e·s + (u₀ − u_e)(1 − e^(−s)) = τ: Newton on s, from a
 * side on which it cannot overshoot twice.
 */
function rootChange(first: number, rest: number, tau: number): number {
  const far = first - rest;
  if (rest === 0) return Math.max(-first, -tau);
  if (far === 0) return 0;
  let s = startOf(first, rest, tau);
  for (let i = 0; i < NEWTON; i += 1) {
    const fade = Math.expm1(-s);
    const step = (rest * s - far * fade - tau) / (first + far * fade);
    s -= step;
    if (Math.abs(step) <= 1e-15 * (1 + Math.abs(s))) break;
  }
  return far * Math.expm1(-s);
}

function startOf(first: number, rest: number, tau: number): number {
  if (tau >= 0) return tau / Math.max(first, rest);
  const far = first - rest;
  return rest > 0 && far > 0 ? Math.max(tau / first, -Math.log1p(-tau / far)) : tau / first;
}
