/**
 * All figures together.
 *
 * @example sum([2, 3.5]) // 5.5
 */
export function sum(figures: readonly number[]): number {
  return figures.reduce((all, one) => all + one, 0);
}
