/** Sums and roots the judges of `#flooding` use: plain, slow, and none of the program's own. */

/** Points and weights of the eight-point Gauss-Legendre rule on −1 … 1; each point stands for ± itself. */
const GAUSS = [
  [0.1834346424956498, 0.362683783378362],
  [0.525532409916329, 0.3137066458778873],
  [0.7966664774136267, 0.2223810344533745],
  [0.9602898564975363, 0.1012285362903763],
] as const;

/** ∫ f dx by eight Gauss points in each of so many equal panels; f must be smooth but for a few corners. */
export function integral(f: (x: number) => number, from: number, to: number, panels = 64): number {
  const half = (to - from) / panels / 2;
  let sum = 0;
  for (let k = 0; k < panels; k += 1) {
    const middle = from + (2 * k + 1) * half;
    for (const [point, weight] of GAUSS) sum += weight * (f(middle - half * point) + f(middle + half * point));
  }
  return sum * half;
}

/** The same in pieces, split at each of the corners that lies between. */
export function integralBetween(f: (x: number) => number, limits: readonly number[], panels = 64): number {
  return limits.slice(1).reduce((sum, to, k) => sum + integral(f, limits[k]!, to, panels), 0);
}

/** Where f changes sign between two places, halved until nothing is left between. */
export function rootBetween(f: (x: number) => number, low: number, high: number): number {
  const isRising = f(high) > 0;
  if (f(low) > 0 === isRising) throw new Error(`No change of sign between ${low} and ${high}.`);
  let [left, right] = [low, high];
  for (let k = 0; k < 200; k += 1) {
    const middle = (left + right) / 2;
    if (f(middle) > 0 === isRising) right = middle;
    else left = middle;
  }
  return (left + right) / 2;
}
