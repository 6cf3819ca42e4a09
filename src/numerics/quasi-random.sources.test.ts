import { describe, expect, it } from "vitest";
import { sobolPoints } from "./quasi-random.ts";

// scipy 1.17.1, scipy.stats.qmc.Sobol(10, scramble=False): rows 1, 2, 5, 13 and 31.
const JUDGE: Readonly<Record<number, readonly number[]>> = {
  1: [0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5],
  2: [0.75, 0.25, 0.25, 0.25, 0.75, 0.75, 0.25, 0.75, 0.75, 0.75],
  5: [0.875, 0.875, 0.125, 0.375, 0.875, 0.625, 0.875, 0.375, 0.375, 0.125],
  13: [0.8125, 0.6875, 0.8125, 0.0625, 0.4375, 0.9375, 0.5625, 0.5625, 0.5625, 0.4375],
  31: [0.03125, 0.53125, 0.90625, 0.96875, 0.96875, 0.78125, 0.34375, 0.53125, 0.15625, 0.59375],
};

describe("Sobol points against scipy.stats.qmc 1.17.1 (Joe & Kuo directions)", () => {
  const points = sobolPoints(32, 10);
  it.each(Object.keys(JUDGE).map(Number))("row %i agrees in all ten dimensions", (row) => {
    const got = Array.from(points.subarray(row * 10, row * 10 + 10), (x) => x - 2 ** -33);
    expect(got).toEqual(JUDGE[row]);
  });
});

describe("laws of the points", () => {
  it.each([0, 1, 77])("seed %i: each half of each dimension holds half of 1024 points, none at an end", (seed) => {
    const points = sobolPoints(1024, 10, seed);
    for (let d = 0; d < 10; d += 1) {
      const column = Array.from({ length: 1024 }, (_, i) => points[i * 10 + d]!);
      expect(column.filter((x) => x < 0.5)).toHaveLength(512);
      expect(Math.min(...column)).toBeGreaterThan(0);
      expect(Math.max(...column)).toBeLessThan(1);
    }
  });

  it("integrates a product ten times better than chance (sd 0.028 at 4096 points in 5 dimensions)", () => {
    const points = sobolPoints(4096, 5, 3);
    let sum = 0;
    for (let i = 0; i < 4096; i += 1) {
      let product = 1;
      for (let d = 0; d < 5; d += 1) product *= 2 * points[i * 5 + d]!;
      sum += product / 4096;
    }
    expect(Math.abs(sum - 1)).toBeLessThan(2.8e-3);
  });

  it("a seed always gives the same points and another seed others", () => {
    expect([...sobolPoints(16, 3, 5)]).toEqual([...sobolPoints(16, 3, 5)]);
    expect([...sobolPoints(16, 3, 5)]).not.toEqual([...sobolPoints(16, 3, 6)]);
  });
});
