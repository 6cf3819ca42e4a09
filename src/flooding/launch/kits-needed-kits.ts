import { numberAt } from "#base";
import { normalChance, normalQuantile, repeatableStream } from "#numerics";
import type { KitToTake, ShareAt } from "./kits-needed-call.ts";

const DRAWN = 4096;
/** Part of what makes a kit move less than stated that is the same for all: deck height, hoses, the hands at it [1]. */
const SHARED = 0.5;

/** What the first so many kits move together, over many nights: sorted, so that a chance is a place in it [m³/s]. */
export type Together = readonly Float64Array[];

/**
 * What one, two, … kits move together on the night. Each has its own share of its flow, half of the doubt shared with the
 * others, and its own chance of not starting or not priming.
 *
 * @param kits - in the order in which they are taken
 * @param share - share of its flow that a kit moves
 * @returns for each number of kits, flows of 4096 nights in rising order
 * @range up to a dozen kits
 * @source share: docs/methods/soundings.md, "On scene: one belief for the sheet"; half shared: this program's judgement
 */
export function moveTogether(kits: readonly KitToTake[], share: ShareAt): Together {
  const next = repeatableStream(11);
  const common = Float64Array.from({ length: DRAWN }, () => normalQuantile(next()));
  const sums = new Float64Array(DRAWN);
  return kits.map((kit) => {
    for (let n = 0; n < DRAWN; n += 1) {
      const own = normalQuantile(next());
      const z = Math.sqrt(SHARED) * numberAt(common, n) + Math.sqrt(1 - SHARED) * own;
      sums[n] = numberAt(sums, n) + (next() < kit.starts ? kit.flow * share(normalChance(z)) : 0);
    }
    return sums.slice().sort();
  });
}

/**
 * Chance that so many kits move at least this.
 *
 * @param sorted - one of what `moveTogether` returns
 * @param flow - [m³/s]
 * @returns 0 to 1
 * @source share of the drawn nights
 */
export function chanceToMove(sorted: Float64Array, flow: number): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (numberAt(sorted, middle) < flow) low = middle + 1;
    else high = middle;
  }
  return (sorted.length - low) / sorted.length;
}

/**
 * What one kit moves on the night, once it runs.
 *
 * @param flow - as stated, or as last proved [m³/s]
 * @param share - share of its flow that a kit moves
 * @returns the middle and what nine nights in ten lie between [m³/s]
 * @range any flow
 * @source its quantiles at 0.05, 0.5 and 0.95
 */
export function kitMoves(
  flow: number,
  share: ShareAt,
): { readonly p05: number; readonly p50: number; readonly p95: number } {
  return { p05: flow * share(0.05), p50: flow * share(0.5), p95: flow * share(0.95) };
}
