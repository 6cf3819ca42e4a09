import type { Posterior } from "./sounding-sampler.ts";

/** Strips of equal weight the points are put in, by the first of two unknowns. */
const STRIPS = 32;
/** Points that weigh less than this are never picked [share of one pick]. */
const TOO_LIGHT = 1e-4;

/**
 * Equally weighted points of a belief: evenly spaced picks along the summed weights, the points in strips by one
 * unknown and within each by another, up one strip and down the next. So the picks are spread over both as evenly as
 * the points themselves, and what is read off them differs little from what all points say.
 *
 * @param belief - weighted points
 * @param count - how many
 * @param along - numbers of the two unknowns
 * @returns numbers of the points picked
 * @source systematic resampling, Carpenter, Clifford & Fearnhead, Improved particle filter for nonlinear problems, 1999
 *   (FROM MEMORY); the order of the points DERIVED
 */
export function pickEvenly(belief: Posterior, count: number, along: readonly [number, number]): Int32Array {
  const { weights } = belief;
  const order = inStrips(belief, TOO_LIGHT / count, along);
  const picks = new Int32Array(count);
  const all = order.reduce((sum, n) => sum + weights[n]!, 0);
  let place = 0;
  let sum = weights[order[0]!]!;
  for (let k = 0; k < count; k += 1) {
    const target = ((k + 0.5) / count) * all;
    while (sum < target && place < order.length - 1) sum += weights[order[(place += 1)]!]!;
    picks[k] = order[place]!;
  }
  return picks;
}

function inStrips(
  { points, weights, dimensions }: Posterior,
  least: number,
  along: readonly [number, number],
): Int32Array {
  const kept = Int32Array.from(weights.keys()).filter((n) => weights[n]! >= least);
  const first = sortedBy(kept, (n) => points[n * dimensions + along[0]]!);
  const keys = new Float64Array(weights.length);
  let sum = 0;
  for (const n of first) {
    const strip = Math.floor(sum * STRIPS);
    const across = Math.tanh(points[n * dimensions + along[1]]! / 4);
    keys[n] = 2 * strip + (strip % 2 === 0 ? across : -across);
    sum += weights[n]!;
  }
  return sortedBy(first, (n) => keys[n]!);
}

function sortedBy(members: Int32Array, keyOf: (n: number) => number): Int32Array {
  return members.toSorted((a, b) => keyOf(a) - keyOf(b));
}
