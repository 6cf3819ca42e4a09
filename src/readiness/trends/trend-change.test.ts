import { ENGLISH } from "#words";
import { describe, expect, it } from "vitest";
import { changeOf, sayChange } from "./trend-change.ts";
import type { Trend } from "./trends.ts";

const at = (index: number) => `2026-01-${String(index + 1).padStart(2, "0")}T09:00:00+00:00`;

function trend(what: Trend["what"], ...values: number[]): Trend {
  return { what, points: values.map((value, index) => ({ at: at(index), turnaround: `t${index}`, value })) };
}

describe("how a trend moves", () => {
  it("is slower, by the rise of the fitted line, over so many runs", () => {
    expect(changeOf(trend("prime", 20, 24, 28, 32, 36))).toEqual({ kind: "rising", by: 16, runs: 5 });
    expect(sayChange(trend("prime", 24, 25, 24, 30, 33, 39, 44, 52, 55), ENGLISH.standing)).toBe(
      "Slower by 36 s over 9 runs.",
    );
    expect(sayChange(trend("prime", 55, 52, 40, 33, 24), ENGLISH.standing)).toBe("Quicker by 32 s over 5 runs.");
  });

  it("says pulls and delivery in their own words", () => {
    expect(sayChange(trend("pulls", 1, 1, 2, 2, 3, 3, 4), ENGLISH.standing)).toBe(
      "More pulls, by about 3.0, over 7 runs.",
    );
    expect(sayChange(trend("delivery", 0.99, 0.96, 0.93, 0.9, 0.87), ENGLISH.standing)).toBe(
      "Less by 12 % of the expected flow over 5 runs.",
    );
  });

  it("is not clear where the readings only scatter or are all alike", () => {
    expect(sayChange(trend("prime", 30, 26, 33, 28, 31, 27), ENGLISH.standing)).toBe("No clear trend over 6 runs.");
    expect(sayChange(trend("pulls", 2, 2, 2, 2, 2), ENGLISH.standing)).toBe("No clear trend over 5 runs.");
  });

  it("is neither made nor hidden by one odd reading", () => {
    expect(changeOf(trend("prime", 30, 31, 29, 30, 31, 90)).kind).toBe("none-clear");
    expect(changeOf(trend("prime", 20, 24, 28, 5, 36, 40, 44, 48, 52)).kind).toBe("rising");
  });

  it("is not told of fewer than five runs", () => {
    expect(changeOf(trend("prime", 20, 30, 40, 50))).toEqual({ kind: "too-few", runs: 4 });
    expect(sayChange(trend("prime"), ENGLISH.standing)).toBe("Too few runs to tell a trend.");
  });
});
