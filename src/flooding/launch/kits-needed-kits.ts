import { numberAt } from "#base";
import { normalChance, normalQuantile, repeatableStream } from "#numerics";
import type { KitToTake, ShareAt } from "./kits-needed-call.ts";

const DRAWN = 4096;
/** Part of what makes a kit move less than stated that is the same for all: deck height, hoses, the hands at it [1]. */
const SHARED = 0.5;

/** What the first so many kits move together, over many nights: sorted, so that a chance is a place in it [m³/s]. */
export type Together = readonly Float64Array[];

/** Of the same nights: kits that start as often as told, as seldom and as often as nine times in ten they may. */
export interface MoveAtEnds {
  readonly told: Together;
  readonly low: Together;
  readonly high: Together;
}

/**
 * What one, two, … kits move together on the night. Each has its own share of its flow, half of the doubt shared with the
 * others, and its own chance of not starting or not priming: as told, and with every kit at the low, and at the high end of what
 * is known of it, as what is not known of one is not known of all. A kit of which no range is known stays as it is.
 *
 * @param kits - in the order in which they are taken
 * @param share - share of its flow that a kit moves
 * @returns for each number of kits, flows of 4096 nights in rising order
 * @range up to a dozen kits
 * @source share: docs/methods/soundings.md, "On scene: one belief for the sheet"; half shared: this program's judgement
 */
export function moveAtEnds(kits: readonly KitToTake[], share: ShareAt): MoveAtEnds {
  const [told, low, high] = moveInCases(kits, share, [({ starts }) => starts, startsAt("p05"), startsAt("p95")]);
  return { told: told!, low: low!, high: high! };
}

function startsAt(end: "p05" | "p95"): (kit: KitToTake) => number {
  return ({ starts, startsSpread }) => startsSpread?.[end] ?? starts;
}

/** One stream of nights for all cases, so that they differ by nothing else. */
function moveInCases(
  kits: readonly KitToTake[],
  share: ShareAt,
  cases: readonly ((kit: KitToTake) => number)[],
): readonly Together[] {
  const next = repeatableStream(11);
  const common = Float64Array.from({ length: DRAWN }, () => normalQuantile(next()));
  const sums = cases.map(() => new Float64Array(DRAWN));
  const byKits = kits.map((kit) => {
    const starts = cases.map((startsOf) => startsOf(kit));
    for (let n = 0; n < DRAWN; n += 1) {
      const own = normalQuantile(next());
      const z = Math.sqrt(SHARED) * numberAt(common, n) + Math.sqrt(1 - SHARED) * own;
      const moved = kit.flow * share(normalChance(z));
      const drawn = next();
      for (const [i, sum] of sums.entries()) if (drawn < starts[i]!) sum[n] = numberAt(sum, n) + moved;
    }
    return sums.map((sum) => sum.slice().sort());
  });
  return cases.map((_, i) => byKits.map((lists) => lists[i]!));
}

/** Flows with their places from the least to the greatest. */
export interface Ordered {
  readonly flows: Float64Array;
  readonly places: Uint32Array;
}

/** Puts flows in order once, for {@link chancesToMove}. */
export function ordered(flows: Float64Array): Ordered {
  return { flows, places: Uint32Array.from(flows.keys()).sort((one, other) => flows[one]! - flows[other]!) };
}

/**
 * Chance that so many kits move at least this, for each of many flows: one way through both lists.
 *
 * @param sorted - one of what `moveTogether` returns
 * @param wanted - flows [m³/s]
 * @param factor - on all of them [1]
 * @returns 0 to 1 for each flow, in the order of the flows
 * @source share of the drawn nights
 */
export function chancesToMove(sorted: Float64Array, { flows, places }: Ordered, factor = 1): Float64Array {
  const chances = new Float64Array(flows.length);
  let below = 0;
  for (const place of places) {
    const flow = factor * numberAt(flows, place);
    while (below < sorted.length && numberAt(sorted, below) < flow) below += 1;
    chances[place] = (sorted.length - below) / sorted.length;
  }
  return chances;
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
