import { describe, expect, it } from "vitest";
import { bestInterval, standbyOf, type IntervalCosts } from "./index.ts";

const YEAR = 365.25 * 86_400;
const HOUR = 3600;
const RARE = { life: { shape: 1, scale: 20 * YEAR }, testTime: 0, repairTime: 0, demandFailure: 0 };
const COSTS: IntervalCosts = {
  test: 5,
  parts: 2,
  wearPerStart: 0.5,
  startsPerTest: 4,
  failureOnTheNight: 720,
  callsPerYear: 0.5,
  perDayNotReady: 0,
};

/** Cost of a year by the sum, worked from the unavailability alone. */
function worked(given: Parameters<typeof bestInterval>[0], costs: IntervalCosts, interval: number): number {
  const { unavailability, parts } = standbyOf({ ...given, interval });
  const ofTest = costs.test + costs.parts! + costs.wearPerStart! * costs.startsPerTest!;
  const daysOut = (parts.testing + parts.repair) * 365.25;
  const night = costs.failureOnTheNight * costs.callsPerYear * unavailability;
  return (ofTest * YEAR) / interval + night + costs.perDayNotReady * daysOut;
}

describe("what an interval costs", () => {
  it("DERIVED by hand: (5 + 2 + 4 × 0.5) hours a test against 720 × 0.5 × T / 40 years is least at one year", () => {
    const { firstOrder, best } = bestInterval(RARE, COSTS);
    expect(firstOrder!.interval / YEAR).toBeCloseTo(1, 9);
    expect(firstOrder!.costPerYear).toBeCloseTo(18, 9);
    expect(best.interval / YEAR).toBeGreaterThan(1);
    expect(best.interval / YEAR).toBeLessThan(1.03);
  });

  const at = (more: object) => bestInterval(real, { ...COSTS, ...more }).best;
  const real = { ...RARE, life: { shape: 1.4, scale: 6 * YEAR }, testTime: 11 * HOUR, demandFailure: 0.02 };
  it.each([
    ["hours alone", { parts: 0, wearPerStart: 0 }],
    ["parts too", { wearPerStart: 0 }],
    ["wear too", {}],
    ["days not ready too", { perDayNotReady: 3 }],
  ])("DERIVED by trying a fine grid of intervals: none beats the best, with %s", (_, more) => {
    const costs = { ...COSTS, ...more };
    for (const given of [real, { ...real, repairTime: 80 * HOUR, harm: 0.01 }]) {
      const { best } = bestInterval(given, costs);
      const grid = Array.from({ length: 4000 }, (__, i) => 0.02 * YEAR * 1000 ** (i / 3999));
      const least = grid.reduce((one, t) => Math.min(one, worked(given, costs, t)), Infinity);
      expect(best.costPerYear).toBeCloseTo(worked(given, costs, best.interval), 9);
      expect(best.costPerYear!).toBeLessThanOrEqual(least * (1 + 1e-9));
      expect(best.costPerYear!).toBeGreaterThan(least * 0.9999);
    }
  });

  it("is longer the more one opening costs, whatever it costs by, and says what a year is made of", () => {
    const plain = at({ parts: 0, wearPerStart: 0 });
    expect(at({ wearPerStart: 0 }).interval).toBeGreaterThan(plain.interval);
    expect(at({ parts: 0 }).interval).toBeGreaterThan(plain.interval);
    expect(at({ parts: 0, wearPerStart: 0, test: 9 }).costPerYear).toBeCloseTo(at({}).costPerYear!, 9);
    const { costs, costPerYear } = at({ perDayNotReady: 2 });
    expect(Object.values(costs!).reduce((sum, one) => sum + one, 0)).toBeCloseTo(costPerYear!, 12);
    for (const one of Object.values(costs!)) expect(one).toBeGreaterThan(0);
  });
});

describe("harm done by an opening", () => {
  it("DERIVED: with no other fault it is missing a share h of the time, and h of the tests find it", () => {
    const none = { ...RARE, life: { shape: 1, scale: 1e12 * YEAR }, harm: 0.04, interval: YEAR };
    const { unavailability, faultFound, firstOrder } = standbyOf(none);
    expect([unavailability, faultFound, firstOrder].map((one) => Number(one.toFixed(9)))).toEqual([0.04, 0.04, 0.04]);
  });

  it("DERIVED by playing 200 000 openings: hidden faults, harm, repairs", () => {
    const given = { ...RARE, life: { shape: 1, scale: 3 * YEAR }, repairTime: 0.1 * YEAR, harm: 0.05, interval: YEAR };
    let seed = 12_345;
    const random = () => (seed = (seed * 48_271) % 2_147_483_647) / 2_147_483_647;
    let [down, found, isMended] = [0, 0, false];
    for (let i = 0; i < 200_000; i += 1) {
      const served = isMended ? 0.9 : 1;
      const fault = random() < 0.05 ? 0 : -3 * Math.log(random());
      down += Math.max(0, served - fault) + (1 - served);
      isMended = fault < served;
      if (isMended) found += 1;
    }
    const { unavailability, faultFound } = standbyOf(given);
    expect(Math.abs(down / 200_000 - unavailability)).toBeLessThan(0.003);
    expect(Math.abs(found / 200_000 - faultFound)).toBeLessThan(0.004);
  });

  it("makes opening often pay less: the least unready interval grows with it", () => {
    const given = { ...RARE, testTime: 11 * HOUR, repairTime: 60 * HOUR };
    const best = [0, 0.02, 0.1].map((harm) => bestInterval({ ...given, harm }).best.interval);
    expect(best).toEqual(best.toSorted((one, other) => one - other));
  });
});
