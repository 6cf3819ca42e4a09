import { isInputError } from "#base";
import { describe, expect, it } from "vitest";
import { READING_UNCERTAINTY } from "./proof-run.ts";
import { meanOfFills } from "./timed-fills.ts";

describe("several timings of one drum", () => {
  it("takes a single timing as it is, known as well as a hand on a watch", () => {
    expect(meanOfFills([30])).toEqual({ seconds: 30, uncertainty: READING_UNCERTAINTY.seconds });
  });

  it("knows the mean of two that agree better by the root of two", () => {
    const { seconds, uncertainty } = meanOfFills([29.9, 30.1]);
    expect(seconds).toBeCloseTo(30, 12);
    expect(uncertainty).toBeCloseTo(READING_UNCERTAINTY.seconds / Math.SQRT2, 12);
  });

  it("takes the spread where the timings disagree more than a hand explains", () => {
    // s = 4 s from 26, 30, 34; over √3.
    expect(meanOfFills([26, 30, 34]).uncertainty).toBeCloseTo(4 / Math.sqrt(3), 12);
  });

  it.each([
    ["no timings", [], 1],
    ["a timing of nothing", [30, 0], 1],
    ["two that are not timings", [Number.NaN, -3, 30], 2],
    ["more than anybody takes", Array.from({ length: 21 }, () => 30), 1],
  ])("refuses %s, naming each", (_, timings, faults) => {
    const refused = thrownBy(() => meanOfFills(timings));
    expect(isInputError(refused) && refused.faults.map(({ code }) => code)).toEqual(Array(faults).fill("HY-169"));
  });
});

function thrownBy(work: () => unknown): unknown {
  try {
    work();
  } catch (cause) {
    return cause;
  }
  return undefined;
}
