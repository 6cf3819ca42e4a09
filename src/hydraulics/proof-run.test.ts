import { describe, expect, it } from "vitest";
import { InputError } from "#base";
import { STANDARD_GRAVITY, waterAt } from "#water";
import { prepareCase, type DeliveryCase } from "./delivery-case.ts";
import { velocityHeadFactor } from "./hose.ts";
import { proofRun, type ProofReading } from "./proof-run.ts";
import { pumpingOf } from "./pumping.ts";
import { runningVacuum, vacuumTest } from "./vacuum-test.ts";

const hose = (length: number) => ({
  bore: 0.0508,
  length,
  fittings: 2,
  resistance: { kind: "roughness" as const, roughness: 1e-4 },
});
const RIG: DeliveryCase = {
  water: waterAt(288.15, 0),
  airPressure: 101_325,
  pump: {
    curve: [
      { flow: 0, head: 24 },
      { flow: 0.005, head: 19 },
      { flow: 0.009, head: 6 },
    ],
    greatestLift: 8,
  },
  speedRatio: 1,
  lift: 2,
  suction: hose(4.6),
  rise: 1,
  discharge: hose(8),
  exitLoss: true,
  pumps: 1,
};
const LIMITS = { grounds: 0.75, notes: 0.9 };
const EXPECTED = pumpingOf(RIG).flow;
const fill = (share: number, seconds = 40): ProofReading => ({
  method: "timed-fill",
  volume: share * EXPECTED * seconds,
  seconds,
});

describe("timed fill", () => {
  it("propagates the drum's and the watch's uncertainty (GUM)", () => {
    const run = proofRun(
      RIG,
      { method: "timed-fill", volume: 0.2, seconds: 40, volumeUncertainty: 0.004, secondsUncertainty: 0.5 },
      LIMITS,
    );
    expect(run.flow).toBeCloseTo(0.005, 12);
    expect(run.flowUncertainty).toBeCloseTo(0.005 * Math.hypot(0.02, 0.0125), 12);
  });

  it.each([
    [1.4, "unclear"],
    [1.15, "as-expected"],
    [1, "as-expected"],
    [0.86, "noted"],
    [0.76, "unclear"],
    [0.5, "grounds"],
  ] as const)("at %d of what is expected is %s", (share, verdict) => {
    const run = proofRun(RIG, fill(share), LIMITS);
    expect(run.ratio).toBeCloseTo(share, 9);
    expect(run.expected).toBe(EXPECTED);
    expect(run.verdict).toBe(verdict);
  });

  it("is unclear when the measurement is too rough to tell", () => {
    expect(proofRun(RIG, { ...fill(1), volumeUncertainty: 0.2 * EXPECTED * 40 } as ProofReading, LIMITS).verdict).toBe(
      "unclear",
    );
  });

  it("is questioned where it is more than the curve can give: heights, hoses, measure and watch first", () => {
    expect(proofRun(RIG, fill(1.4), LIMITS).because).toMatch(/more than this pump can give here; check lift/);
  });

  it("is unclear where nothing is expected", () => {
    expect(proofRun({ ...RIG, rise: 40 }, fill(1), LIMITS)).toMatchObject({
      verdict: "unclear",
      expected: 0,
      ratio: 0,
    });
  });
});

describe("gauges use the hose as the meter", () => {
  const rig = prepareCase(RIG);
  const unit = RIG.water.density * STANDARD_GRAVITY;
  const velocityHead = velocityHeadFactor(0.0508, STANDARD_GRAVITY) * EXPECTED ** 2;

  it("finds the flow from the discharge pressure it makes", () => {
    const pressure = unit * (RIG.rise + rig.dischargeLoss(EXPECTED) - velocityHead);
    const run = proofRun(RIG, { method: "discharge-pressure", pressure }, LIMITS);
    expect(run.flow).toBeCloseTo(EXPECTED, 9);
    expect(run.flowUncertainty / run.flow).toBeGreaterThan(0.08);
  });

  it("finds the flow from the suction vacuum it makes", () => {
    const vacuum = unit * (RIG.lift + rig.suctionLoss(EXPECTED) + velocityHead);
    const run = proofRun(RIG, { method: "suction-vacuum", vacuum }, LIMITS);
    expect(run.flow).toBeCloseTo(EXPECTED, 9);
  });

  it("reads no flow, and much doubt, where the gauge shows less than the height", () => {
    const run = proofRun(RIG, { method: "suction-vacuum", vacuum: 1000 }, LIMITS);
    expect(run.flow).toBe(0);
    expect(run.flowUncertainty).toBeGreaterThan(0);
  });

  it("takes a flow meter as it is", () => {
    const run = proofRun(RIG, { method: "flow-meter", flow: EXPECTED }, LIMITS);
    expect(run).toMatchObject({ ratio: 1, verdict: "as-expected" });
    expect(run.flowUncertainty).toBeCloseTo(0.03 * EXPECTED, 12);
  });
});

describe("bad readings", () => {
  it.each([
    [{ method: "timed-fill", volume: 0, seconds: 0 }, ["HY-163", "HY-164"]],
    [{ method: "flow-meter", flow: -1 }, ["HY-165", "HY-168"]],
    [{ method: "discharge-pressure", pressure: Number.NaN }, ["HY-166"]],
    [{ method: "suction-vacuum", vacuum: 2e5, vacuumUncertainty: -1 }, ["HY-167", "HY-168"]],
  ] as const)("%o are refused", (reading, codes) => {
    expect(codesOf(() => proofRun(RIG, reading, LIMITS))).toEqual(
      codes.filter((code) => code !== "HY-168" || "vacuumUncertainty" in reading),
    );
  });

  it("limits out of order are refused", () => {
    expect(codesOf(() => proofRun(RIG, fill(1), { grounds: 0.9, notes: 0.8 }))).toEqual(["HY-162"]);
    expect(codesOf(() => proofRun(RIG, fill(1), { grounds: -1, notes: 0.8 }))).toEqual(["HY-161"]);
  });
});

describe("the suction vacuum test splits pump from hose", () => {
  it.each([
    [78_000, "hose-side"],
    [60_000, "pump-side"],
    [70_000, "unclear"],
  ] as const)("%i Pa held at sea level: %s", (vacuum, kind) => {
    expect(vacuumTest(vacuum).kind).toBe(kind);
  });

  it("asks less in thin air, and refuses what no gauge shows", () => {
    expect(vacuumTest(67_000, 90_000).kind).toBe("hose-side");
    expect(codesOf(() => vacuumTest(-1, 0))).toEqual(["HY-171", "HY-172"]);
  });

  it("of a running pump tells a blocked suction from a leak", () => {
    const rig = prepareCase(RIG);
    const flow = 0.005;
    const vacuum = RIG.water.density * STANDARD_GRAVITY * (RIG.lift + rig.suctionLoss(flow));
    expect(runningVacuum(RIG, flow, vacuum).kind).toBe("no-fault-seen");
    expect(runningVacuum(RIG, flow, vacuum + 30_000).because).toContain("blocked");
    expect(runningVacuum(RIG, flow, 1000).kind).toBe("pump-side");
  });
});

function codesOf(act: () => unknown): string[] {
  try {
    act();
  } catch (thrown) {
    if (thrown instanceof InputError) return thrown.faults.map((fault) => fault.code);
  }
  return [];
}
