import { factorise, solveFactorised, type Factors } from "./ode-linear.ts";
import type { ErrorScale, Interpolant, Jacobian, Rate, Stepper } from "./ode-contract.ts";

// RODAS3, order 3(2), four stages, L-stable and stiffly accurate: Sandu, Verwer, Blom, Spee, Carmichael, Potra,
// Benchmarking stiff ODE solvers for atmospheric chemistry problems II, Atmos. Environ. 31 (1997) 3459-3472
// (FROM MEMORY; the order is measured in ode.laws.test.ts). It strides over fast equalisation that holds an
// explicit method short.
const GAMMA = 0.5;

interface Work {
  readonly slope: Float64Array;
  readonly later: Float64Array;
  readonly drift: Float64Array;
  readonly point: Float64Array;
  readonly before: Float64Array;
  readonly next: Float64Array;
  readonly k: readonly [Float64Array, Float64Array, Float64Array, Float64Array];
}

function makeWork(size: number): Work {
  const row = (): Float64Array => new Float64Array(size);
  return {
    slope: row(),
    later: row(),
    drift: row(),
    point: row(),
    before: row(),
    next: row(),
    k: [row(), row(), row(), row()],
  };
}

/** The stiff method. The Jacobian is given or taken by differences. */
export function rosenbrock(rate: Rate, size: number, scale: ErrorScale, jacobian?: Jacobian): Stepper {
  const work = makeWork(size);
  const slopes = new Float64Array(size * size);
  const takeSlopes = jacobian ?? differences(rate, size);
  let length = 0;
  let end = Number.NaN;
  let seen = Number.NaN;

  function look(t: number, y: Float64Array, h: number): void {
    rate(t, y, work.slope);
    takeSlopes(t, y, slopes);
    const nudge = Math.max(1e-6 * Math.abs(h), 1e-9 * Math.abs(t));
    rate(t + nudge, y, work.drift);
    for (let i = 0; i < size; i += 1) work.drift[i] = (work.drift[i]! - work.slope[i]!) / nudge;
    seen = t;
  }

  return {
    order: 3,
    next: work.next,
    attempt(t, y, h) {
      if (t !== seen) look(t, y, h);
      length = h;
      end = t + h;
      work.before.set(y);
      const factors = factorise(shifted(slopes, size, h), size);
      if (factors === undefined) return Number.POSITIVE_INFINITY;
      runStages(rate, t, h, factors, work);
      return errorOf(work, scale);
    },
    accept() {
      rate(end, work.next, work.later);
      return hermite(work, length);
    },
    isHeldShort: () => false,
  };
}

function runStages(rate: Rate, t: number, h: number, factors: Factors, work: Work): void {
  const { slope, later, drift, point, before, next } = work;
  const [k1, k2, k3, k4] = work.k;
  solveFactorised(factors, (i) => slope[i]! + 0.5 * h * drift[i]!, k1);
  solveFactorised(factors, (i) => slope[i]! + (4 * k1[i]!) / h + 1.5 * h * drift[i]!, k2);
  for (let i = 0; i < point.length; i += 1) point[i] = before[i]! + 2 * k1[i]!;
  rate(t + h, point, later);
  solveFactorised(factors, (i) => later[i]! + (k1[i]! - k2[i]!) / h, k3);
  for (let i = 0; i < point.length; i += 1) point[i]! += k3[i]!;
  rate(t + h, point, later);
  solveFactorised(factors, (i) => later[i]! + (k1[i]! - k2[i]! - (8 / 3) * k3[i]!) / h, k4);
  for (let i = 0; i < point.length; i += 1) next[i] = point[i]! + k4[i]!;
}

function errorOf(work: Work, scale: ErrorScale): number {
  let worst = 0;
  for (let i = 0; i < work.next.length; i += 1) {
    const size = Math.max(Math.abs(work.before[i]!), Math.abs(work.next[i]!));
    const error = Math.abs(work.k[3][i]!) / (scale.absolute + scale.relative * size);
    if (!(error <= worst)) worst = error;
  }
  return worst;
}

/** Cubic through both ends with both slopes. */
function hermite(work: Work, h: number): Interpolant {
  const [y0, y1] = [work.before.slice(), work.next.slice()];
  const [f0, f1] = [work.slope.slice(), work.later.slice()];
  return (theta, out) => {
    const rest = 1 - theta;
    for (let i = 0; i < y0.length; i += 1) {
      const bend = (1 - 2 * theta) * (y1[i]! - y0[i]!) + h * ((theta - 1) * f0[i]! + theta * f1[i]!);
      out[i] = rest * y0[i]! + theta * y1[i]! - theta * rest * bend;
    }
  };
}

function shifted(slopes: Float64Array, size: number, h: number): Float64Array {
  const matrix = new Float64Array(size * size);
  for (let i = 0; i < size * size; i += 1) matrix[i] = -slopes[i]!;
  for (let i = 0; i < size; i += 1) matrix[i * size + i]! += 1 / (GAMMA * h);
  return matrix;
}

function differences(rate: Rate, size: number): Jacobian {
  const [base, moved, point] = [new Float64Array(size), new Float64Array(size), new Float64Array(size)];
  return (t, y, out) => {
    rate(t, y, base);
    point.set(y);
    for (let j = 0; j < size; j += 1) {
      const nudge = 1e-7 * Math.max(1e-3, Math.abs(y[j]!));
      point[j] = y[j]! + nudge;
      rate(t, point, moved);
      point[j] = y[j]!;
      for (let i = 0; i < size; i += 1) out[i * size + j] = (moved[i]! - base[i]!) / nudge;
    }
  };
}
