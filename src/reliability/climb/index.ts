import { factorise, solveFactorised } from "#numerics";

/** Where a log-likelihood is greatest, and its curvature there. */
export interface Summit {
  readonly at: readonly number[];
  readonly value: number;
  /** Inverse of the observed information: variances and covariances, row by row. */
  readonly covariance: readonly (readonly number[])[] | undefined;
  readonly converged: boolean;
}

/** A log-likelihood with its slope. */
export interface Hill {
  readonly value: (at: readonly number[]) => number;
  readonly slope: (at: readonly number[]) => readonly number[];
}

const STEP = 1e-3;
const LONGEST = 2;

/**
 * The greatest of a log-likelihood by Newton's method with steps cut back until they climb.
 *
 * @param hill - value and slope, smooth
 * @param start - where to begin
 * @returns the summit, with the covariance from the observed information
 * @range to where a step is below 1e-11
 * @source DERIVED; curvature by fourth-order differences of the slope
 */
export function climb(hill: Hill, start: readonly number[]): Summit {
  let at = start;
  let value = hill.value(at);
  for (let step = 0; step < 200; step += 1) {
    const next = climbed(hill, at, value);
    if (next === undefined) return { at, value, covariance: covarianceAt(hill, at), converged: isFlat(hill, at) };
    const moved = Math.max(...next.at.map((one, i) => Math.abs(one - at[i]!)));
    ({ at, value } = next);
    if (moved < 1e-11) break;
  }
  return { at, value, covariance: covarianceAt(hill, at), converged: isFlat(hill, at) };
}

function isFlat(hill: Hill, at: readonly number[]): boolean {
  return hill.slope(at).every((one) => Math.abs(one) < 1e-5 * (1 + Math.abs(hill.value(at))));
}

function climbed(hill: Hill, at: readonly number[], value: number) {
  const slope = hill.slope(at);
  const newton = solve(curvatureAt(hill, at), slope);
  const rises = newton && newton.reduce((sum, one, i) => sum + one * slope[i]!, 0) > 0;
  const way = cut(rises ? newton : slope);
  for (let size = 1; size > 1e-12; size /= 2) {
    const next = at.map((one, i) => one + size * way[i]!);
    const reached = hill.value(next);
    if (reached >= value) return { at: next, value: reached };
  }
  return undefined;
}

function cut(way: readonly number[]): readonly number[] {
  const length = Math.hypot(...way);
  return length > LONGEST ? way.map((one) => (one * LONGEST) / length) : way;
}

/** Minus the second derivatives. */
function curvatureAt(hill: Hill, at: readonly number[]): readonly (readonly number[])[] {
  const shifted = (i: number, by: number) => hill.slope(at.map((one, j) => (i === j ? one + by : one)));
  const rows = at.map((_, i) => {
    const [far, near, back, farBack] = [2, 1, -1, -2].map((times) => shifted(i, times * STEP));
    return at.map((__, j) => (far![j]! - 8 * near![j]! + 8 * back![j]! - farBack![j]!) / (12 * STEP));
  });
  return rows.map((row, i) => row.map((one, j) => (one + rows[j]![i]!) / 2));
}

function covarianceAt(hill: Hill, at: readonly number[]) {
  const curvature = curvatureAt(hill, at);
  const columns = at.map((_, k) =>
    solve(
      curvature,
      at.map((__, i) => (i === k ? 1 : 0)),
    ),
  );
  const isGood = columns.every((column, k) => column !== undefined && column[k]! > 0);
  return isGood ? columns.map((column) => column!) : undefined;
}

function solve(matrix: readonly (readonly number[])[], right: readonly number[]): number[] | undefined {
  const size = right.length;
  if (matrix.some((row) => row.some((one) => !Number.isFinite(one)))) return undefined;
  const factors = factorise(Float64Array.from(matrix.flat()), size);
  if (!factors) return undefined;
  const out = new Float64Array(size);
  solveFactorised(factors, (i) => right[i]!, out);
  return [...out].every(Number.isFinite) ? [...out] : undefined;
}
