import { normalChance, normalQuantile } from "#numerics";
import { describe, expect, it } from "vitest";
import { likelyPrior, needKits, type CallForHelp } from "../index.ts";

/*
 * A call that leaves everything log-normal. No hole was told, so its area is (median 20 mm, log spread 2.6); the
 * coefficient is 0.6 with log spread 0.08, the depth told 0.3 m with 0.15, of which the root takes half; she is dry to
 * below the hole, and the first kit pumps at once. Shares of a kit are given as a log-normal. Then
 * inflow and what one kit moves are log-normals, and the chance that one is more than the other is a normal's.
 */
const MEDIAN = 0.8;
const SPREAD = 0.4;
const SHARED = Math.SQRT1_2;
const CALL: Omit<CallForHelp, "usual"> = {
  length: 12,
  kind: "fishing boat",
  holeDepth: 0.3,
  waterInside: 0,
  arrival: 0,
  share: (chance) => MEDIAN * Math.exp(SPREAD * normalQuantile(chance)),
  onScene: 3600,
  burn: 4e-7,
  fuelInKit: 0,
  can: 0.005,
};
const { median: AREA, logSpread: AREA_SPREAD } = likelyPrior(0).holeArea;
const MIDDLE = Math.log(0.6 * AREA * Math.sqrt(2 * 9.80665 * 0.3));
const INFLOW_SPREAD = Math.hypot(AREA_SPREAD, 0.08, 0.15 / 2);

/** Chance that one kit of this flow, once it runs, moves so many times the inflow. */
function oneMoves(flow: number, times = 1): number {
  return normalChance((Math.log((flow * MEDIAN) / times) - MIDDLE) / Math.hypot(INFLOW_SPREAD, SPREAD));
}

const STEPS = Array.from({ length: 121 }, (_, k) => -6 + k / 10);
const WEIGHTS = STEPS.map((z) => Math.exp(-(z * z) / 2) / Math.sqrt(2 * Math.PI) / 10);

/** Chance that two kits that run move the inflow: what is each kit's own summed over, what they share in the normal. */
function twoMove(flow: number): number {
  let sum = 0;
  STEPS.forEach((one, i) =>
    STEPS.forEach((other, k) => {
      const own = Math.exp(SHARED * SPREAD * one) + Math.exp(SHARED * SPREAD * other);
      const off = (Math.log(flow * MEDIAN * own) - MIDDLE) / Math.hypot(INFLOW_SPREAD, SHARED * SPREAD);
      sum += WEIGHTS[i]! * WEIGHTS[k]! * normalChance(off);
    }),
  );
  return sum;
}

const inflowAt = (z: number): number => Math.exp(MIDDLE + INFLOW_SPREAD * z);

const NEAR = 0.012;

describe("kits needed against closed forms (DERIVED: a log-normal over another; binomial)", () => {
  it.each([0.5, 2, 5, 15])(
    "one kit of %s L/s holds, gains, and holds with the hole halved, as often as it must",
    (litres) => {
      const flow = litres / 1000;
      const [one] = needKits({ ...CALL, usual: { flow, starts: 0.9 } }).byKits;
      expect(Math.abs(one!.holding - 0.9 * oneMoves(flow))).toBeLessThan(NEAR);
      expect(Math.abs(one!.gaining - 0.9 * oneMoves(flow, 1.15))).toBeLessThan(NEAR);
      expect(Math.abs(one!.holdingPatched - 0.9 * oneMoves(flow, 0.5))).toBeLessThan(NEAR);
    },
  );

  it.each([1, 4])("two kits of %s L/s that start eight times in ten hold as often as they must", (litres) => {
    const flow = litres / 1000;
    const two = needKits({ ...CALL, usual: { flow, starts: 0.8 } }).byKits[1]!;
    const chance = 0.64 * twoMove(flow) + 0.32 * oneMoves(flow);
    expect(Math.abs(two.holding - chance)).toBeLessThan(NEAR);
  });

  it("kits that move any inflow fail together only where each does: one less the chance of none, by number", () => {
    const { byKits } = needKits({ ...CALL, usual: { flow: 1e6, starts: 0.7 } });
    byKits.forEach(({ holding, kits }) => expect(Math.abs(holding - (1 - 0.3 ** kits))).toBeLessThan(NEAR));
  });

  it("the inflow's five quantiles are those of its log-normal", () => {
    const { inflow } = needKits({ ...CALL, usual: { flow: 0.004, starts: 0.9 } });
    expect(Math.log(inflow.p50 / inflowAt(0))).toBeCloseTo(0, 1);
    expect(Math.log(inflow.p05 / inflowAt(-1.645))).toBeCloseTo(0, 0);
    expect(Math.log(inflow.p95 / inflowAt(1.645))).toBeCloseTo(0, 0);
  });
});
