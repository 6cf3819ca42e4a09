import { describe, expect, it } from "vitest";
import { waterAt } from "#water";
import { deliveryOf } from "./delivery.ts";
import { primingOf } from "./priming.ts";
import { PRACTICE_LIFT } from "./suction.ts";

const kit = (lift: number) => ({
  lift,
  hose: { bore: 0.0508, length: 4.6 },
  deadVolume: 0.003,
  stroke: 0.0005,
  strokeRate: 45 / 60,
  airLeak: 0,
  water: waterAt(288.15, 35),
  airPressure: 101_325,
});

/**
 * Practice, not measurement: US Army TM 10-4320-310-14 as read in excerpt, and field figures of low authority. They
 * bound what a computed answer may say.
 */
describe("US Army TM 10-4320-310-14 (read in excerpt, practice)", () => {
  it.each([1, 2, 3, 4])("a kit with about 4.6 m of suction hose primes inside about a minute at %i m", (lift) => {
    const outcome = primingOf(kit(lift));
    expect(outcome.kind === "primes" && outcome.seconds).toBeLessThan(60);
    expect(outcome.kind === "primes" && outcome.seconds).toBeGreaterThan(10);
  });

  it("loss is plain above about 4.6 m, and beyond about 7.6 m suction is not attempted", () => {
    expect(PRACTICE_LIFT).toEqual({ plainLossAbove: 4.6, notBeyond: 7.6 });
    const hose = {
      bore: 0.0508,
      length: 9,
      fittings: 2.3,
      resistance: { kind: "roughness" as const, roughness: 5e-5 },
    };
    const flowAt = (lift: number): number =>
      deliveryOf({
        water: waterAt(288.15, 35),
        airPressure: 101_325,
        pump: {
          curve: [
            { flow: 0, head: 24 },
            { flow: 0.005, head: 19 },
            { flow: 0.009, head: 6 },
          ],
          greatestLift: 7.62,
        },
        speedRatio: 1,
        lift,
        suction: hose,
        rise: 1,
        discharge: { ...hose, length: 8 },
        exitLoss: true,
        pumps: 1,
      }).flow;
    expect(flowAt(4.6) / flowAt(1)).toBeLessThan(0.8);
    expect(flowAt(7) / flowAt(4.6)).toBeLessThan(0.6);
    expect(flowAt(7.7)).toBe(0);
  });
});
