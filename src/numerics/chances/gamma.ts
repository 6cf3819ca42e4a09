import { assert } from "#base";
import { gammaChance } from "../distributions.ts";
import { quantileInLogs } from "./quantile.ts";

/**
 * The x with P(a, x) = p: the quantile of a gamma of shape a and rate 1.
 *
 * @param p - chance, strictly between 0 and 1 [1]
 * @param a - shape, > 0 [1]
 * @returns x [1]
 * @range about 1e-12 relative; 0 where x would be under 1e-300
 * @source DERIVED: root of `gammaChance`
 * @example gammaQuantile(0.5, 1) // 0.69314718056
 */
export function gammaQuantile(p: number, a: number): number {
  assert(p > 0 && p < 1 && a > 0, `gamma quantile of p = ${p}, a = ${a}`);
  return quantileInLogs((x) => gammaChance(a, x), p, a);
}
