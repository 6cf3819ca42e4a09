/** What a search for a root came to. */
export type RootOutcome =
  | {
      readonly kind: "found";
      readonly root: number;
      /** Value of the function at the root. */
      readonly residual: number;
      readonly iterations: number;
      /** Last interval known to hold the root. */
      readonly bracket: readonly [number, number];
    }
  | { readonly kind: "not-bracketed"; readonly because: string; readonly values: readonly [number, number] }
  | {
      readonly kind: "not-converged";
      readonly because: string;
      readonly root: number;
      readonly residual: number;
      readonly iterations: number;
      readonly bracket: readonly [number, number];
    };

export interface RootOptions {
  /** Stop when |f| is at most this; default 0, which leaves only the interval to end the search. */
  readonly residualTolerance?: number;
  /** Stop when the interval is this narrow, beside the last few digits of the root; default 0. */
  readonly rootTolerance?: number;
  /** Default 100. */
  readonly maxIterations?: number;
  /** Values of the function at the two ends, where they are known already. */
  readonly ends?: readonly [number, number];
}

interface BrentState {
  /** Best root so far, the one before it, and the other end of the bracket, with their function values. */
  b: number;
  fb: number;
  a: number;
  fa: number;
  c: number;
  fc: number;
  step: number;
  lastStep: number;
}

/**
 * Root of a continuous function between two points where its sign differs.
 *
 * Brent's method: inverse quadratic interpolation or the secant where they behave, bisection where they do not,
 * so that the bracket always holds the root.
 *
 * @param f - continuous on the interval
 * @param low - one end, [unit of x]
 * @param high - the other end, [unit of x]
 * @param options - tolerances and limits
 * @returns the root with its residual and bracket, or why there is none
 * @range any interval on which f is finite
 * @source R. P. Brent, Algorithms for Minimization without Derivatives, 1973, chapter 4
 * @example findRoot((x) => x * x - 2, 0, 2) // { kind: "found", root: 1.414..., ... }
 */
export function findRoot(f: (x: number) => number, low: number, high: number, options: RootOptions = {}): RootOutcome {
  const fLow = options.ends ? options.ends[0] : f(low);
  const fHigh = options.ends ? options.ends[1] : f(high);
  if (fLow > 0 === fHigh > 0 && fLow !== 0 && fHigh !== 0) {
    const because = `the function has the same sign at ${low} and at ${high}`;
    return { kind: "not-bracketed", because, values: [fLow, fHigh] };
  }
  return iterate(f, begin(low, fLow, high, fHigh), options);
}

function begin(low: number, fLow: number, high: number, fHigh: number): BrentState {
  const width = high - low;
  return { a: low, fa: fLow, b: high, fb: fHigh, c: low, fc: fLow, step: width, lastStep: width };
}

function iterate(f: (x: number) => number, s: BrentState, options: RootOptions): RootOutcome {
  const { residualTolerance = 0, rootTolerance = 0, maxIterations = 100 } = options;
  for (let iterations = 0; iterations <= maxIterations; iterations += 1) {
    orderBracket(s);
    const tolerance = 2 * Number.EPSILON * Math.abs(s.b) + rootTolerance / 2;
    const half = (s.c - s.b) / 2;
    if (Math.abs(s.fb) <= residualTolerance || Math.abs(half) <= tolerance) return settle(s, iterations);
    chooseStep(s, half, tolerance);
    advance(f, s, half, tolerance);
  }
  const because = `no convergence in ${maxIterations} steps`;
  return { ...settle(s, maxIterations), kind: "not-converged", because };
}

/** Keeps b the better end and c on the other side of the root. */
function orderBracket(s: BrentState): void {
  if (s.fb > 0 === s.fc > 0 && s.fb !== 0) {
    s.c = s.a;
    s.fc = s.fa;
    s.step = s.b - s.a;
    s.lastStep = s.step;
  }
  if (Math.abs(s.fc) >= Math.abs(s.fb)) return;
  s.a = s.b;
  s.b = s.c;
  s.c = s.a;
  s.fa = s.fb;
  s.fb = s.fc;
  s.fc = s.fa;
}

function chooseStep(s: BrentState, half: number, tolerance: number): void {
  const trial = Math.abs(s.lastStep) < tolerance || Math.abs(s.fa) <= Math.abs(s.fb) ? undefined : interpolate(s, half);
  const limit = trial && Math.min(3 * Math.abs(half) - tolerance, Math.abs(s.lastStep));
  if (trial !== undefined && limit !== undefined && 2 * Math.abs(trial) < limit && trial > 0 === half > 0) {
    s.lastStep = s.step;
    s.step = trial;
    return;
  }
  s.lastStep = half;
  s.step = half;
}

/** Step from b by the secant, or by inverse quadratic interpolation where three points differ. */
function interpolate(s: BrentState, half: number): number {
  const r = s.fb / s.fa;
  if (s.a === s.c) return (2 * half * r) / (r - 1);
  const q = s.fa / s.fc;
  const t = s.fb / s.fc;
  return (-r * (2 * half * q * (q - t) - (s.b - s.a) * (t - 1))) / ((q - 1) * (t - 1) * (r - 1));
}

function advance(f: (x: number) => number, s: BrentState, half: number, tolerance: number): void {
  s.a = s.b;
  s.fa = s.fb;
  s.b += Math.abs(s.step) > tolerance ? s.step : half > 0 ? tolerance : -tolerance;
  s.fb = f(s.b);
}

function settle(s: BrentState, iterations: number): Extract<RootOutcome, { kind: "found" }> {
  const bracket = [Math.min(s.b, s.c), Math.max(s.b, s.c)] as const;
  return { kind: "found", root: s.b, residual: s.fb, iterations, bracket };
}
