import { poissonChances } from "#numerics";

/** How a stock of one part stands against what is out on order, one for one. */
export interface StockPoint {
  /** P(N ≤ s): no demand waits [1]. */
  readonly noShortage: number;
  /** P(N ≤ s − 1): a demand is filled at once [1]. */
  readonly fillRate: number;
  /** Demands waiting, on average [parts]. */
  readonly expectedBackorders: number;
}

/** More than this many of one part are never asked for. */
export const MOST_STOCK = 2000;

/**
 * How a stock serves a Poisson demand over the time until a part bought comes in.
 *
 * EBO(s) = EBO(s − 1) − P(N ≥ s), EBO(0) = μ
 *
 * @param pipeline - μ, demands in the lead time, to be expected [1]
 * @param stock - s, whole, 0 to 2000
 * @returns chance of no shortage, fill rate and expected backorders
 * @source Sherbrooke, Optimal Inventory Modeling of Systems, 2004 (FROM MEMORY); Palm's theorem
 * @example stockOf(1, 2) // { noShortage: 0.9197, fillRate: 0.7358, expectedBackorders: 0.1036, ... }
 */
export function stockOf(pipeline: number, stock: number): StockPoint {
  const chances = poissonChances(pipeline, stock + TAIL + Math.ceil(2 * pipeline));
  const upTo = (s: number) => chances.slice(0, s + 1).reduce((sum, one) => sum + one, 0);
  const expectedBackorders = chances.reduceRight((sum, one, n) => sum + Math.max(0, n - stock) * one, 0);
  return {
    noShortage: Math.min(1, upTo(stock)),
    fillRate: stock === 0 ? 0 : Math.min(1, upTo(stock - 1)),
    expectedBackorders,
  };
}

/** Counts beyond the stock that are still summed. */
const TAIL = 60;

/** The least stock with at least this chance of no shortage; undefined beyond 2000. */
export function leastStock(pipeline: number, target: number): number | undefined {
  const chances = poissonChances(pipeline, MOST_STOCK);
  let sum = 0;
  const found = chances.findIndex((chance) => {
    sum += chance;
    return sum >= target - 1e-15;
  });
  return found < 0 ? undefined : found;
}
