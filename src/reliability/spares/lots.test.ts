import { describe, expect, it } from "vitest";
import { poissonChances } from "#numerics";
import { demandChances } from "./lots.ts";
import { bestPurchases, leastStock, stockOf, type Lot } from "./index.ts";

const lotsOf = (size: number): readonly Lot[] => [{ size, share: 1 }];
const WEEKS = 7 / 365.25;

describe("parts that are wanted several at a time (compound Poisson, Feeney & Sherbrooke 1966)", () => {
  it("DERIVED by hand: 63 a year in threes over 4 weeks are 1.61 lots, P(L ≤ 3) = 0.920 and P(L ≤ 4) = 0.976", () => {
    const pipeline = 63 * 4 * WEEKS;
    expect(stockOf(pipeline, 9, lotsOf(3)).noShortage).toBeCloseTo(0.92, 3);
    expect(stockOf(pipeline, 11, lotsOf(3)).noShortage).toBeCloseTo(0.92, 3);
    expect(stockOf(pipeline, 12, lotsOf(3)).noShortage).toBeCloseTo(0.976, 3);
    expect([leastStock(pipeline, 0.95), leastStock(pipeline, 0.95, lotsOf(3))]).toEqual([9, 12]);
  });

  it("DERIVED by hand: 9.4 a year in twos over 6 weeks are 0.54 lots, P(L ≤ 1) = 0.897 and P(L ≤ 2) = 0.982", () => {
    const pipeline = 9.4 * 6 * WEEKS;
    expect(stockOf(pipeline, 3, lotsOf(2)).noShortage).toBeCloseTo(0.897, 3);
    expect(stockOf(pipeline, 4, lotsOf(2)).noShortage).toBeCloseTo(0.982, 3);
    expect([leastStock(pipeline, 0.95), leastStock(pipeline, 0.95, lotsOf(2))]).toEqual([3, 4]);
  });

  it("of several sizes are the sum of what is wanted in each: the convolution of their own chances", () => {
    const [ones, threes] = [poissonChances(0.8, 30), poissonChances(0.4, 30)];
    const both = demandChances(2, 12, [
      { size: 1, share: 2 },
      { size: 3, share: 1 },
    ]);
    for (const [n, chance] of both.entries()) {
      const convolved = threes.reduce((sum, three, lots) => sum + three * (ones[n - 3 * lots] ?? 0), 0);
      expect(chance).toBeCloseTo(convolved, 12);
    }
  });

  it("are given at once as far as the shelf goes, and leave the mean less what it takes waiting", () => {
    const [pipeline, lots] = [1.5, lotsOf(3)];
    const none = Math.exp(-0.5);
    const shelf = stockOf(pipeline, 2, lots);
    expect(shelf.fillRate).toBeCloseTo((2 / 3) * none, 12);
    expect(shelf.expectedBackorders).toBeCloseTo(pipeline - 2 * (1 - none), 9);
  });

  it("are bought until they serve a lot, as a search of every stock buys them", () => {
    const parts = [
      { name: "a", pipeline: 1.5, lots: lotsOf(3), cost: 4, stock: 0 },
      { name: "b", pipeline: 0.9, cost: 5, stock: 0 },
    ];
    const { stock, exact } = bestPurchases(parts, 30);
    const waiting = (a: number, b: number) =>
      stockOf(1.5, a, lotsOf(3)).expectedBackorders + stockOf(0.9, b).expectedBackorders;
    const every = Array.from({ length: 8 }, (_, a) => waiting(a, Math.floor((30 - 4 * a) / 5)));
    expect(exact).toBe(true);
    expect(waiting(stock[0]!, stock[1]!)).toBeCloseTo(Math.min(...every), 9);
  });
});
