/**
 * ψ(x), the slope of ln Γ.
 *
 * @param x - > 0 [1]
 * @returns ψ [1]
 * @range about 1e-14; recurrence up to 10, then the asymptotic series
 * @source Abramowitz & Stegun 6.3.5 and 6.3.18 (FROM MEMORY)
 * @example digamma(1) // -0.5772156649015...
 */
export function digamma(x: number): number {
  let [at, below] = [x, 0];
  for (; at < 10; at += 1) below += 1 / at;
  const inverse = 1 / (at * at);
  const series = [1 / 12, -1 / 120, 1 / 252, -1 / 240, 1 / 132].reduceRight((sum, term) => term + sum * inverse, 0);
  return Math.log(at) - 0.5 / at - series * inverse - below;
}
