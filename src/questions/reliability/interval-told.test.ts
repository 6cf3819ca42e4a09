import { describe, expect, it } from "vitest";
import { isInputError } from "#base";
import { ask } from "../ask.ts";

interface Point {
  readonly interval: number;
  readonly unavailability: number;
}

interface Told {
  readonly kind: string;
  readonly because: string;
  readonly best?: Point;
  readonly firstOrder?: Point;
  readonly curve: readonly Point[];
}

const PLAIN = { failureRate: "0.3 per year", testTime: "3 h" };
const FREE = { test: 0, failureOnTheNight: 0, callsPerYear: 0 };
const asked = (more: object) => ask("interval", { ...PLAIN, ...more }) as Told;

function codesOf(more: object): readonly string[] {
  try {
    asked(more);
  } catch (thrown) {
    if (isInputError(thrown)) return thrown.faults.map(({ code, field }) => `${code} ${field}`);
    throw thrown;
  }
  return [];
}

describe("where no interval is best, none is told", () => {
  it.each<[string, object, RegExp]>([
    ["costs of nothing", { costs: FREE }, /flat from end to end/],
    ["never there when asked", { demandFailure: 1 }, /flat from end to end/],
    ["every test harms", { harm: 1 }, /flat from end to end/],
    ["gone before the next test", { failureRate: "1e6 per year" }, /flat from end to end/],
    ["the shortest is best", { pair: "staggered", shared: 0.1 }, /shortest interval looked at/],
    ["the longest is best", { costs: { ...FREE, test: 5 } }, /by these costs testing never pays/],
  ])("%s", (_, more, words) => {
    const told = asked(more);
    expect(told.kind).toBe("cannot-tell");
    expect(told.because).toMatch(words);
    expect(told).not.toHaveProperty("best");
    expect(told).not.toHaveProperty("flat");
  });

  it("speaks of costs only where costs were given", () => {
    const worn = { failureRate: undefined, life: { shape: 0.2, scale: "1 h" }, demandFailure: 0.1 };
    for (const more of [{ demandFailure: 1 }, { failureRate: "1e6 per year" }, worn])
      expect(asked(more).because).not.toContain("cost");
  });
});

describe("what is looked at", () => {
  it.each(["1e6 per year", "1e4 per year", "100 per year"])("test and repair fit into it, at %s", (failureRate) => {
    const told = asked({ failureRate, repairTime: "2 h" });
    expect(told.curve.length).toBeGreaterThan(5);
    for (const { interval, unavailability } of [...told.curve, told.firstOrder, told.best].filter((one) => !!one)) {
      expect(interval).toBeGreaterThan(5 * 3600);
      expect(unavailability).toBeLessThanOrEqual(1);
    }
  });

  it("fits between overhauls, else it is refused", () => {
    expect(codesOf({ coverage: 0.9, overhaul: "5 h" })).toEqual(["QU-202 overhaul"]);
  });
});
