import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findFault, readSymptoms, type FaultCase } from "./index.ts";

const share = fc.double({ min: 0, max: 1, noNaN: true });
const cost = fc.integer({ min: 1, max: 30 });
const runs = { seed: 99, numRuns: 60 };

const faults = (mostSteps: number, mostTests: number): fc.Arbitrary<FaultCase> =>
  fc
    .record({
      raw: fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 2, maxLength: 4 }),
      costs: fc.array(cost, { minLength: 1, maxLength: mostSteps }),
      tests: fc.array(cost, { maxLength: mostTests }),
      shares: fc.array(share, { minLength: 40, maxLength: 40 }),
      fallback: fc.integer({ min: 5, max: 120 }),
    })
    .map(({ raw, costs, tests, shares, fallback }) => {
      const whole = raw.reduce((sum, one) => sum + one, 0);
      const from = (row: number) => raw.map((_, c) => shares[(row * 4 + c) % 40]!);
      return {
        chances: raw.map((one) => one / whole),
        steps: costs.map((one, i) => ({ kind: "action" as const, name: `${i}`, cost: one, ends: from(i), repair: 0 })),
        tests: tests.map((one, i) => ({ name: `${i}`, cost: one, positive: from(5 + i) })),
        covers: [],
        fallback,
        lastIsInferred: false,
      };
    });

const sum = (weights: readonly number[]) => weights.reduce((total, one) => total + one, 0);

/** Every policy: whatever is left may come next, whatever was answered. */
function everyPolicy(
  given: FaultCase,
  weights: readonly number[],
  steps: readonly number[],
  tests: readonly number[],
): number {
  const whole = sum(weights);
  const stop = (given.fallback ?? Infinity) * whole;
  const done = steps.map((i) => {
    const { cost: price, ends } = given.steps[i]!;
    const left = weights.map((weight, c) => weight * (1 - ends[c]!));
    return (
      price * whole +
      everyPolicy(
        given,
        left,
        steps.filter((one) => one !== i),
        tests,
      )
    );
  });
  const asked = tests.map((i) => {
    const { cost: price, positive } = given.tests[i]!;
    const rest = tests.filter((one) => one !== i);
    const yes = weights.map((weight, c) => weight * positive[c]!);
    const no = weights.map((weight, c) => weight * (1 - positive[c]!));
    return price * whole + everyPolicy(given, yes, steps, rest) + everyPolicy(given, no, steps, rest);
  });
  return Math.min(stop, ...done, ...asked);
}

