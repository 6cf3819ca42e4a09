import { describe, expect, it } from "vitest";
import { clopperPearson, looksToSay, neverFound } from "./index.ts";

describe("nothing found in n looks", () => {
  it("3/n is an upper 95 % bound where none of n came (Jovanovic & Levy, American Statistician 51, 1997, abstract)", () => {
    for (const looks of [3, 10, 30, 100, 1500]) {
      const { below, ruleOfThree } = neverFound(looks);
      expect((1 - below) ** looks).toBeCloseTo(0.05, 12);
      expect(ruleOfThree).toBeGreaterThan(below);
    }
    const { below, ruleOfThree } = neverFound(1500);
    expect(ruleOfThree).toBe(1 / 500);
    expect(ruleOfThree / below).toBeCloseTo(1, 2);
  });

  it("is the exact one-sided limit of Clopper and Pearson (Biometrika 26, 1934, FROM MEMORY)", () => {
    for (const looks of [1, 7, 40]) expect(neverFound(looks).below).toBeCloseTo(clopperPearson(0, looks, 0.9)[1], 10);
  });

  it("says how many looks it takes, and one fewer does not do", () => {
    for (const share of [0.02, 0.05, 0.2]) {
      const looks = looksToSay(share);
      expect(neverFound(looks).below).toBeLessThanOrEqual(share);
      expect(neverFound(looks - 1).below).toBeGreaterThan(share);
    }
    expect(looksToSay(0.05)).toBe(59);
  });
});
