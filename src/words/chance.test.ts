import { describe, expect, it } from "vitest";
import { chanceEnds, sayChance, sayPercent } from "./chance.ts";

describe("a chance in words", () => {
  it("never promises", () => {
    expect([0, 0.004, 0.61, 0.994, 0.9996, 1].map((chance) => sayChance(chance))).toEqual([
      "less than 1 in 100",
      "less than 1 in 100",
      "61 in 100",
      "99 in 100",
      "more than 99 in 100",
      "more than 99 in 100",
    ]);
  });

  it("is counted in tens where forecasts are held against what came", () => {
    expect(sayChance(0.973, "ten")).toBe("9.7 in 10");
  });
});

describe("a share in words", () => {
  it("is nothing or everything only where it is", () => {
    const said = [0, 0.004, 0.25, 0.996, 1].map((share) => sayPercent(share).replace("\u00a0", " "));
    expect(said).toEqual(["0 %", "under 1 %", "25 %", "over 99 %", "100 %"]);
  });
});

describe("between what a chance lies", () => {
  it.each([
    [0.317, 0.442, 30, 45],
    [0.3, 0.3, 30, 30],
    [0.092, 0.51, 9, 55],
    [0.885, 0.919, 85, 92],
    [0.004, 0.12, 0, 15],
    [0.94, 0.9951, 94, 100],
  ])("from %d to %d it is %d to %d in 100, never narrower than it is", (low, high, from, to) => {
    expect(chanceEnds(low, high)).toEqual([from, to]);
  });
});
