import { describe, expect, it } from "vitest";
import {
  chiSquareTail,
  evenQuantiles,
  logGamma,
  normalChance,
  normalQuantile,
  weightedQuantiles,
} from "./distributions.ts";

describe("normal deviates against scipy.stats.norm 1.17.1", () => {
  it.each([
    [1e-12, -7.034483825301131],
    [1e-5, -4.264890793922825],
    [0.01, -2.3263478740408408],
    [0.3, -0.5244005127080409],
    [0.77, 0.7388468491852137],
    [0.975, 1.959963984540054],
    [0.9999, 3.719016485455709],
  ])("p = %d", (p, z) => {
    expect(Math.abs(normalQuantile(p) - z)).toBeLessThan(2e-14 * Math.max(1, Math.abs(z)));
    expect(Math.abs(normalChance(z) / p - 1)).toBeLessThan(1e-11);
  });

  it("the middle is 0 and the ends are refused", () => {
    expect(normalQuantile(0.5)).toBe(0);
    expect(() => normalQuantile(0)).toThrow("between 0 and 1");
    expect(() => normalQuantile(1)).toThrow("between 0 and 1");
  });
});

describe("chi-square tails and ln gamma against scipy 1.17.1", () => {
  it.each([
    [3.84, 1, 0.05004352124870519],
    [0.5, 3, 0.9188914116546758],
    [30, 8, 0.00021137850346676174],
    [120, 100, 0.08440668109369177],
  ])("tail of %d with %d degrees of freedom", (x, freedom, chance) => {
    expect(Math.abs(chiSquareTail(x, freedom) / chance - 1)).toBeLessThan(1e-11);
  });

  it.each([
    [0.3, 1.0957979948180756],
    [1.7, -0.09580769740706585],
    [12.5, 18.73434751193645],
    [100, 359.1342053695754],
  ])("ln gamma of %d", (x, value) => {
    expect(Math.abs(logGamma(x) - value)).toBeLessThan(1e-12 * Math.max(1, Math.abs(value)));
  });
});

describe("weighted quantiles", () => {
  it("weigh values, and leave out those of no weight", () => {
    expect(weightedQuantiles([3, 1, 2, 99], [1, 1, 1, 0], [0, 0.5, 1])).toEqual([1, 2, 3]);
    expect(weightedQuantiles([0, 10], [3, 1], [0.5])[0]).toBeCloseTo(2.5, 12);
  });

  it("of even weights are those at (k + 1/2)/n with straight lines between: Hyndman and Fan 1996, definition 5", () => {
    expect(evenQuantiles([40, 10, 30, 20], [0, 0.125, 0.25, 0.5, 0.8, 1])).toEqual([10, 10, 15, 25, 37, 40]);
    expect(evenQuantiles([7], [0, 0.5, 1])).toEqual([7, 7, 7]);
  });

  it("of even weights are, to the last bit, those with weights of one", () => {
    const values = Array.from({ length: 1024 }, (_, k) => Math.sin(12.9898 * k) * 43.7585);
    const chances = [0, 1e-9, 0.05, 0.25, 0.5, 0.75, 0.95, 1 / 3, 1];
    const ones = values.map(() => 1);
    expect(evenQuantiles(values, chances)).toEqual(weightedQuantiles(values, ones, chances));
  });
});
