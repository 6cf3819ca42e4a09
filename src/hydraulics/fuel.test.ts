import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InputError } from "#base";
import { burnAtThrottle, cansForPassage, fuelPlan } from "./fuel.ts";

const POINTS = [
  { throttle: 1, burn: 4e-7 },
  { throttle: 0.4, burn: 1.4e-7 },
  { throttle: 0.7, burn: 2.4e-7 },
];

describe("fuel", () => {
  it("lasts tank over burn, and the refuel clock rings with the reserve left", () => {
    const plan = fuelPlan({ tank: 0.004, cans: 0.02, burn: 1e-6, reserve: 0.001 });
    expect(plan.runtime).toBeCloseTo(4000, 9);
    expect(plan.refuelAt).toBeCloseTo(3000, 9);
    expect(plan.total).toBeCloseTo(24_000, 9);
  });

  it("refuses what cannot be, all at once", () => {
    const codes = codesOf(() => fuelPlan({ tank: 0, cans: -1, burn: 0, reserve: 2 }));
    expect(codes).toEqual(["HY-151", "HY-152", "HY-153", "HY-154"]);
  });

  it("burns what the points say, in any order, and the nearest point's beyond them", () => {
    expect(burnAtThrottle(POINTS, 0.7)).toEqual({ burn: 2.4e-7, kind: "between-points" });
    expect(burnAtThrottle(POINTS, 0.2)).toEqual({ burn: 1.4e-7, kind: "nearest-point" });
    expect(burnAtThrottle(POINTS.slice(0, 1), 0.5)).toEqual({ burn: 4e-7, kind: "nearest-point" });
  });

  it("never burns less with more throttle", () => {
    const share = fc.double({ min: 0.4, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, share, (one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        expect(burnAtThrottle(POINTS, high).burn).toBeGreaterThanOrEqual(burnAtThrottle(POINTS, low).burn);
      }),
      { seed: 20_260_330 },
    );
  });

  it("takes whole cans for a passage, and none where the tank is enough", () => {
    const plan = { tank: 0.004, cans: 0, burn: 1e-6, reserve: 0.001 };
    expect(cansForPassage(plan, 3000, 0.005)).toEqual({ cans: 0, fuel: 0.003 });
    expect(cansForPassage(plan, 8000, 0.005).cans).toBe(1);
    expect(cansForPassage(plan, 8001, 0.005).cans).toBe(2);
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
