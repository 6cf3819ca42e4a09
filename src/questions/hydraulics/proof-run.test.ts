import { isInputError } from "#base";
import type { Pattern } from "#kit";
import { describe, expect, it } from "vitest";
import { deliveryCurveQuestion } from "./delivery-curve.ts";
import { deliveryTableQuestion } from "./delivery-table.ts";
import { deliveryQuestion } from "./delivery.ts";
import { proofRunQuestion } from "./proof-run.ts";
import { vacuumTestQuestion } from "./vacuum-test.ts";

const hose = { bore: 0.0508, length: 4.572, roughness: 5e-5, fittings: 2.3 };
const discharge = { bore: 0.0508, length: 7.62, hazenWilliams: 140, fittings: 2.4, rise: 1 };
const pump = {
  curve: [
    { flow: 0, head: 24 },
    { flow: "300 L/min", head: 19 },
    { flow: "560 L/min", head: 5 },
  ],
  npshRequired: [
    { flow: "150 L/min", head: 1.6 },
    { flow: "560 L/min", head: 4.8 },
  ],
};
const rig = { pump, suction: { lift: 2, ...hose }, discharge };
const limits = { grounds: 0.75, notes: 0.9 };
const expected = deliveryQuestion.answer(rig, {}).flow;

const assumed = (given: unknown) => proofRunQuestion.answer(given, {}).assumptions.map(({ what }) => what);

const filled = (share: number) => ({
  ...rig,
  limits,
  reading: { method: "timed-fill", volume: 0.2, timings: [0.2 / (share * expected), 0.2 / (share * expected)] },
});

describe("a proof run, asked", () => {
  it("holds two timings of a drum against what the same rig should deliver", () => {
    const run = proofRunQuestion.answer(filled(0.98), {});
    expect(run.expected).toBeCloseTo(expected, 12);
    expect(run.ratio).toBeCloseTo(0.98, 9);
    expect(run.verdict).toBe("as-expected");
  });

  it.each([
    [0.83, "noted"],
    [0.5, "grounds"],
  ])("judges %d of what is expected as %s", (share, verdict) => {
    expect(proofRunQuestion.answer(filled(share), {}).verdict).toBe(verdict);
  });

  it("is surer of two timings than of one", () => {
    const one = { ...filled(1), reading: { ...filled(1).reading, timings: [0.2 / expected] } };
    expect(proofRunQuestion.answer(filled(1), {}).ratioUncertainty).toBeLessThan(
      proofRunQuestion.answer(one, {}).ratioUncertainty,
    );
  });

  it("says what a vacuum read beside it means", () => {
    const blocked = proofRunQuestion.answer({ ...filled(0.5), suctionVacuum: "80 kPa" }, {});
    expect(blocked.suction?.kind).toBe("hose-side");
    expect(proofRunQuestion.answer(filled(0.5), {}).suction).toBeUndefined();
  });

  it("says what was taken for granted, and nothing where it was given", () => {
    const metered = { ...rig, limits, reading: { method: "flow-meter", flow: expected } };
    const own = { ...metered, reading: { ...metered.reading, flowUncertainty: 1e-4 } };
    expect(assumed(metered).filter((what) => what.includes("3 %"))).toHaveLength(1);
    expect(assumed(own).filter((what) => what.includes("3 %"))).toEqual([]);
  });

  it("takes its limits from the kit, and asks for them where there is none", () => {
    const kit = { hydraulics: { pump: { curve: [] }, discharge, proof: { grounds: 0.2, notes: 0.3 } } };
    const patterns = () => kit as unknown as Pattern;
    const { limits: _, ...without } = filled(0.5);
    expect(proofRunQuestion.answer({ ...without, kit: "trial" }, { patterns }).verdict).toBe("as-expected");
    expect(faultsOf(() => proofRunQuestion.answer(without, {}))).toEqual(["QU-101 limits"]);
  });
});

describe("the vacuum test, asked", () => {
  it.each([
    ["27 inHg", "hose-side"],
    ["10 inHg", "pump-side"],
    ["21 inHg", "unclear"],
  ])("reads %s on a closed suction port as %s", (vacuum, kind) => {
    const verdict = vacuumTestQuestion.answer({ vacuum, air: { altitude: 0 } }, {});
    expect(verdict.kind).toBe(kind);
    expect(verdict.lookFirst.length).toBeGreaterThan(0);
  });
});

describe("a delivery table and its picture, asked", () => {
  it("give the flow that delivery itself gives at each lift", () => {
    const table = deliveryTableQuestion.answer({ ...rig, lifts: [1, 2, 3] }, {});
    for (const { lift, flow, band } of table.rows) {
      const alone = deliveryQuestion.answer({ ...rig, suction: { ...rig.suction, lift } }, {});
      expect({ flow, band }).toEqual({ flow: alone.flow, band: alone.band });
    }
  });

  it("say where the suction hose does not reach", () => {
    const kinds = deliveryTableQuestion.answer({ ...rig, lifts: [4, 5] }, {}).rows.map(({ kind }) => kind);
    expect(kinds).toEqual([expect.stringMatching(/delivers|suction-limited/), "hose-too-short"]);
    const high = deliveryQuestion.answer({ ...rig, suction: { ...rig.suction, lift: 5 } }, {});
    expect(high.assumptions.map(({ what }) => what)).toContain("The suction hose is shorter than the lift.");
  });

  it("take the whole height as the lift for a pump that stands in the water", () => {
    const inWater = { pump: { ...pump, standsInWater: true }, suction: { lift: 0 }, discharge };
    const [row] = deliveryTableQuestion.answer({ ...inWater, lifts: [3] }, {}).rows;
    const alone = deliveryQuestion.answer({ ...inWater, discharge: { ...discharge, rise: 3 } }, {});
    expect(row?.flow).toBeCloseTo(alone.flow, 12);
  });

  it("draw both curves through the operating point", () => {
    const picture = deliveryCurveQuestion.answer({ ...rig, count: 200 }, {});
    const [point] = picture.operating;
    const near = picture.points.reduce((best, one) =>
      Math.abs(one.flow - point!.flow) < Math.abs(best.flow - point!.flow) ? one : best,
    );
    expect(near.pumpHead).toBeCloseTo(point!.head, 0);
    expect(near.rigHead).toBeCloseTo(point!.head, 0);
    expect(picture.flow).toBeCloseTo(expected, 12);
  });
});

function faultsOf(work: () => unknown): readonly string[] {
  try {
    work();
  } catch (cause) {
    if (isInputError(cause)) return cause.faults.map(({ code, field }) => `${code} ${field}`);
    throw cause;
  }
  return [];
}
