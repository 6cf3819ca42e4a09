import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  bestInterval,
  bestPurchases,
  clopperPearson,
  fitLife,
  intervalCensored,
  leastStock,
  medianOf,
  powerLaw,
  productLimit,
  standbyOf,
  startingOf,
  stockOf,
  type Part,
  type StandbyCase,
} from "./index.ts";

const runs = { seed: 4711, numRuns: 60 };
const one = (from: number, to: number) => fc.double({ min: from, max: to, noNaN: true });

const cases: fc.Arbitrary<StandbyCase> = fc.record({
  life: fc.record({ shape: one(0.6, 3), scale: one(500, 20_000) }),
  interval: one(200, 4000),
  testTime: one(0, 20),
  repairTime: one(0, 100),
  demandFailure: one(0, 0.2),
});

/** The same counted instant by instant through many intervals of one simulated history of chances. */
function stepped(given: StandbyCase): number {
  const { interval, testTime, repairTime, demandFailure: q, life } = given;
  let [found, mean] = [0, 0];
  const good = (age: number) => (age <= 0 ? 0 : Math.exp(-((age / life.scale) ** life.shape)));
  for (let round = 0; round < 40; round += 1) {
    const n = 4000;
    let sum = 0;
    for (let i = 0; i < n; i += 1) {
      const at = ((i + 0.5) * interval) / n - testTime;
      sum += (1 - found) * good(at) + found * good(at - repairTime);
    }
    mean = 1 - ((1 - q) * sum) / n;
    const end = interval - testTime;
    found = 1 - (1 - q) * ((1 - found) * good(end) + found * good(end - repairTime));
  }
  return mean;
}

describe("standby", () => {
  it("is what counting instant by instant comes to", () => {
    fc.assert(
      fc.property(cases, (given) => {
        expect(standbyOf(given).unavailability).toBeCloseTo(stepped(given), 3);
      }),
      { ...runs, numRuns: 15 },
    );
  });

  it("has parts that add up, chances that are chances, and for one rate lies below its textbook sum", () => {
    fc.assert(
      fc.property(cases, (given) => {
        const { unavailability, parts, faultFound, firstOrder } = standbyOf(given);
        expect(parts.hidden + parts.testing + parts.repair + parts.demand).toBeCloseTo(unavailability, 12);
        for (const chance of [unavailability, faultFound, ...Object.values(parts)]) {
          expect(chance).toBeGreaterThanOrEqual(0);
          expect(chance).toBeLessThanOrEqual(1);
        }
        if (given.life.shape === 1) expect(unavailability).toBeLessThanOrEqual(firstOrder * (1 + 1e-9));
      }),
      runs,
    );
  });

  it("covering everything with an overhaul at every test is no overhaul, and covering less is worse", () => {
    fc.assert(
      fc.property(cases, one(0.1, 0.95), (given, share) => {
        const overhaul = given.interval * 4;
        const all = standbyOf({ ...given, coverage: { share: 1, overhaul } }).unavailability;
        expect(all).toBeCloseTo(standbyOf(given).unavailability, 9);
        expect(standbyOf({ ...given, coverage: { share, overhaul } }).unavailability).toBeGreaterThan(all - 1e-12);
      }),
      runs,
    );
  });

  it("a pair staggered beats a pair tested together, both beat one; a wholly shared fault leaves no gain together", () => {
    fc.assert(
      fc.property(one(500, 20_000), one(100, 2000), (scale, interval) => {
        const plain = { life: { shape: 1, scale }, interval, testTime: 0, repairTime: 0, demandFailure: 0 };
        const of = (tested: "together" | "staggered", shared: number) =>
          standbyOf({ ...plain, pair: { tested, shared } }).unavailability;
        expect(of("staggered", 0)).toBeLessThan(of("together", 0));
        expect(of("together", 0)).toBeLessThan(standbyOf(plain).unavailability);
        expect(of("together", 1)).toBeCloseTo(standbyOf(plain).unavailability, 9);
      }),
      runs,
    );
  });

  it("no interval is better than the best, and the flat region's ends are 5 % worse", () => {
    fc.assert(
      fc.property(cases, one(0.2, 5), (given, by) => {
        const ready = { ...given, testTime: given.testTime + 1 };
        const { best, flat, lies } = bestInterval(ready);
        const at = (interval: number) => standbyOf({ ...ready, interval }).unavailability;
        const other = Math.max((ready.testTime + ready.repairTime) * 1.01, best.interval * by);
        expect(at(other)).toBeGreaterThanOrEqual(best.unavailability * (1 - 1e-9));
        if (lies !== "longest" && lies !== "flat" && flat.to < 49 * given.life.scale)
          expect(at(flat.to) / best.unavailability).toBeCloseTo(1.05, 3);
      }),
      { ...runs, numRuns: 20 },
    );
  });
});

const lives = fc.array(fc.record({ age: one(0.1, 50), isGood: fc.boolean(), count: fc.integer({ min: 1, max: 4 }) }), {
  minLength: 4,
  maxLength: 25,
});

