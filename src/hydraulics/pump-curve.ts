import { type Fault, firstOf, InputError, lastOf, nth, printGiven } from "#base";
import { monotoneCubic, straightSegments, type Curve } from "#numerics";
import { HYDRAULIC_LIMITS, checkLimit, isWithin } from "./limits.ts";

/** Flow [m³/s] and head [m] at one speed. */
export interface PumpPoint {
  readonly flow: number;
  readonly head: number;
}

/** A pump's head against flow at one speed. */
export interface PumpCurve {
  readonly form: "one-point" | "three-point" | "segments" | "smooth";
  /** Head at a flow [m]. */
  head(flow: number): number;
  /** Head at no flow [m]. */
  readonly shutOff: number;
  /** Flows between which the curve has one formula, from 0 to the last given point [m³/s]. */
  readonly knots: readonly number[];
  /** Lowest flow the maker gave a point for [m³/s]; below it the curve is drawn on. */
  readonly firstFlow: number;
  /** Greatest flow the maker gave a point for, or twice the single point [m³/s]; beyond it the curve is drawn on. */
  readonly lastFlow: number;
  /** True where head rises with flow somewhere: two operating points may exist. */
  readonly drooping: boolean;
}

/**
 * Pump curve through the points a maker gives.
 *
 * One point: H = 4/3·H1 − H1/3·(Q/Q1)². Three points from no flow, falling: H = H0 − r·Q^n through them, n 0.2 to 20.
 * Otherwise straight segments, drawn on beyond the last point; or, asked for, a monotone cubic.
 *
 * @param points - flow [m³/s] rising from 0 or more, head [m] 0 or more, falling at the end
 * @param between - between points: "straight" (default; a curve that bends down is never drawn too high) or "smooth"
 * @returns curve at rated speed
 * @range between the first and last point; beyond them it is an extrapolation and answers say so
 * @source EPANET 2.2 User Manual (EPA/600/R-20/133), chapter 3, pump curves
 * @throws InputError HY-101 to HY-106 with every fault in the points
 * @example pumpCurve([{ flow: 0.012, head: 18 }]).shutOff // 24
 */
export function pumpCurve(points: readonly PumpPoint[], between: "straight" | "smooth" = "straight"): PumpCurve {
  const faults: Fault[] = [];
  checkCurve(faults, points);
  if (faults.length > 0) throw new InputError(faults);
  return curveAtSpeed(points, 1, between);
}

/**
 * The curve at another speed, for points already checked: flow goes with speed, head with its square.
 *
 * H(Q) = w² · H_rated(Q/w)
 *
 * @param points - at rated speed, as {@link pumpCurve}
 * @param ratio - running speed over rated speed w, [1], 0.05 to 1.5
 * @param between - as {@link pumpCurve}
 * @returns curve at that speed
 * @range speeds near the rated one; below about half, real pumps do less than the law says
 * @source affinity laws, DOE-HDBK-1012/3-92, HT-03, p. 49
 * @example curveAtSpeed([{ flow: 0.012, head: 18 }], 0.5).shutOff // 6
 */
export function curveAtSpeed(
  points: readonly PumpPoint[],
  ratio: number,
  between: "straight" | "smooth" = "straight",
): PumpCurve {
  return new SpeedCurve(ratedCurve(points, between), ratio);
}

function ratedCurve(points: readonly PumpPoint[], between: "straight" | "smooth"): RatedCurve {
  if (points.length === 1) return onePointCurve(firstOf(points));
  return threePointCurve(points) ?? tableCurve(points, between);
}

/** Adds every fault in a pump's points; `path` names them in messages. */
export function checkCurve(faults: Fault[], points: readonly PumpPoint[], path = "pump.curve"): void {
  const before = faults.length;
  if (points.length === 0) faults.push(curveFault("HY-101", path, points, "at least one point", "Give a point."));
  for (let i = 0; i < points.length; i += 1) {
    if (!isSoundPoint(nth(points, i), points[i - 1]))
      explainPoint(faults, nth(points, i), points[i - 1], `${path}[${i}]`);
  }
  if (faults.length === before) checkShape(faults, points, path);
}

/** True for a point within limits that comes after the one before it. */
export function isSoundPoint(point: PumpPoint, before: PumpPoint | undefined): boolean {
  const inOrder = before === undefined || point.flow > before.flow;
  return inOrder && isWithin(point.flow, HYDRAULIC_LIMITS.flow) && isWithin(point.head, HYDRAULIC_LIMITS.head);
}

/** Adds what is wrong with a point. */
export function explainPoint(faults: Fault[], point: PumpPoint, before: PumpPoint | undefined, path: string): void {
  checkLimit(faults, "HY-102", path, "flow", point.flow, HYDRAULIC_LIMITS.flow, "m³/s");
  checkLimit(faults, "HY-103", path, "head", point.head, HYDRAULIC_LIMITS.head, "m");
  if (before === undefined || point.flow > before.flow) return;
  const remedy = "Order the points by flow, each flow once.";
  faults.push(curveFault("HY-104", `${path}.flow`, point.flow, `more than ${before.flow}`, remedy));
}

