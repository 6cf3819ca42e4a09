import { describe, expect, it } from "vitest";
import type { Pattern } from "#kit";
import { ENGLISH } from "#words";
import type { Bodies } from "../kinds/kinds.ts";
import { Hand, kitOf, SAMPLE_PATTERN } from "../kit/sample-kit.ts";
import { sealingRefusals } from "../kit/sealing.ts";
import { isOfMeasured, isToMeasure } from "./delivery-gate.ts";
import { sayRefusal } from "../kit/refusal.ts";

/** The sample with a pump of known figures, whose delivery is measured while it warms. */
const PATTERN: Pattern = {
  ...SAMPLE_PATTERN,
  hydraulics: {} as NonNullable<Pattern["hydraulics"]>,
  stages: SAMPLE_PATTERN.stages.map((stage) => ({
    ...stage,
    steps: stage.steps.map((step) => (step.id === "warm" ? { ...step, measuresDelivery: true } : step)),
  })),
};
const SHARE = {
  id: "share",
  kind: "measure",
  item: "pump",
  ask: "Measure it.",
  expect: "90 %.",
  finds: [],
  dimension: "ratio",
  unit: "%",
  atLeast: 0.9,
} as const;
const RUN: Bodies["delivery-measured"] = {
  turnaround: "t1",
  step: "warm",
  method: "timed-fill",
  lift: 2,
  rise: 1,
  throttle: 1,
  flow: 0.0037,
  flowUncertainty: 1e-4,
  expected: 0.004,
  ratio: 0.925,
  verdict: "as-expected",
  readings: {},
};

function shareOf(si: number) {
  return { kind: "quantity", si, dimension: "ratio", text: "" } as const;
}

function at(by: Hand) {
  const kit = kitOf(by);
  return { kit, turnaround: kit.turnaround!, pattern: PATTERN };
}

describe("a step at which delivery is measured", () => {
  it("READY-39 is not answered, nor is the kit sealed, before a measurement is written down there", () => {
    const by = new Hand().enrol().open().doAll();
    expect(isToMeasure(at(by), "warm")).toBe(true);
    expect(sealingRefusals({ ...at(by), allKits: [] }).map((one) => sayRefusal(one, ENGLISH.held))).toEqual([
      "Delivery not measured: line 6, Warm it up.",
    ]);
    by.write("delivery-measured", RUN);
    expect(isToMeasure(at(by), "warm")).toBe(false);
    expect(sealingRefusals({ ...at(by), allKits: [] })).toEqual([]);
  });

  it("READY-39 is answered with the share that was worked out there, and with no other", () => {
    const by = new Hand().enrol().open();
    expect(isOfMeasured(at(by), "warm", SHARE, shareOf(0.925))).toBe(false);
    by.write("delivery-measured", RUN);
    expect(isOfMeasured(at(by), "warm", SHARE, shareOf(0.925))).toBe(true);
    expect(isOfMeasured(at(by), "warm", SHARE, shareOf(0.93))).toBe(true);
    expect(isOfMeasured(at(by), "warm", SHARE, shareOf(0.91))).toBe(false);
    expect(isOfMeasured(at(by), "warm", SHARE, undefined)).toBe(true);
  });

  it("may be answered by eye where the pattern has no figures to work it out from", () => {
    const { hydraulics: _figures, ...plain } = PATTERN;
    expect(isToMeasure({ ...at(new Hand().enrol().open()), pattern: plain }, "warm")).toBe(false);
  });
});
