import { nth, numberAt } from "#base";
import { chiSquareTail, factorise, solveFactorised } from "#numerics";
import { isSeen, type LifeRecord } from "./life-record.ts";
import { count, failureAges } from "./product-limit.ts";

export interface LogRank {
  readonly chiSquare: number;
  readonly degrees: number;
  readonly p: number;
}

/**
 * Whether groups fail alike: observed less expected failures, summed over the ages at which something failed.
 *
 * @param records - each end seen, or still good, with its group
 * @param groups - names, at least 2
 * @returns chi-square with its degrees of freedom and p; undefined where there is nothing to compare
 * @source Mantel, Cancer Chemother. Rep. 50 (1966) 163-170; Peto & Peto 1972 (FROM MEMORY)
 */
export function logRank(records: readonly LifeRecord[], groups: readonly string[]): LogRank | undefined {
  const free = groups.slice(1);
  const difference = free.map(() => 0);
  const variance = free.map(() => free.map(() => 0));
  for (const at of failureAges(records)) {
    const atRisk = count(records, ({ after }) => after >= at);
    const failed = count(records, (one) => isSeen(one) && one.after === at);
    const shares = free.map((group) => count(records, (one) => one.group === group && one.after >= at) / atRisk);
    const own = free.map((group) => count(records, (one) => one.group === group && isSeen(one) && one.after === at));
    const spread = atRisk > 1 ? (failed * (atRisk - failed)) / (atRisk - 1) : 0;
    for (const [i, share] of shares.entries()) {
      difference[i] = nth(difference, i) + (nth(own, i) - failed * share);
      const row = nth(variance, i);
      for (const [j, other] of shares.entries()) row[j] = nth(row, j) + spread * share * ((i === j ? 1 : 0) - other);
    }
  }
  const chiSquare = quadratic(variance, difference);
  if (chiSquare === undefined) return undefined;
  return { chiSquare, degrees: free.length, p: chiSquareTail(chiSquare, free.length) };
}

function quadratic(matrix: readonly (readonly number[])[], vector: readonly number[]): number | undefined {
  const factors = factorise(Float64Array.from(matrix.flat()), vector.length);
  if (!factors) return undefined;
  const out = new Float64Array(vector.length);
  solveFactorised(factors, (i) => nth(vector, i), out);
  return vector.reduce((sum, one, i) => sum + one * numberAt(out, i), 0);
}