function checkShape(faults: Fault[], points: readonly PumpPoint[], path: string): void {
  const last = lastOf(points);
  const before = points[points.length - 2];
  if (!before && !(last.flow > 0 && last.head > 0)) {
    faults.push(curveFault("HY-105", path, last, "a flow and a head above 0", "Give the duty point."));
  }
  if (before && !(last.head < before.head)) {
    const remedy = "Give a point at greater flow.";
    faults.push(curveFault("HY-106", path, last, "a head that falls at the last point", remedy));
  }
}

function curveFault(code: string, field: string, got: unknown, allowed: string, remedy: string): Fault {
  return { code, field, got: printGiven(got), allowed, remedy };
}

/** x^n for x of 0 or more and n above 0; half the time of the general power, to the last digit or two. */
function powerOf(x: number, n: number): number {
  return n === 2 ? x * x : Math.exp(n * Math.log(x));
}

/** What a curve is at rated speed: a power law, or a table. */
interface RatedCurve {
  readonly form: PumpCurve["form"];
  readonly shutOff: number;
  /** H = shutOff − fall·Q^exponent, where there is no table. */
  readonly fall: number;
  readonly exponent: number;
  readonly table: Curve | undefined;
  readonly knots: readonly number[];
  readonly firstFlow: number;
  readonly lastFlow: number;
  readonly drooping: boolean;
}

/** A curve at a speed ratio; one class for every form, so that the solver's inner loop always meets the same shape. */
class SpeedCurve implements PumpCurve {
  readonly form: PumpCurve["form"];
  readonly shutOff: number;
  readonly knots: readonly number[];
  readonly firstFlow: number;
  readonly lastFlow: number;
  readonly drooping: boolean;
  readonly #rated: RatedCurve;
  readonly #ratio: number;

  constructor(rated: RatedCurve, ratio: number) {
    this.#rated = rated;
    this.#ratio = ratio;
    this.form = rated.form;
    this.shutOff = ratio * ratio * rated.shutOff;
    this.knots = ratio === 1 ? rated.knots : rated.knots.map((flow) => flow * ratio);
    this.firstFlow = rated.firstFlow * ratio;
    this.lastFlow = rated.lastFlow * ratio;
    this.drooping = rated.drooping;
  }

  head(flow: number): number {
    const { table, shutOff, fall, exponent } = this.#rated;
    const at = flow / this.#ratio;
    const rated = table ? table.value(at) : shutOff - fall * powerOf(at, exponent);
    return this.#ratio * this.#ratio * rated;
  }
}

function onePointCurve({ flow, head }: PumpPoint): RatedCurve {
  return powerCurve("one-point", (4 / 3) * head, head / 3 / flow ** 2, 2, 2 * flow);
}

function powerCurve(
  form: PumpCurve["form"],
  shutOff: number,
  fall: number,
  exponent: number,
  lastFlow: number,
): RatedCurve {
  const knots = [0, lastFlow];
  return { form, shutOff, fall, exponent, table: undefined, knots, firstFlow: 0, lastFlow, drooping: false };
}

/**
 * Exponents a three-point power curve may have; the upper limit is the EPA model's. Below the lower one the curve
 * drops like a wall from no flow, which no pump does, and straight segments are drawn instead.
 */
const POWER_EXPONENT = { atLeast: 0.2, atMost: 20 } as const;

/** The power curve through three points, where they allow one. */
function threePointCurve(points: readonly PumpPoint[]): RatedCurve | undefined {
  const [first, second, third] = points;
  if (points.length !== 3 || !first || !second || !third || first.flow !== 0) return undefined;
  if (!(first.head > second.head && second.head > third.head)) return undefined;
  const exponent = powerExponent(first.head, second, third);
  if (exponent < POWER_EXPONENT.atLeast || exponent > POWER_EXPONENT.atMost) return undefined;
  const fall = (first.head - second.head) / second.flow ** exponent;
  return powerCurve("three-point", first.head, fall, exponent, third.flow);
}

/**
 * Exponent of the three-point power curve, n = ln[(H0 − H2)/(H0 − H1)] / ln(Q2/Q1).
 *
 * @param shutOff - H0, [m]
 * @param second - Q1, H1
 * @param third - Q2, H2
 * @returns exponent, [1]
 * @range H0 > H1 > H2, Q2 > Q1 > 0
 * @source EPANET 2.2 User Manual, chapter 3
 */
export function powerExponent(shutOff: number, second: PumpPoint, third: PumpPoint): number {
  return Math.log((shutOff - third.head) / (shutOff - second.head)) / Math.log(third.flow / second.flow);
}

function tableCurve(points: readonly PumpPoint[], between: "straight" | "smooth"): RatedCurve {
  const pairs = points.map(({ flow, head }) => ({ x: flow, y: head }));
  const table = between === "smooth" ? monotoneCubic(pairs) : straightSegments(pairs);
  const flows = points.map((point) => point.flow);
  return {
    form: between === "smooth" ? "smooth" : "segments",
    shutOff: table.value(0),
    fall: 0,
    exponent: 0,
    table,
    knots: flows[0] === 0 ? flows : [0, ...flows],
    firstFlow: firstOf(flows),
    lastFlow: lastOf(flows),
    drooping: points.some((point, i) => i > 0 && point.head >= nth(points, i - 1).head),
  };
}
