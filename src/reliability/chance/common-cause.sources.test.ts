import { gaussNodes } from "#numerics";
import { describe, expect, it } from "vitest";
import rows from "#test/references/reliability.json" with { type: "json" };
import { enoughTogether, type Member } from "./common-cause.ts";
import { startingOf } from "./starting.ts";

const alike = (count: number, failing: number, shares: readonly string[] = ["fuel"]): readonly Member[] =>
  Array.from({ length: count }, () => ({ failing, shares }));

/** Mean of 1 − P(enough) over an interval of steady hidden failures. */
function missing(count: number, least: number, rate: number, interval: number, shared: number): number {
  return gaussNodes(48, 0, interval).reduce((sum, { at, weight }) => {
    const failing = -Math.expm1(-rate * at);
    return sum + (weight / interval) * (1 - enoughTogether(alike(count, failing), least, shared));
  }, 0);
}

describe("enough of several", () => {
  it("is the pair tested together where nothing is shared (rows stby-pair-1 and stby-pair-3, exact)", () => {
    for (const id of ["stby-pair-1", "stby-pair-3"]) {
      const row = (rows as unknown as readonly { id: string; inputs: never; expected: never }[]).find(
        (one) => one.id === id,
      )!;
      const { lambda_per_h: rate, T_h: interval } = row.inputs as Record<string, number>;
      const { together_exact: exact } = row.expected as Record<string, number>;
      expect(missing(2, 1, rate!, interval!, 0) / exact!).toBeCloseTo(1, 8);
    }
  });

  it.each([
    [2, 1, (lost: number, beta: number) => ((1 - beta) * lost) ** 2 / 3 + (beta * lost) / 2],
    [3, 2, (lost: number, beta: number) => ((1 - beta) * lost) ** 2 + (beta * lost) / 2],
    [3, 1, (lost: number, beta: number) => ((1 - beta) * lost) ** 3 / 4 + (beta * lost) / 2],
  ])(
    "for %d of which %d must start tends to the beta-factor sums of rare failures (IEC 61508-6 annex B and D, form FROM MEMORY)",
    (of, least, textbook) => {
      for (const beta of [0.02, 0.1, 0.2])
        expect(missing(of, least, 1e-6, 876, beta) / textbook(876e-6, beta)).toBeCloseTo(1, 2);
    },
  );

  it.each(["stby-iec-1", "stby-iec-5"])(
    "is within 1 %% of IEC 61508-6 annex B for 1oo2 and 2oo3 without diagnosis (row %s; 8 h of repair not modelled)",
    (id) => {
      const row = (rows as unknown as readonly { id: string; inputs: never; expected: never }[]).find(
        (one) => one.id === id,
      )!;
      const { lambda_D_per_h: rate, T1_h: interval, beta } = row.inputs as Record<string, number>;
      const { pfd_1oo2: either, pfd_2oo3: most } = row.expected as Record<string, number>;
      expect(Math.abs(missing(2, 1, rate!, interval!, beta!) / either! - 1)).toBeLessThan(0.01);
      expect(Math.abs(missing(3, 2, rate!, interval!, beta!) / most! - 1)).toBeLessThan(0.01);
    },
  );

  it("is counted out for two things shared by different pairs (DERIVED: every case by hand)", () => {
    const [q, beta] = [0.2, 0.1];
    const three = [["fuel"], ["fuel", "hands"], ["hands"]].map((shares) => ({ failing: q, shares }));
    const strike = beta * q;
    const [ends, middle] = [1 - (1 - q) / (1 - strike), 1 - (1 - q) / (1 - strike) ** 2];
    const none = (1 - strike) ** 2 * (1 - ends * middle * ends);
    const one = 2 * strike * (1 - strike) * (1 - ends);
    expect(enoughTogether(three, 1, beta)).toBeCloseTo(none + one, 12);
  });

  it("keeps each one's own chance, and is 1 where none need start", () => {
    expect(enoughTogether([{ failing: 0.3, shares: ["a"] }], 1, 0.5)).toBeCloseTo(0.7, 12);
    expect(enoughTogether(alike(3, 0.3), 0, 0.5)).toBeCloseTo(1, 12);
    expect(enoughTogether(alike(2, 1), 1, 0.1)).toBeCloseTo(0, 12);
    expect(enoughTogether(alike(2, 0), 2, 0.1)).toBeCloseTo(1, 12);
  });

  it("over an unknown chance is the integral over its beta (DERIVED: Gauss places)", () => {
    const { enough } = startingOf({ least: 1, most: 1, trials: 9 }, { kind: "beta", a: 2, b: 4 });
    for (const beta of [0, 0.1, 0.6]) {
      const integral = gaussNodes(64, 0, 1).reduce(
        (sum, { at, weight }) => {
          const density = weight * at ** 2 * (1 - at) ** 11;
          return { up: sum.up + density * enoughTogether(alike(4, at), 2, beta), whole: sum.whole + density };
        },
        { up: 0, whole: 0 },
      );
      expect(enough(2, 4, beta)).toBeCloseTo(integral.up / integral.whole, 9);
    }
  });

  it("is the same over places of a lognormal belief that is all but known", () => {
    const known = startingOf({ least: 0, most: 0, trials: 0 }, { kind: "lognormal", median: 0.1, errorFactor: 1.0001 });
    expect(known.enough(2, 3, 0.1)).toBeCloseTo(enoughTogether(alike(3, 0.1), 2, 0.1), 6);
  });
});
