import { describe, expect, it } from "vitest";
import { seenGate } from "./step-gate.ts";

const STEP = { timer: { kind: "pulls", atMost: 6 } } as const;
const mark = { entry: "e1", at: "2027-03-14T10:00:00Z", by: "ann", device: "d" };

describe("a line at which pulls are counted", () => {
  it("is not seen right before anybody counted, nor while nobody said on which pull it ran", () => {
    expect(seenGate(STEP, undefined)).toEqual({ open: false, because: "count-pulls" });
    for (const pulls of [1, 4, 6])
      expect(seenGate(STEP, { pulls, reached: false, mark })).toEqual({ open: false, because: "no-start" });
  });

  it("is seen right once it was said on which pull it ran, the last one too", () => {
    for (const pulls of [1, 6]) expect(seenGate(STEP, { pulls, reached: true, mark })).toEqual({ open: true });
  });
});
