import { sum } from "#base";
import { demandChances, largestOf, SINGLY, type Lot } from "./lots.ts";

/** How a stock of one part stands against what is out on order, one for one. */
export interface StockPoint {
  /** P(N ≤ s): no demand waits [1]. */
  readonly noShortage: number;
  /** Share of the parts wanted that are given at once [1]; P(N ≤ s − 1) where they are wanted one at a time. */
  readonly fillRate: number;
  /** Parts waited for, on average [parts]. */
  readonly expectedBackorders: number;
}

/** More than this many of one part are never asked for. */
export const MOST_STOCK = 2000;

/**
 * How a stock serves a compound Poisson demand over the time until a part bought comes in.
 *
 * EBO(s) = EBO(s − 1) − P(N ≥ s), EBO(0) = μ; an occasion that wants c is given at once min(c, s − N)
 *
 * @param pipeline - μ, parts wanted in the lead time, to be expected [1]
 * @param stock - s, whole, 0 to 2000
 * @param lots - in which sizes parts are wanted; one at a time if left out
 * @returns chance of no shortage, fill rate and expected backorders
 * @source Sherbrooke, Optimal Inventory Modeling of Systems, 2004; lots: Feeney & Sherbrooke 1966 (both FROM MEMORY); Palm's theorem
 * @example stockOf(1, 2) // { noShortage: 0.9197, fillRate: 0.7358, expectedBackorders: 0.1036, ... }
 */
export function stockOf(pipeline: number, stock: number, lots = SINGLY): StockPoint {
  const chances = demandChances(pipeline, stock + TAIL * largestOf(lots) + Math.ceil(2 * pipeline), lots);
  const expectedBackorders = chances.reduceRight((all, one, n) => all + Math.max(0, n - stock) * one, 0);
  return {
    noShortage: Math.min(1, sum(chances.slice(0, stock + 1))),
    fillRate: stock === 0 ? 0 : Math.min(1, filledAtOnce(chances, stock, lots)),
    expectedBackorders,
  };
}

/** What is on the shelf when an occasion comes, up to what it wants: min(c, s − N) = Σ over k from 1 to c of N ≤ s − k. */
function filledAtOnce(chances: readonly number[], stock: number, lots: readonly Lot[]): number {
  const given = (size: number) =>
    chances.slice(0, stock).reduce((all, one, n) => all + Math.min(size, stock - n) * one, 0);
  const wanted = sum(lots.map(({ size, share }) => size * share));
  return sum(lots.map(({ size, share }) => share * given(size))) / wanted;
}

/** Counts, in lots of the largest size, beyond the stock that are still summed. */
const TAIL = 60;

/** The least stock with at least this chance of no shortage; undefined beyond 2000. */
export function leastStock(pipeline: number, target: number, lots = SINGLY): number | undefined {
  const chances = demandChances(pipeline, MOST_STOCK, lots);
  let reached = 0;
  const found = chances.findIndex((chance) => {
    reached += chance;
    return reached >= target - 1e-15;
  });
  return found < 0 ? undefined : found;
}
