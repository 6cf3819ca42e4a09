/** A place and its weight in a sum that stands for an integral. */
export interface Node {
  readonly at: number;
  readonly weight: number;
}

/**
 * Gauss-Legendre places and weights: ∫ f ≈ Σ weight · f(at), exact for polynomials of degree 2n − 1.
 *
 * @param n - number of places, 1 to 400
 * @param low - one end
 * @param high - the other end
 * @returns places from low to high
 * @range roots of the Legendre polynomial by Newton to rounding
 * @source Abramowitz & Stegun 25.4.29-30 (FROM MEMORY)
 * @example gaussNodes(2, -1, 1).map(({ at }) => at) // [-0.577350269190, 0.577350269190]
 */
export function gaussNodes(n: number, low: number, high: number): readonly Node[] {
  const half = (high - low) / 2;
  return Array.from({ length: n }, (_, i) => {
    const { root, slope } = legendreRoot(n, Math.cos((Math.PI * (n - i - 0.25)) / (n + 0.5)));
    return { at: low + half * (1 + root), weight: (2 * half) / ((1 - root * root) * slope * slope) };
  });
}

function legendreRoot(n: number, start: number): { readonly root: number; readonly slope: number } {
  let root = start;
  let slope = 0;
  for (let step = 0; step < 20; step += 1) {
    const [value, before] = legendre(n, root);
    slope = (n * (root * value - before)) / (root * root - 1);
    const change = value / slope;
    root -= change;
    if (Math.abs(change) < 1e-16) break;
  }
  return { root, slope };
}

/** Pₙ(x) and Pₙ₋₁(x). */
function legendre(n: number, x: number): readonly [number, number] {
  let [before, value] = [1, x];
  for (let k = 2; k <= n; k += 1) [before, value] = [value, ((2 * k - 1) * x * value - (k - 1) * before) / k];
  return n === 1 ? [x, 1] : [value, before];
}
