import { describe, expect, it } from "vitest";
import { judgedIn, pickedIn } from "./judged.ts";

describe("what was judged of a pattern, as this device keeps it", () => {
  it("comes back as it was stated, nought too", () => {
    const judged = { weight: 350, stated: { parts: 0, wearPerStart: 0.5, perDayNotReady: 8, harmed: 2 } } as const;
    expect(judgedIn(JSON.parse(JSON.stringify(judged)))).toEqual(judged);
  });

  it("has any weight, and the one that was picked before weights could be typed", () => {
    expect(judgedIn({ weight: "10000" }).weight).toBe(10_000);
    expect(judgedIn({ weight: 2.5 }).weight).toBe(2.5);
    expect(pickedIn(1000)).toBe("1000");
    expect(pickedIn(350)).toBeUndefined();
    expect(pickedIn(undefined)).toBeUndefined();
  });

  it("is nothing where it was never stated, cannot be, or is no figure", () => {
    for (const kept of [{}, { stated: null }, { weight: "much" }, { weight: 2e6 }, { stated: "x" }])
      expect(judgedIn(kept)).toEqual({ stated: {} });
    expect(judgedIn({ weight: 0, stated: { parts: -1, harmed: 501, wearPerStart: "2", other: 3 } })).toEqual({
      stated: {},
    });
  });
});
