import { assert } from "#base";
import { logGamma } from "../distributions.ts";
import { quantileInLogs } from "./quantile.ts";

/** What Stirling's formula leaves of ln Γ: δ(x) = ln Γ(x) − [(x − ½) ln x − x + ½ ln 2π], for x of 10 and more. */
function stirlingRest(x: number): number {
  const inverse = 1 / (x * x);
  const series = [1 / 12, -1 / 360, 1 / 1260, -1 / 1680, 1 / 1188, -691 / 360_360];
  return series.reduceRight((sum, term) => sum * inverse + term, 0) / x;
}

/**
 * ln B(a, b) = ln Γ(a) + ln Γ(b) − ln Γ(a + b), with its figures kept where a or b is large.
 *
 * @param a - > 0 [1]
 * @param b - > 0 [1]
 * @returns ln B [1]
 * @range about 1e-14 relative
 * @source Didonato & Morris, ACM TOMS 18 (1992) 360-373, algorithm 708 (FROM MEMORY)
 * @example logBeta(2, 3) // -2.484906649788
 */
export function logBeta(a: number, b: number): number {
  const [p, q] = a < b ? [a, b] : [b, a];
  assert(p > 0, `ln B of a = ${a}, b = ${b}`);
  if (q < 10) return logGamma(p) + logGamma(q) - logGamma(p + q);
  const share = p / (p + q);
  const rest = stirlingRest(q) - stirlingRest(p + q);
  if (p < 10) return logGamma(p) + rest + p - p * Math.log(p + q) + (q - 0.5) * Math.log1p(-share);
  const both = stirlingRest(p) + rest + 0.5 * Math.log(2 * Math.PI) - 0.5 * Math.log(q);
  return both + (p - 0.5) * Math.log(share) + q * Math.log1p(-share);
}

/**
 * The regularised incomplete beta function I_x(a, b): the chance that a beta(a, b) lies at or below x.
 *
 * @param x - 0 to 1 [1]
 * @param a - > 0 [1]
 * @param b - > 0 [1]
 * @returns I, 0 to 1 [1]
 * @range continued fraction (modified Lentz), on the side where it converges; about 1e-12 for a + b up to 1e6
 * @source Abramowitz & Stegun 26.5.8 (FROM MEMORY)
 * @example betaChance(0.5, 2, 3) // 0.6875
 */
export function betaChance(x: number, a: number, b: number): number {
  assert(x >= 0 && x <= 1 && a > 0 && b > 0, `beta chance of x = ${x}, a = ${a}, b = ${b}`);
  if (x === 0 || x === 1) return x;
  return x < (a + 1) / (a + b + 2) ? lowerPart(x, 1 - x, a, b) : 1 - lowerPart(1 - x, x, b, a);
}

function lowerPart(x: number, rest: number, a: number, b: number): number {
  const front = Math.exp(a * Math.log(x) + b * Math.log(rest) - logBeta(a, b)) / a;
  return front * betaFraction(x, a, b);
}

function betaFraction(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  let c = 1;
  let d = 1 / (1 - ((a + b) * x) / (a + 1) || tiny);
  let value = d;
  for (let m = 1; m < 100_000; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    for (const term of [even, odd]) {
      d = 1 / (1 + term * d || tiny);
      c = 1 + term / c || tiny;
      value *= d * c;
    }
    if (Math.abs(d * c - 1) < 1e-16) break;
  }
  return value;
}

/**
 * The x with I_x(a, b) = p.
 *
 * @param p - chance, 0 to 1 [1]
 * @param a - > 0 [1]
 * @param b - > 0 [1]
 * @returns x, 0 to 1 [1]
 * @range about 1e-12 relative; 0 where x would be under 1e-300
 * @source DERIVED: root of `betaChance`
 * @example betaQuantile(0.05, 0.5, 20.5) // 0.0000970...
 */
export function betaQuantile(p: number, a: number, b: number): number {
  assert(p >= 0 && p <= 1, `a chance from 0 to 1, got ${p}`);
  if (p === 0 || p === 1) return p;
  const isLow = p < betaChance(a / (a + b), a, b);
  const mean = isLow ? a / (a + b) : b / (a + b);
  const odds = isLow
    ? quantileInLogs((u) => betaChance(u / (1 + u), a, b), p, mean / (1 - mean))
    : quantileInLogs((u) => betaChance(u / (1 + u), b, a), 1 - p, mean / (1 - mean));
  return isLow ? odds / (1 + odds) : 1 / (1 + odds);
}