describe("lifetimes", () => {
  it("without a law is the same where every look is exact, by either way", () => {
    fc.assert(
      fc.property(lives, (given) => {
        const records = given.map(({ age, isGood, count }) => ({ after: age, before: isGood ? Infinity : age, count }));
        const exact = productLimit(records, 0.95);
        const { curve } = intervalCensored(records);
        for (const { at, survival } of exact.slice(0, -1))
          expect(curve.find((point) => point.at === at)!.survival).toBeCloseTo(survival, 5);
      }),
      { ...runs, numRuns: 25 },
    );
  });

  it("stretches with the unit: twice the ages, twice the scale, the same shape", () => {
    fc.assert(
      fc.property(lives, one(0.01, 1000), (given, unit) => {
        const fit = (by: number) =>
          fitLife(
            given.map(({ age, isGood, count }) => {
              return { after: age * by, before: isGood ? Infinity : age * by, count };
            }),
            "weibull",
          );
        const [plain, scaled] = [fit(1), fit(unit)];
        if (!plain || !scaled) return;
        expect(scaled.shape / plain.shape).toBeCloseTo(1, 5);
        expect(scaled.scale / plain.scale / unit).toBeCloseTo(1, 5);
      }),
      runs,
    );
  });

  it("a median is never before its own lower end", () => {
    fc.assert(
      fc.property(lives, (given) => {
        const records = given.map(({ age, isGood, count }) => ({ after: age, before: isGood ? Infinity : age, count }));
        const { value, low, high } = medianOf(productLimit(records, 0.9));
        if (value !== null && low !== null) expect(low).toBeLessThanOrEqual(value);
        if (value !== null && high !== null) expect(high).toBeGreaterThanOrEqual(value);
      }),
      runs,
    );
  });
});

/** The upper end of the chance of failing. */
const upperEnd = (failures: number, trials: number) =>
  startingOf({ least: failures, most: failures, trials }, { kind: "beta", a: 0.5, b: 0.5 }).failing.p95;

/** Chance of from to to failures of n, term by term. */
const tail = (n: number, p: number, from: number, to: number) => {
  let [sum, ways] = [0, 1];
  for (let x = 0; x <= n; x += 1) {
    if (x >= from && x <= to) sum += ways * p ** x * (1 - p) ** (n - x);
    ways = (ways * (n - x)) / (x + 1);
  }
  return sum;
};

const events = (times: readonly number[]) => powerLaw({ kind: "times", times, end: 100 }, 0.9)!;

describe("chances", () => {
  it("one more failure never makes failing less likely, one more success never more", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 0, max: 30 }), (failed, started) => {
        const now = upperEnd(failed, failed + started);
        expect(upperEnd(failed + 1, failed + started + 1)).toBeGreaterThan(now);
        expect(upperEnd(failed, failed + started + 1)).toBeLessThan(now);
      }),
      runs,
    );
  });

  it("Clopper and Pearson's ends are where the tails are what they are meant to be (exact binomial sums)", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 0, max: 30 }), (n, taken) => {
        const x = Math.min(n, taken);
        const [low, high] = clopperPearson(x, n, 0.9);
        if (x > 0) expect(tail(n, low, x, n)).toBeCloseTo(0.05, 8);
        if (x < n) expect(tail(n, high, 0, x)).toBeCloseTo(0.05, 8);
      }),
      runs,
    );
  });
});

describe("a power law", () => {
  it("of events far apart by a factor is steady, and turns with the order of the gaps", () => {
    expect(events([10, 30, 50, 70, 90]).shape).toBeCloseTo(1, 0);
    expect(events([60, 80, 90, 96, 99]).shape).toBeGreaterThan(1.5);
    expect(events([1, 4, 10, 20, 40]).shape).toBeLessThan(0.8);
  });
});

/** Every stock that the budget pays for. */
function bruteForce(parts: readonly Part[], budget: number): number {
  const [part, ...rest] = parts;
  if (part === undefined) return 0;
  const most = Math.min(8, Math.floor(budget / part.cost + 1e-9));
  const choices = Array.from({ length: most + 1 }, (_, n) => {
    return stockOf(part.pipeline, part.stock + n).expectedBackorders + bruteForce(rest, budget - n * part.cost);
  });
  return Math.min(...choices);
}

const shelves = fc.array(
  fc.record({ pipeline: one(0.05, 2.5), cost: fc.integer({ min: 3, max: 40 }), stock: fc.integer({ min: 0, max: 2 }) }),
  { minLength: 1, maxLength: 4 },
);

describe("spares", () => {
  it("no choice within the budget is better (every choice of small shelves tried)", () => {
    fc.assert(
      fc.property(shelves, fc.integer({ min: 0, max: 90 }), (shelf, budget) => {
        const parts = shelf.map((part, i) => ({ name: `part ${i}`, ...part, cost: Math.max(part.cost, budget / 8) }));
        const { stock, purchases, exact } = bestPurchases(parts, budget);
        const reached = parts.reduce(
          (sum, { pipeline }, i) => sum + stockOf(pipeline, stock[i]!).expectedBackorders,
          0,
        );
        expect(exact).toBe(true);
        expect(reached).toBeCloseTo(bruteForce(parts, budget), 9);
        expect(purchases.at(-1)?.cost ?? 0).toBeLessThanOrEqual(budget + 1e-9);
        if (purchases.length > 0) expect(purchases.at(-1)!.expectedBackorders).toBeCloseTo(reached, 9);
      }),
      { ...runs, numRuns: 120 },
    );
  });

  it("the least stock is enough, and one less is not", () => {
    fc.assert(
      fc.property(one(0.01, 30), one(0.5, 0.999), (pipeline, target) => {
        const least = leastStock(pipeline, target)!;
        expect(stockOf(pipeline, least).noShortage).toBeGreaterThanOrEqual(target - 1e-12);
        if (least > 0) expect(stockOf(pipeline, least - 1).noShortage).toBeLessThan(target);
      }),
      runs,
    );
  });
});
