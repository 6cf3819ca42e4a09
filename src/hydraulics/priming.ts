import { InputError, type Fault } from "#base";
import { STANDARD_GRAVITY, type Water } from "#water";
import { HYDRAULIC_LIMITS, checkLimit } from "./limits.ts";

/** A pump being primed by hand or by an engine-driven piston. */
export interface PrimingCase {
  /** Pump above the water [m]. */
  readonly lift: number;
  /** Suction hose; it is taken to run straight from the water to the pump. */
  readonly hose: { readonly bore: number; readonly length: number };
  /** Air in casing and primer beside the hose [m³]. */
  readonly deadVolume: number;
  /** Volume one stroke of the primer takes [m³]. */
  readonly stroke: number;
  /** [1/s] */
  readonly strokeRate: number;
  /** Free air that leaks in, at the pressure outside [m³/s]. */
  readonly airLeak: number;
  readonly water: Water;
  /** [Pa] */
  readonly airPressure: number;
}

/** What a priming comes to. */
export type Priming =
  | {
      readonly kind: "primes";
      /** Strokes until water is at the pump, the last one counted as the part of it needed. */
      readonly strokes: number;
      readonly wholeStrokes: number;
      readonly seconds: number;
      readonly greatestLift: number;
      readonly because: string;
    }
  | {
      readonly kind: "will-not-prime";
      readonly greatestLift: number;
      readonly because: string;
      /** Height the water reaches in the end [m]. */
      readonly reaches: number;
    };

/** Strokes after which a primer that still lifts no water is given up. */
const MOST_STROKES = 20_000;

/**
 * Strokes to prime: air is pumped out stroke by stroke while the water rises under it.
 *
 * Before a stroke the air has p·V(p), V(p) = V_dead + A·L·(1 − (p0 − p)/(ρ g z)); the stroke v expands it to
 * p'·(V(p') + v) = p·V(p) + p0·q_leak·t, and throws out p'·v. Isothermal.
 *
 * @param given - pump, hose, primer, leak, water, air
 * @returns strokes and seconds, or why not; greatest lift either way
 * @range slow strokes (isothermal), tight primer valves; the hose straight, without humps
 * @source Boyle's law; the fixed-volume form p_n = p0 (V/(V+v))^n as in any vacuum text; the rising column and the leak
 *   are ours (DERIVED)
 * @throws InputError HY-131 to HY-139 with every fault
 */
export function primingOf(given: PrimingCase): Priming {
  checkPriming(given);
  return prime(given);
}

/** {@link primingOf} for a case already checked. */
export function prime(given: PrimingCase): Priming {
  const greatest = greatestLift(given);
  if (given.lift >= greatest) return willNotPrime(given, greatest);
  return strokesToPrime(given, greatest);
}

/**
 * Greatest lift a primer can reach with this leak: where a stroke takes out no more air than leaks in, or where the
 * water boils.
 *
 * z = (p0 − max(p_v, p0·q_leak·t/v))/(ρ g)
 *
 * @param given - as {@link primingOf}
 * @returns lift, [m]; 0 where the leak is as much as the primer takes
 * @range as {@link primingOf}
 * @source DERIVED
 */
export function greatestLift(given: PrimingCase): number {
  const { airPressure, water } = given;
  const lowest = Math.max(water.vapourPressure, leakPerStroke(given) / given.stroke);
  return Math.max(0, (airPressure - lowest) / (water.density * STANDARD_GRAVITY));
}

function willNotPrime(given: PrimingCase, greatest: number): Priming {
  const boils = leakPerStroke(given) / given.stroke <= given.water.vapourPressure;
  const because = boils
    ? `water boils in the hose above ${greatest.toFixed(1)} m`
    : `the leak lets in as much air as the primer takes out at ${greatest.toFixed(1)} m`;
  return { kind: "will-not-prime", greatestLift: greatest, reaches: Math.min(greatest, given.lift), because };
}

/** Free air leaked in during a stroke, times its pressure [J]. */
function leakPerStroke({ airPressure, airLeak, strokeRate }: PrimingCase): number {
  return (airPressure * airLeak) / strokeRate;
}

