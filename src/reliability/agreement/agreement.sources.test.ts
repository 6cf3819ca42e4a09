import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chanceToSee, cohensKappa, sampleToSee } from "./index.ts";

/** Every way to take `size` of `of`, as lists of numbers from 0. */
function* waysToTake(of: number, size: number, from = 0): Generator<readonly number[]> {
  if (size === 0) {
    yield [];
    return;
  }
  for (let one = from; one <= of - size; one += 1) {
    for (const rest of waysToTake(of, size - 1, one + 1)) yield [one, ...rest];
  }
}

/** Share of all ways in which one of the first `wrong` is taken. */
function counted(of: number, wrong: number, size: number): number {
  const ways = [...waysToTake(of, size)];
  return ways.filter((way) => way.some((one) => one < wrong)).length / ways.length;
}

function kappaAt(p: readonly number[]): number {
  const told = cohensKappa([p.slice(0, 2), p.slice(2)]);
  return told.kind === "told" ? told.kappa : Number.NaN;
}

function rows(a: number, b: number, c: number, d: number) {
  return [
    [a, b],
    [c, d],
  ];
}

describe("how many to look at", () => {
  it("sees at least one by the chance it says (DERIVED by counting every way to take them)", () => {
    for (const of of [1, 5, 9, 13]) {
      for (let wrong = 0; wrong <= of; wrong += 1) {
        for (let size = 0; size <= of; size += 1) {
          expect(chanceToSee(of, wrong, size)).toBeCloseTo(counted(of, wrong, size), 12);
        }
      }
    }
  });

  it("is the least that reaches the chance (DERIVED by counting every way to take them)", () => {
    for (const of of [1, 4, 10, 11, 14]) {
      for (const chance of [0.5, 0.9, 0.99]) {
        const told = sampleToSee(of, 0.1, chance);
        expect(told.wrong).toBe(Math.ceil(of / 10));
        expect(counted(of, told.wrong, told.size)).toBeGreaterThanOrEqual(chance - 1e-9);
        expect(counted(of, told.wrong, told.size)).toBeCloseTo(told.chance, 12);
        expect(counted(of, told.wrong, told.size - 1)).toBeLessThan(chance);
      }
    }
  });

  it("lies within one of n = (1 − (1 − p)^(1/D)) (N − (D − 1) / 2) (Cannon & Roe, Livestock Disease Surveys, 1982)", () => {
    for (const of of [20, 50, 100, 300, 1000, 5000]) {
      for (const share of [0.02, 0.05, 0.1, 0.25]) {
        for (const chance of [0.9, 0.95, 0.99]) {
          const { size, wrong } = sampleToSee(of, share, chance);
          const near = (1 - (1 - chance) ** (1 / wrong)) * (of - (wrong - 1) / 2);
          expect(Math.abs(size - near)).toBeLessThanOrEqual(1);
        }
      }
    }
  });

  it("comes to 22 of very many for nine in ten and a tenth wrong, since 0.9^22 < 0.1 < 0.9^21 (DERIVED)", () => {
    expect(sampleToSee(1_000_000, 0.1, 0.9).size).toBe(22);
    expect(0.9 ** 22).toBeLessThan(0.1);
    expect(0.9 ** 21).toBeGreaterThan(0.1);
  });

  it("counts a tenth of 70 as 7, of 71 as 8, and asks for nothing of nothing", () => {
    expect(sampleToSee(70, 0.1, 0.9).wrong).toBe(7);
    expect(sampleToSee(71, 0.1, 0.9).wrong).toBe(8);
    expect(sampleToSee(0, 0.1, 0.9)).toEqual({ size: 0, wrong: 0, chance: 0 });
    expect(sampleToSee(1, 0.1, 0.9)).toEqual({ size: 1, wrong: 1, chance: 1 });
  });

  it("never asks for fewer where the chance is higher or a smaller share is wrong", () => {
    const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), share, share, share, (of, wrong, one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        expect(sampleToSee(of, wrong, low).size).toBeLessThanOrEqual(sampleToSee(of, wrong, high).size);
        expect(sampleToSee(of, high, wrong).size).toBeLessThanOrEqual(sampleToSee(of, low, wrong).size);
      }),
    );
  });
});

describe("Cohen's kappa", () => {
  it("SAS PROC FREQ prints 0.4842, error 0.1380, 0.2137 to 0.7547 for its skin example (as kept in statsmodels' tests)", () => {
    const told = cohensKappa([
      [0, 4, 1],
      [0, 8, 0],
      [0, 1, 5],
    ]);
    if (told.kind !== "told") throw new Error("not told");
    expect(told.kappa).toBeCloseTo(0.4842, 4);
    expect(told.standardError).toBeCloseTo(0.138, 4);
    expect(told.interval[0]).toBeCloseTo(0.2137, 4);
    expect(told.interval[1]).toBeCloseTo(0.7547, 4);
  });

  it("is (0.7 − 0.5) / (1 − 0.5) = 0.4 where 35 of 50 agree and chance gives half (textbook example, FROM MEMORY)", () => {
    const told = cohensKappa([
      [20, 5],
      [10, 15],
    ]);
    expect(told).toMatchObject({ kind: "told" });
    expect(told.kind === "told" && told.kappa).toBeCloseTo(0.4, 12);
  });

  it("has the spread that drawing the cases again and again shows (DERIVED by the delta method on finite differences)", () => {
    const shares = [0.5, 0.1, 0.05, 0.35];
    const cases = 400;
    const total = shares.reduce((sum, one) => sum + one, 0);
    const slopes = shares.map((_, at) => {
      const moved = (by: number) => shares.map((one, i) => (i === at ? one + by : one));
      return (kappaAt(moved(1e-6)) - kappaAt(moved(-1e-6))) / 2e-6;
    });
    const mean = slopes.reduce((sum, slope, i) => sum + slope * (shares[i] ?? 0), 0) / total;
    const variance = slopes.reduce((sum, slope, i) => sum + (shares[i] ?? 0) * (slope - mean) ** 2, 0);
    const told = cohensKappa([
      [200, 40],
      [20, 140],
    ]);
    expect(told.kind === "told" && told.standardError).toBeCloseTo(Math.sqrt(variance / cases), 6);
  });

  it("is 1 without spread where both always agree and used both words", () => {
    expect(
      cohensKappa([
        [7, 0],
        [0, 3],
      ]),
    ).toEqual({ kind: "told", kappa: 1, standardError: 0, interval: [1, 1] });
  });

  it("cannot be told where one of the two said the same throughout, or nothing was compared", () => {
    const alone = { kind: "cannot-tell", because: "one-word-only" };
    expect(cohensKappa(rows(20, 0, 0, 0))).toEqual(alone);
    expect(cohensKappa(rows(18, 2, 0, 0))).toEqual(alone);
    expect(cohensKappa(rows(18, 0, 2, 0))).toEqual(alone);
    expect(cohensKappa(rows(0, 0, 0, 0))).toEqual({ kind: "cannot-tell", because: "nothing-compared" });
  });
});
