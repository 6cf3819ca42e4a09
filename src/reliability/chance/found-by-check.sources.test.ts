import { describe, expect, it } from "vitest";
import { foundByCheck } from "./index.ts";

describe("the chance that a check finds its mode", () => {
  it("MIL-HDBK-1823A, FROM MEMORY: 29 found of 29 show 90 % with 95 % confidence, 28 of 28 do not", () => {
    expect(foundByCheck({ found: 29, planted: 29 }).interval[0]).toBeCloseTo(0.05 ** (1 / 29), 9);
    expect(foundByCheck({ found: 29, planted: 29 }).interval[0]).toBeGreaterThan(0.9);
    expect(foundByCheck({ found: 28, planted: 28 }).interval[0]).toBeLessThan(0.9);
  });

  it("MIL-HDBK-1823A, FROM MEMORY: 45 found of 46 show 90 % with 95 % confidence", () => {
    expect(foundByCheck({ found: 45, planted: 46 }).interval[0]).toBeGreaterThan(0.9);
    expect(foundByCheck({ found: 44, planted: 45 }).interval[0]).toBeLessThan(0.9);
  });

  it("Brown, Cai & DasGupta (2001), FROM MEMORY: alone it has Jeffreys' prior, beta(1/2, 1/2)", () => {
    const { chance, others } = foundByCheck({ found: 7, planted: 10 });
    expect(chance.mean).toBeCloseTo(7.5 / 11, 12);
    expect(others).toBe(0);
  });

  it("says nothing before anything was planted", () => {
    const { interval, chance, more } = foundByCheck({ found: 0, planted: 0 });
    expect(interval).toEqual([0, 1]);
    expect(chance.mean).toBeCloseTo(0.5, 9);
    expect(more).toBeGreaterThan(10);
  });

  it("leans on others where any was tried, whether or not they missed anything, and less the more it was tried itself", () => {
    const good = [1, 2, 3, 4].map((i) => ({ found: 19 + (i % 2), planted: 20 }));
    const alone = foundByCheck({ found: 1, planted: 2 });
    const pooled = foundByCheck({ found: 1, planted: 2 }, good);
    expect(pooled.others).toBe(4);
    expect(pooled.chance.mean).toBeGreaterThan(alone.chance.mean + 0.1);
    expect(foundByCheck({ found: 20, planted: 40 }, good).chance.p95).toBeLessThan(0.7);
    expect(foundByCheck({ found: 1, planted: 2 }, [{ found: 0, planted: 0 }]).others).toBe(0);
    const [clean, oneMissed] = [5, 4].map((first) =>
      foundByCheck(
        { found: 5, planted: 5 },
        [first, 5, 5].map((found) => ({ found, planted: 5 })),
      ),
    ) as [ReturnType<typeof foundByCheck>, ReturnType<typeof foundByCheck>];
    expect(clean.others).toBe(3);
    expect(oneMissed.chance.p05).toBeLessThan(clean.chance.p05);
  });
});
