import { describe, expect, it } from "vitest";
import { repeatableStream } from "#numerics";
import { ask } from "../ask.ts";

/** What the two questions say of failing where one has others alike. */
interface Told {
  readonly because: string;
  readonly failing: { readonly mean: number; readonly p95: number };
  readonly rate: { readonly mean: number; readonly p95: number };
}

const asked = (failures: number, fleet: readonly (readonly [number, number])[], pooling = "wary", trials = 14) =>
  ask("start-chance", {
    failures,
    trials,
    pooling,
    fleet: fleet.map(([x, n]) => ({ failures: x, trials: n })),
  }) as Told;

const rated = (failures: number, fleet: readonly (readonly [number, number])[], years = 5) =>
  ask("failure-rate", {
    failures,
    time: `${years} years`,
    fleet: fleet.map(([x, t]) => ({ failures: x, time: `${t} years` })),
  }) as Told;

const weightIn = (because: string) => Number(/about as much as ([\d.e+]+) demands/.exec(because)?.[1]);

describe("others in which none failed", () => {
  it.each(["wary", "whole", "fitted"])("speak for a start as others do, %s", (pooling) => {
    const clean = asked(
      1,
      [
        [0, 20],
        [0, 30],
      ],
      pooling,
    );
    expect(clean.because).toContain("2 others, in which none failed");
    expect(clean.failing.mean).toBeLessThan(
      asked(1, [
        [1, 20],
        [0, 30],
      ]).failing.mean,
    );
    expect(clean.failing.mean).toBeLessThan(0.06);
  });

  it("speak for a rate too, and the answer says so", () => {
    const clean = rated(1, [
      [0, 10],
      [0, 20],
    ]);
    expect(clean.because).toContain("2 others, in which none failed");
    expect(clean.rate.mean).toBeLessThan(
      rated(1, [
        [1, 10],
        [0, 20],
      ]).rate.mean,
    );
    expect(
      rated(0, [
        [0, 10],
        [0, 20],
      ]).rate.mean *
        365.25 *
        86_400,
    ).toBeCloseTo(0.5 / 35, 9);
  });

  it("say nothing where they were never asked", () => {
    const never = asked(1, [
      [0, 0],
      [0, 0],
    ]);
    expect(never.because).toContain("never asked");
    expect(never.failing.mean).toBeCloseTo(1.5 / 15, 12);
  });
});

describe("a rate among others in which none failed", () => {
  it("DERIVED: has the percentiles of gamma(1/2, all their time)", () => {
    const { rate } = rated(0, [
      [0, 10],
      [0, 20],
    ]) as unknown as { rate: { p05: number; p50: number; p95: number } };
    const years = [rate.p05, rate.p50, rate.p95].map((one) => one * 365.25 * 86_400 * 35);
    // Half of chi-square with one degree of freedom: 0.003932, 0.4549 and 3.841.
    expect(years[0]).toBeCloseTo(0.003932 / 2, 5);
    expect(years[1]).toBeCloseTo(0.4549 / 2, 4);
    expect(years[2]).toBeCloseTo(3.841 / 2, 3);
  });
});

describe("one failure more never makes failing less likely", () => {
  const random = repeatableStream(17);
  const whole = (least: number, most: number) => least + Math.floor(random() * (most - least + 1));
  const cleanFleet = () => Array.from({ length: whole(2, 6) }, () => [0, whole(5, 40)] as const);
  const fleetOf = () => cleanFleet().map(([, n]) => [whole(0, Math.floor(n / 4)), n] as const);

  it("in one's own record, whatever the others did and however they are pooled", () => {
    for (const pooling of ["wary", "fitted"])
      for (const fleet of [cleanFleet(), cleanFleet(), fleetOf(), fleetOf()]) {
        const means = [0, 1, 2, 3, 6].map((failures) => asked(failures, fleet, pooling).failing.mean);
        expect(means, JSON.stringify(fleet)).toEqual(means.toSorted((one, other) => one - other));
      }
    for (const fleet of [cleanFleet(), cleanFleet(), fleetOf(), fleetOf()]) {
      const means = [0, 1, 2, 3, 6].map((failures) => rated(failures, fleet).rate.mean);
      expect(means, JSON.stringify(fleet)).toEqual(means.toSorted((one, other) => one - other));
    }
  });

  it("in another's, the first in a fleet in which none failed, for one that never failed either", () => {
    for (let i = 0; i < 25; i += 1) {
      const [fleet, trials] = [cleanFleet(), whole(5, 30)];
      const clean = asked(0, fleet, "wary", trials).failing.mean;
      for (const k of fleet.keys()) {
        const one = fleet.map(([x, n], j) => [j === k ? x + 1 : x, n] as const);
        expect(asked(0, one, "wary", trials).failing.mean, JSON.stringify({ fleet, k })).toBeGreaterThan(clean);
      }
    }
  }, 60_000);
});

describe("how much the others weigh", () => {
  const LARGE = [
    [0, 10_000],
    [1, 10_000],
  ] as const;

  it("is the weight of the pooling that was used: it fits what the record came to", () => {
    const [wary, fitted] = ["wary", "fitted"].map((pooling) => asked(1, LARGE, pooling).because);
    expect(weightIn(fitted!)).toBeGreaterThan(100);
    expect(wary).toMatch(/less than one demand|about as much as \d{1,2} demands/);
    expect(fitted).toContain("better known than a small fleet knows it");
    for (const pooling of ["wary", "whole"]) expect(asked(1, LARGE, pooling).because).not.toContain("better known");
  });

  it("DERIVED: of a beta prior it is a + b, by the width of the belief less that of so many demands", () => {
    const own = { failures: 1, trials: 14 };
    const fleet = [4, 3, 5, 4, 2, 6].map((failures) => ({ failures, trials: 20 }));
    for (const pooling of ["wary", "whole", "fitted"]) {
      const told = ask("start-chance", { ...own, fleet, pooling }) as Told;
      expect(weightIn(told.because), told.because).toBeGreaterThan(1);
    }
  });

  it("is told as less than one demand where it is", () => {
    const apart = [0, 20, 0, 20, 0, 20].map((failures) => ({ failures, trials: 20 }));
    const { because } = ask("start-chance", { failures: 1, trials: 14, fleet: apart, pooling: "fitted" }) as Told;
    expect(because).toContain("weighs less than one demand");
  });
});
