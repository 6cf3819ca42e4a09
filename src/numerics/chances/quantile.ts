import { findRoot } from "../root.ts";

/** Smaller positive figures are told as 0. */
const SMALLEST = -690;

/**
 * The u > 0 at which a rising chance reaches p, sought in ln u so that small figures are as sharp as large ones.
 *
 * @param chance - rising from 0 to 1 over u > 0
 * @param p - strictly between 0 and 1
 * @param start - near the middle, > 0
 * @param tolerance - of ln u
 * @returns u; 0 where it is under 1e-300
 * @source DERIVED
 */
export function quantileInLogs(chance: (u: number) => number, p: number, start: number, tolerance = 1e-14): number {
  const over = (t: number) => chance(Math.exp(t)) - p;
  let low = Math.log(start);
  let high = low;
  let step = 1;
  while (over(low) > 0 && low > SMALLEST) {
    high = low;
    low = Math.max(SMALLEST, low - step);
    step *= 2;
  }
  if (over(low) > 0) return 0;
  for (step = 1; over(high) < 0 && high < -SMALLEST; step *= 2) {
    low = high;
    high = Math.min(-SMALLEST, high + step);
  }
  const found = findRoot(over, low, high, { rootTolerance: tolerance, maxIterations: 300 });
  return found.kind === "not-bracketed" ? Math.exp(high) : Math.exp(found.root);
}
