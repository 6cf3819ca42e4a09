import { describe, expect, it } from "vitest";
import type { Check } from "#kit";
import type { KitState } from "#readiness";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import { sampleCheck, sampleTurnaround } from "#web/kit-view/sample.ts";
import { isFirstMeasured, isMeasuredBefore } from "./look-group.ts";

const CORD = { ...sampleCheck("cord"), once: true } as Check;
const ASK = { key: "torch/cord", check: CORD };
const LONG = { kind: "quantity", si: 0.55, dimension: "length", text: "55 cm" } as const;

function at(...turnarounds: readonly ReturnType<typeof sampleTurnaround>[]): OpenKit {
  return { kit: { contents: {}, turnarounds } as unknown as KitState } as OpenKit;
}

describe("a measurement that is made once", () => {
  it("is made now where none is on record, and else only looked at", () => {
    expect(isFirstMeasured(at(), "torch", ASK)).toBe(true);
    expect(isMeasuredBefore(at(), "torch", ASK.check)).toBe(false);
    const measured = at(sampleTurnaround({ key: "torch/cord", value: LONG }));
    expect(isFirstMeasured(measured, "torch", ASK)).toBe(false);
    expect(isMeasuredBefore(measured, "torch", ASK.check)).toBe(true);
  });

  it("is nothing to say of one that is made every time, or was answered", () => {
    expect(isFirstMeasured(at(), "torch", { ...ASK, check: sampleCheck("cord") })).toBe(false);
    const [answered] = Object.values(sampleTurnaround({ key: "torch/cord", value: LONG }).answers);
    expect(isFirstMeasured(at(), "torch", { ...ASK, answered: answered! })).toBe(false);
  });
});
