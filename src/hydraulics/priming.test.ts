import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InputError } from "#base";
import { waterAt } from "#water";
import { leakFromPrime } from "./prime-leak.ts";
import { greatestLift, pressureAfterStrokes, primingOf, strokesToPressure, type PrimingCase } from "./priming.ts";

const CASE: PrimingCase = {
  lift: 3,
  hose: { bore: 0.0508, length: 4.6 },
  deadVolume: 0.003,
  stroke: 0.0005,
  strokeRate: 45 / 60,
  airLeak: 0,
  water: waterAt(288.15, 35),
  airPressure: 101_325,
};
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const seconds = (given: PrimingCase): number => {
  const outcome = primingOf(given);
  return outcome.kind === "primes" ? outcome.seconds : Infinity;
};

describe("priming", () => {
  it("takes more strokes the higher, the longer and the leakier", () => {
    expect(seconds({ ...CASE, lift: 4 })).toBeGreaterThan(seconds(CASE));
    expect(seconds({ ...CASE, hose: { ...CASE.hose, length: 7 } })).toBeGreaterThan(seconds(CASE));
    expect(seconds({ ...CASE, airLeak: 5e-5 })).toBeGreaterThan(seconds(CASE));
  });

  it("counts the last stroke by the part of it needed", () => {
    const outcome = primingOf(CASE);
    expect(outcome.kind).toBe("primes");
    if (outcome.kind !== "primes") return;
    expect(outcome.wholeStrokes).toBe(Math.ceil(outcome.strokes));
    expect(outcome.seconds).toBeCloseTo(outcome.strokes / CASE.strokeRate, 9);
  });

  it("needs no stroke where the pump is below the water", () => {
    expect(primingOf({ ...CASE, lift: -1 })).toMatchObject({ kind: "primes", strokes: 0, wholeStrokes: 0 });
  });

  it("will not prime above the lift at which water boils", () => {
    const limit = greatestLift(CASE);
    expect(limit).toBeGreaterThan(9.8);
    expect(limit).toBeLessThan(10.1);
    const high = { ...CASE, lift: limit + 0.01, hose: { ...CASE.hose, length: 12 } };
    expect(primingOf(high)).toMatchObject({ kind: "will-not-prime" });
  });

  it("will not prime above the lift at which the leak keeps up", () => {
    const leaky = { ...CASE, airLeak: 0.7 * CASE.stroke * CASE.strokeRate };
    expect(greatestLift(leaky)).toBeCloseTo((0.3 * 101_325) / (CASE.water.density * 9.80665), 9);
    const outcome = primingOf({ ...leaky, lift: 3.1 });
    expect(outcome.kind).toBe("will-not-prime");
    expect(outcome.because).toContain("the leak lets in as much air");
  });

  it("is the closed-volume formula where no water rises", () => {
    const pressure = pressureAfterStrokes(101_325, 0.02, 0.002, 5);
    expect(strokesToPressure(101_325, pressure, 0.02, 0.002)).toBeCloseTo(5, 12);
  });

  it("never goes faster with more lift, nor jumps", () => {
    fc.assert(
      fc.property(between(0.2, 9), between(0, 2e-4), (lift, airLeak) => {
        const given = { ...CASE, lift, airLeak, hose: { bore: 0.0508, length: 10 } };
        const now = seconds(given);
        expect(seconds({ ...given, lift: lift + 0.01 })).toBeGreaterThanOrEqual(now - 1e-9);
        if (lift < 0.8 * greatestLift(given)) expect(seconds({ ...given, lift: lift + 1e-9 }) - now).toBeLessThan(1e-5);
      }),
      { seed: 20_260_320, numRuns: 500 },
    );
  });

  it("names every fault", () => {
    const broken = {
      ...CASE,
      lift: 99,
      hose: { bore: 0, length: -1 },
      deadVolume: -1,
      stroke: 0,
      strokeRate: 0,
      airLeak: -1,
      airPressure: 0,
    };
    expect(codesOf(() => primingOf(broken))).toEqual(
      [131, 132, 133, 134, 135, 136, 137, 138, 139].map((n) => `HY-${n}`),
    );
  });
});

describe("a slow prime", () => {
  it("implies the leak that makes the computed time equal the observed one", () => {
    const leak = leakFromPrime(CASE, 80);
    expect(leak.kind).toBe("leaks");
    if (leak.kind !== "leaks") return;
    expect(seconds({ ...CASE, airLeak: leak.airLeak })).toBeCloseTo(80, 3);
    expect(leak.greatestLift).toBeCloseTo(greatestLift({ ...CASE, airLeak: leak.airLeak }), 9);
    expect(leak.lookFirst.length).toBeGreaterThan(3);
  });

  it("looks for an open path where the leak is great and for a loose joint where it is small", () => {
    const first = (observed: number): string => {
      const leak = leakFromPrime(CASE, observed);
      return leak.kind === "leaks" ? leak.lookFirst[0]! : "";
    };
    expect(first(300)).toContain("strainer");
    expect(first(1.3 * seconds(CASE))).toContain("coupling");
  });

  it("is no leak where the time was to be expected, and none can be named above the greatest lift", () => {
    expect(leakFromPrime(CASE, seconds(CASE)).kind).toBe("as-expected");
    const high = { ...CASE, lift: 11, hose: { ...CASE.hose, length: 12 } };
    expect(leakFromPrime(high, 60).kind).toBe("cannot-prime");
    expect(codesOf(() => leakFromPrime(CASE, 0))).toEqual(["HY-140"]);
  });

  it("never implies less leak for a slower prime", () => {
    fc.assert(
      fc.property(between(50, 400), between(1, 100), (observed, more) => {
        expect(leakAt(observed + more)).toBeGreaterThanOrEqual(leakAt(observed) - 1e-9);
      }),
      { seed: 20_260_321, numRuns: 100 },
    );
  });
});

function leakAt(time: number): number {
  const leak = leakFromPrime(CASE, time);
  return leak.kind === "leaks" ? leak.airLeak : 0;
}

function codesOf(act: () => unknown): string[] {
  try {
    act();
  } catch (thrown) {
    if (thrown instanceof InputError) return thrown.faults.map((fault) => fault.code);
  }
  return [];
}
