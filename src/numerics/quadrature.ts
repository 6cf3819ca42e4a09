import { nth } from "#base";

/** What an integration came to. */
export interface Quadrature {
  readonly kind: "converged" | "not-converged";
  readonly value: number;
  /** Estimate of the absolute error; usually far too large. */
  readonly error: number;
  readonly evaluations: number;
}

export interface QuadratureOptions {
  /** Default 1e-12. */
  readonly absoluteTolerance?: number;
  /** Default 1e-10. */
  readonly relativeTolerance?: number;
  /** Most intervals the range is cut into; default 200. */
  readonly maxIntervals?: number;
}

// Nodes and weights of the 15-point Kronrod rule and its 7-point Gauss rule: QUADPACK, dqk15.
const NODES = [
  0.9914553711208126, 0.9491079123427585, 0.8648644233597691, 0.7415311855993945, 0.5860872354676911,
  0.4058451513773972, 0.2077849550078985, 0,
] as const;
const KRONROD = [
  0.02293532201052922, 0.06309209262997856, 0.10479001032225019, 0.1406532597155259, 0.1690047266392679,
  0.1903505780647854, 0.2044329400752989, 0.20948214108472782,
] as const;
const GAUSS = [0, 0.1294849661688697, 0, 0.2797053914892767, 0, 0.3818300505051189, 0, 0.4179591836734694] as const;

interface Interval {
  readonly from: number;
  readonly to: number;
  readonly value: number;
  readonly error: number;
}

/**
 * Integral of a function over a finite range.
 *
 * Gauss-Kronrod 7-15 on each interval; the interval with the greatest error estimate is halved until the sum of
 * the estimates is within tolerance.
 *
 * @param f - finite on the range
 * @param from - start, [unit of x]
 * @param to - end, [unit of x]
 * @param options - tolerances and limits
 * @returns value and error estimate, and whether the tolerance was met
 * @range finite ranges; a jump inside costs intervals but is found
 * @source R. Piessens and others, QUADPACK, 1983, QAG
 * @example integrate(Math.sin, 0, Math.PI).value // 2
 */
export function integrate(
  f: (x: number) => number,
  from: number,
  to: number,
  options: QuadratureOptions = {},
): Quadrature {
  const { absoluteTolerance = 1e-12, relativeTolerance = 1e-10, maxIntervals = 200 } = options;
  const intervals = [gaussKronrod(f, from, to)];
  for (;;) {
    const value = sum(intervals, "value");
    const error = sum(intervals, "error");
    const evaluations = 15 * (2 * intervals.length - 1);
    const done = error <= Math.max(absoluteTolerance, relativeTolerance * Math.abs(value));
    if (done || intervals.length >= maxIntervals) {
      return { kind: done ? "converged" : "not-converged", value, error, evaluations };
    }
    halveWorst(f, intervals);
  }
}

function halveWorst(f: (x: number) => number, intervals: Interval[]): void {
  let worst = 0;
  for (let i = 1; i < intervals.length; i += 1) if (nth(intervals, i).error > nth(intervals, worst).error) worst = i;
  const { from, to } = nth(intervals, worst);
  const middle = (from + to) / 2;
  intervals.splice(worst, 1, gaussKronrod(f, from, middle), gaussKronrod(f, middle, to));
}

function gaussKronrod(f: (x: number) => number, from: number, to: number): Interval {
  const centre = (from + to) / 2;
  const half = (to - from) / 2;
  const atCentre = f(centre);
  let kronrod = KRONROD[7] * atCentre;
  let gauss = GAUSS[7] * atCentre;
  for (let i = 0; i < 7; i += 1) {
    const pair = f(centre - half * nth(NODES, i)) + f(centre + half * nth(NODES, i));
    kronrod += nth(KRONROD, i) * pair;
    gauss += nth(GAUSS, i) * pair;
  }
  return { from, to, value: half * kronrod, error: Math.abs(half * (kronrod - gauss)) };
}

function sum(intervals: readonly Interval[], what: "value" | "error"): number {
  return intervals.reduce((total, interval) => total + interval[what], 0);
}
