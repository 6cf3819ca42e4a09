import { describe, expect, it } from "vitest";
import { sumLaw } from "./sum-law.ts";

describe("the law of how many of some trials come", () => {
  it("is the binomial one where all have the same chance: 4 of 0.3 (by hand, C(4, k) 0.3^k 0.7^(4−k))", () => {
    const expected = [0.2401, 0.4116, 0.2646, 0.0756, 0.0081];
    sumLaw([0.3, 0.3, 0.3, 0.3]).forEach((one, k) => expect(one).toBeCloseTo(expected[k]!, 14));
  });

  it("is that of unlike trials by hand, and the first of it by themselves", () => {
    expect(sumLaw([0.5, 0.25])).toEqual([0.375, 0.5, 0.125]);
    expect(sumLaw([0.5, 0.25], 1)).toEqual([0.375, 0.5]);
    expect(sumLaw([])).toEqual([1]);
  });
});