function strokesToPrime(given: PrimingCase, greatest: number): Priming {
  const { airPressure, water, lift, stroke, deadVolume } = given;
  const column = water.density * STANDARD_GRAVITY;
  const target = airPressure - column * Math.max(0, lift);
  const hose = ((Math.PI * given.hose.bore ** 2) / 4) * given.hose.length;
  const leak = leakPerStroke(given);
  const slope = lift > 0 ? hose / (column * lift) : 0;
  let pressure = airPressure;
  let amount = airPressure * (deadVolume + (lift > 0 ? hose : 0));
  for (let done = 0; done < MOST_STROKES; done += 1) {
    const share = shareOfStroke(amount, target, deadVolume, stroke, leak);
    if (share <= 1) return primes(given, done + Math.max(0, share), greatest);
    pressure = pressureAfter(amount + leak, airPressure, deadVolume + hose + stroke, slope);
    amount = pressure * (deadVolume + hose - slope * (airPressure - pressure));
  }
  const because = `no water after ${MOST_STROKES} strokes`;
  const reaches = (airPressure - pressure) / column;
  return { kind: "will-not-prime", greatestLift: greatest, reaches, because };
}

/** How much of the next stroke brings the water to the pump: target·(V_dead + x·v) = amount + x·leak. */
function shareOfStroke(amount: number, target: number, deadVolume: number, stroke: number, leak: number): number {
  return (amount - target * deadVolume) / (target * stroke - leak);
}

/** Pressure p that solves p·(V − s·(p0 − p)) = amount, V at outside pressure, s volume lost for each pascal below it. */
function pressureAfter(amount: number, outside: number, volume: number, slope: number): number {
  if (slope === 0) return amount / volume;
  const linear = volume - slope * outside;
  const root = Math.sqrt(linear * linear + 4 * slope * amount);
  return linear > 0 ? (2 * amount) / (linear + root) : (root - linear) / (2 * slope);
}

function primes(given: PrimingCase, strokes: number, greatest: number): Priming {
  const seconds = strokes / given.strokeRate;
  const wholeStrokes = Math.max(0, Math.ceil(strokes - 1e-9));
  const because = `water reaches the pump on stroke ${wholeStrokes}`;
  return { kind: "primes", strokes, wholeStrokes, seconds, greatestLift: greatest, because };
}

/**
 * Pressure left in a closed volume after strokes of a piston, p_n = p0 (V/(V + v))^n.
 *
 * @param start - pressure before, p0, [Pa]
 * @param volume - V, [m³]
 * @param stroke - v, [m³]
 * @param strokes - n, [1]
 * @returns pressure, [Pa]
 * @range isothermal, tight
 * @source Boyle's law
 */
export function pressureAfterStrokes(start: number, volume: number, stroke: number, strokes: number): number {
  return start * (volume / (volume + stroke)) ** strokes;
}

/**
 * Strokes, as a real number, to bring a closed volume to a pressure, n = ln(p0/p)/ln(1 + v/V).
 *
 * @param start - p0, [Pa]
 * @param target - p, [Pa], below p0
 * @param volume - V, [m³]
 * @param stroke - v, [m³]
 * @returns strokes, [1]
 * @range isothermal, tight
 * @source Boyle's law
 */
export function strokesToPressure(start: number, target: number, volume: number, stroke: number): number {
  return Math.log(start / target) / Math.log(1 + stroke / volume);
}

function checkPriming(given: PrimingCase): void {
  const faults: Fault[] = [];
  const limits = HYDRAULIC_LIMITS;
  checkLimit(faults, "HY-131", "", "lift", given.lift, limits.lift, "m");
  checkLimit(faults, "HY-132", "hose", "bore", given.hose.bore, limits.bore, "m");
  checkLimit(faults, "HY-133", "hose", "length", given.hose.length, limits.length, "m");
  checkLimit(
    faults,
    "HY-134",
    "hose",
    "length",
    given.hose.length,
    { atLeast: given.lift },
    "m, the hose must reach the water",
  );
  checkLimit(faults, "HY-135", "", "deadVolume", given.deadVolume, limits.deadVolume, "m³");
  checkLimit(faults, "HY-136", "", "stroke", given.stroke, limits.stroke, "m³");
  checkLimit(faults, "HY-137", "", "strokesPerMinute", given.strokeRate, limits.strokesPerMinute, "1/s");
  checkLimit(faults, "HY-138", "", "airLeak", given.airLeak, limits.airLeak, "m³/s");
  checkLimit(faults, "HY-139", "air", "pressure", given.airPressure, limits.airPressure, "Pa");
  if (faults.length > 0) throw new InputError(faults);
}
