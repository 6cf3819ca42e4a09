import { describe, expect, it } from "vitest";
import { judgedIn } from "./judged.ts";

describe("what was judged of a pattern, as this device keeps it", () => {
  it("comes back as it was stated, nought too", () => {
    const judged = { weight: "1000", stated: { parts: 0, wearPerStart: 0.5, perDayNotReady: 8, harmed: 2 } } as const;
    expect(judgedIn(JSON.parse(JSON.stringify(judged)))).toEqual(judged);
  });

  it("is nothing where it was never stated, cannot be, or is no figure", () => {
    for (const kept of [{}, { stated: null }, { stated: "x" }]) expect(judgedIn(kept)).toEqual({ stated: {} });
    expect(judgedIn({ weight: "5", stated: { parts: -1, harmed: 501, wearPerStart: "2", other: 3 } })).toEqual({
      stated: {},
    });
  });
});
