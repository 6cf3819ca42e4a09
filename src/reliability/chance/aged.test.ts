import { betaQuantile, gammaQuantile, repeatableStream } from "#numerics";
import { describe, expect, it } from "vitest";
import { workingAt } from "./aged.ts";
import { hiddenRates } from "./hidden-rate.ts";
import { spreadOfBetas, spreadOfGammas, VALUES } from "./spread.ts";
import { fleetOfStarts, loneStarts, startingOf } from "./starting.ts";

describe("a belief as equally likely values", () => {
  it.each([
    [0.5, 0.5],
    [1.5, 20.5],
    [9, 3],
    [0.5, 60],
  ])("of beta(%d, %d) is its percentiles", (a, b) => {
    spreadOfBetas([{ a, b, weight: 1 }]).forEach((value, k) => {
      const exact = betaQuantile((k + 0.5) / VALUES, a, b);
      expect(Math.abs(value - exact)).toBeLessThan(0.015 * exact + 1e-6);
    });
  });

  it("of a whole fleet is what each member's own record and the others say (`startingOf`)", () => {
    const fleet = [3, 0, 1, 0, 6, 0, 2, 1].map((failures, i) => ({ failures, trials: 10 + i }));
    const of = fleetOfStarts(fleet);
    fleet.forEach((own, i) => {
      const others = fleet.filter((_, k) => k !== i);
      const record = { least: own.failures, most: own.failures, trials: own.trials };
      const { failing } = startingOf(record, { kind: "fleet", fleet: others, pooling: "wary" });
      expect(Math.abs(of(own).failing.mean - failing.mean)).toBeLessThan(0.006);
      expect(Math.abs(of(own).failing.p95 - failing.p95)).toBeLessThan(0.03);
    });
  });
});

describe("so long after the last proof", () => {
  const given = {
    asked: loneStarts({ failures: 1, trials: 20 }).spread,
    hidden: spreadOfGammas([{ a: 2.5, b: 8, weight: 1 }]),
  };

  it("is what it was when just proved at first, and falls ever after", () => {
    const { failing } = loneStarts({ failures: 1, trials: 20 });
    expect(workingAt(given, 0).p50).toBeCloseTo(1 - failing.p50, 2);
    const means = [0, 0.5, 1, 2, 5].map((age) => workingAt(given, age).mean);
    expect(means).toEqual(means.toSorted((one, other) => other - one));
  });

  it("has the mean (1 − E q)(1 + t/b)⁻ᵃ (gamma integral, DERIVED)", () => {
    const mean = (1 - 1.5 / 21) * (1 + 1 / 8) ** -2.5;
    expect(Math.abs(workingAt(given, 1).mean - mean)).toBeLessThan(0.002);
  });

  it("is lower a year after than a day after, for known figures exp(−λt)", () => {
    const known = {
      asked: Array.from({ length: VALUES }, () => 0.05),
      hidden: Array.from({ length: VALUES }, () => 0.1),
    };
    expect(workingAt(known, 1).p50).toBeCloseTo(0.95 * Math.exp(-0.1), 12);
  });
});

describe("a rate as equally likely values", () => {
  it.each([0.5, 2.5, 30])("of gamma(%d) is its percentiles", (a) => {
    spreadOfGammas([{ a, b: 3, weight: 1 }]).forEach((value, k) => {
      const exact = gammaQuantile((k + 0.5) / VALUES, a) / 3;
      expect(Math.abs(value - exact)).toBeLessThan(0.015 * exact);
    });
  });

  it("is told of a clean fleet by all its time, of one alone by its own, and of none at all not", () => {
    expect(hiddenRates([])).toBeUndefined();
    expect(hiddenRates([{ failures: 0, time: 0 }])).toBeUndefined();
    const clean = Array.from({ length: 5 }, () => ({ failures: 0, time: 4 }));
    expect(hiddenRates(clean)!(clean[0]!)).toMatchObject({ from: "clean-fleet", mean: 0.5 / 20 });
    expect(hiddenRates([{ failures: 1, time: 4 }])!({ failures: 1, time: 4 })).toMatchObject({
      from: "own",
      mean: 1.5 / 4,
    });
  });
});

describe("nine-in-ten ranges of fleets with known truth", () => {
  const random = repeatableStream(77);
  const told = Array.from({ length: 50 }, () => fleetOf(20, random)).flatMap(toldAfter(1));

  it("hold the truth 0.90 ± 0.03 of the times, a year after the last proof", () => {
    expect(Math.abs(held(told, 1) - 0.9)).toBeLessThan(0.03);
  });

  it("do not where hidden faults come three times as fast as the log was told (control)", () => {
    expect(held(told, 3)).toBeLessThan(0.8);
  });
});

interface Drawn {
  readonly q: number;
  readonly rate: number;
  readonly trials: number;
  readonly failures: number;
  readonly time: number;
  readonly found: number;
}

function fleetOf(size: number, random: () => number): readonly Drawn[] {
  return Array.from({ length: size }, () => {
    const q = betaQuantile(random(), 2, 30);
    const rate = gammaQuantile(random(), 2) / 12;
    const trials = 5 + Math.floor(10 * random());
    const time = 2 + 6 * random();
    const failures = Array.from({ length: trials }, random).filter((u) => u < q).length;
    return { q, rate, trials, failures, time, found: poisson(rate * time, random) };
  });
}

function poisson(mean: number, random: () => number): number {
  let [count, left] = [0, random()];
  for (let term = Math.exp(-mean); left > term; term *= mean / count) {
    left -= term;
    count += 1;
  }
  return count;
}

type Told = Drawn & { readonly p05: number; readonly p95: number };

function toldAfter(age: number): (fleet: readonly Drawn[]) => readonly Told[] {
  return (fleet) => {
    const starts = fleetOfStarts(fleet);
    const rates = hiddenRates(fleet.map(({ found, time }) => ({ failures: found, time })))!;
    return fleet.map((one) => {
      const hidden = rates({ failures: one.found, time: one.time }).spread;
      return { ...one, ...workingAt({ asked: starts(one).spread, hidden }, age) };
    });
  };
}

function held(told: readonly Told[], faster: number): number {
  const inside = told.filter(({ q, rate, p05, p95 }) => {
    const truth = (1 - q) * Math.exp(-faster * rate);
    return p05 <= truth && truth <= p95;
  });
  return inside.length / told.length;
}
