import { describe, expect, it } from "vitest";
import { firstOf, lastOf, nth, numberAt } from "./nth.ts";

describe("what stands at a place", () => {
  it("is given, 0 and empty text too", () => {
    expect([nth([7, 0], 1), nth(["", "a"], 0), nth(Int32Array.of(3, 4), 1)]).toEqual([0, "", 4]);
    expect(numberAt(Float64Array.of(0.5, Number.NaN), 1)).toBeNaN();
    expect([firstOf("abc"), lastOf([3, 4, 5])]).toEqual(["a", 5]);
  });

  it.each([-1, 2, 0.5, Number.NaN])("throws with index and length at %s of two", (index) => {
    const said = `There is nothing at index ${index} of 2.`;
    expect(() => nth(["a", "b"], index)).toThrow(new RangeError(said));
    expect(() => numberAt(new Float64Array(2), index)).toThrow(new RangeError(said));
  });

  it("throws where a list has no first and no last", () => {
    expect(() => firstOf([])).toThrow(new RangeError("There is nothing at index 0 of 0."));
    expect(() => lastOf([])).toThrow(new RangeError("There is nothing at index -1 of 0."));
  });
});