describe("the next thing to do about a fault", () => {
  it("costs what the best of all policies costs (every policy tried)", () => {
    fc.assert(
      fc.property(faults(3, 2), (given) => {
        const best = everyPolicy(given, given.chances, [...given.steps.keys()], [...given.tests.keys()]);
        const { expectedCost, exact } = findFault(given);
        expect(exact).toBe(true);
        expect(expectedCost).toBeCloseTo(best, 9);
      }),
      runs,
    );
  });

  it("never costs more than the fallback, nor less where something was taken away", () => {
    fc.assert(
      fc.property(faults(4, 2), (given) => {
        const { expectedCost } = findFault(given);
        expect(expectedCost).toBeLessThanOrEqual(given.fallback! + 1e-9);
        expect(findFault({ ...given, steps: given.steps.slice(1) }).expectedCost).toBeGreaterThanOrEqual(
          expectedCost - 1e-9,
        );
        expect(findFault({ ...given, tests: [] }).expectedCost).toBeGreaterThanOrEqual(expectedCost - 1e-9);
      }),
      runs,
    );
  });

  it("is the fallback at once where that costs less than anything to do", () => {
    fc.assert(
      fc.property(faults(4, 1), (given) => {
        expect(findFault({ ...given, fallback: 0.5 }).next).toEqual({ kind: "fallback" });
      }),
      runs,
    );
  });

  it("beyond exact search lies between its bound and the fallback", () => {
    fc.assert(
      fc.property(faults(3, 2), fc.integer({ min: 6, max: 9 }), (given, times) => {
        const many = Array.from({ length: times }, () => given.steps).flat();
        const steps = many.map((step, i) => ({ ...step, cost: step.cost + (i % 5) }));
        const plan = findFault({ ...given, steps: [...steps, ...steps.slice(0, 16)] });
        if (plan.exact) return;
        expect(plan.bound!).toBeLessThanOrEqual(plan.expectedCost + 1e-9);
        expect(plan.expectedCost).toBeLessThanOrEqual(given.fallback! + 1e-9);
      }),
      { ...runs, numRuns: 20 },
    );
  });

  it("the rule where each check finds one cause of its own is exact: no order and no stopping place is better", () => {
    const checks = fc.array(fc.record({ weight: fc.integer({ min: 1, max: 9 }), price: cost, detects: share }), {
      minLength: 2,
      maxLength: 5,
    });
    fc.assert(
      fc.property(checks, fc.integer({ min: 5, max: 150 }), (list, fallback) => {
        const whole = sum(list.map(({ weight }) => weight));
        const given: FaultCase = {
          chances: list.map(({ weight }) => weight / whole),
          steps: list.map(({ price, detects }, i) => {
            const ends = list.map((_, c) => (c === i ? detects : 0));
            return { kind: "check", name: `${i}`, cost: price, ends, repair: 0 };
          }),
          tests: [],
          covers: [],
          fallback,
          lastIsInferred: false,
        };
        const padding = Array.from({ length: 16 }, (_, i) => i);
        const large: FaultCase = {
          ...given,
          chances: [...given.chances, ...padding.map(() => 0)],
          steps: [
            ...given.steps.map((step) => ({ ...step, ends: [...step.ends, ...padding.map(() => 0)] })),
            ...padding.map((i) => {
              const ends = [...list.map(() => 0), ...padding.map((c) => (c === i ? 1 : 0))];
              return { kind: "check" as const, name: `none ${i}`, cost: 3, ends, repair: 0 };
            }),
          ],
        };
        const rule = findFault(large);
        expect(rule.exact).toBe(true);
        expect(rule.expectedCost).toBeCloseTo(findFault(given).expectedCost, 9);
      }),
      runs,
    );
  });
});

describe("symptoms", () => {
  const causes = fc.array(
    fc.record({
      chance: fc.double({ min: 0.01, max: 0.6, noNaN: true }),
      shows: fc.array(share, { minLength: 4, maxLength: 4 }),
    }),
    { minLength: 1, maxLength: 6 },
  );
  const signs = fc.array(
    fc.record({ leak: fc.double({ min: 0.01, max: 0.5, noNaN: true }), seen: fc.constantFrom(true, false, null) }),
    { minLength: 4, maxLength: 4 },
  );

  it("are what counting through every set of causes comes to", () => {
    fc.assert(
      fc.property(causes, signs, (given, looked) => {
        const sets = Array.from({ length: 2 ** given.length }, (_, set) => {
          const isIn = (i: number) => ((set >> i) & 1) === 1;
          const prior = given.reduce((product, { chance }, i) => product * (isIn(i) ? chance : 1 - chance), 1);
          return looked.reduce((product, { leak, seen }, j) => {
            if (seen === null) return product;
            const away = given.reduce((rest, { shows }, i) => rest * (isIn(i) ? 1 - shows[j]! : 1), 1 - leak);
            return product * (seen ? 1 - away : away);
          }, prior);
        });
        const { evidence, chances, likeliest } = readSymptoms(given, looked);
        expect(evidence).toBeCloseTo(sum(sets), 10);
        for (const [i, chance] of chances.entries()) {
          const own = sum(sets.filter((_, set) => ((set >> i) & 1) === 1));
          expect(chance).toBeCloseTo(own / sum(sets), 8);
        }
        expect(likeliest.exact).toBe(true);
        expect(likeliest.chance).toBeCloseTo(Math.max(...sets) / sum(sets), 8);
      }),
      { ...runs, numRuns: 100 },
    );
  });
});
