import { describe, expect, it } from "vitest";
import { betaQuantile, gammaQuantile, normalQuantile, repeatableStream } from "#numerics";
import {
  bestInterval,
  cusum,
  cusumRunLength,
  fitLife,
  mannKendall,
  rateOf,
  startingOf,
  startsByFleet,
  type Belief,
  type Demands,
  type LifeRecord,
  type Pooling,
} from "./index.ts";

/** Histories with a known truth, from fixed seeds. */
const between = (low: number, high: number) => (share: number) => share >= low && share <= high;
const covers = between(0.87, 0.93);
const holds = ({ p05, p95 }: Belief, truth: number) => p05 <= truth && truth <= p95;
const Z = normalQuantile(0.95);

function binomial(random: () => number, trials: number, chance: number): number {
  return Array.from({ length: trials }, () => random() < chance).filter(Boolean).length;
}

function poisson(random: () => number, mean: number): number {
  let [count, product] = [0, random()];
  while (product > Math.exp(-mean)) {
    count += 1;
    product *= random();
  }
  return count;
}

function share(times: number, isSo: (i: number) => boolean): number {
  return Array.from({ length: times }, (_, i) => isSo(i)).filter(Boolean).length / times;
}

/** How often the range of one kit of ten holds its truth, by how the others are pooled. */
const pooled = (seed: number, times: number, pooling: Pooling) => {
  const random = repeatableStream(seed);
  return share(times, () => {
    const kits = Array.from({ length: 10 }, () => {
      const chance = betaQuantile(0.0001 + 0.9998 * random(), 2, 14);
      const trials = 8 + Math.floor(20 * random());
      return { chance, trials, failures: binomial(random, trials, chance) };
    });
    const [own, ...fleet] = kits;
    const { failures, trials } = own!;
    const prior = { kind: "fleet", fleet, pooling } as const;
    return holds(startingOf({ least: failures, most: failures, trials }, prior).failing, own!.chance);
  });
};

const lifetime = (random: () => number) => 10 * (-Math.log(1 - random())) ** (1 / 1.8);
const within = (got: number, truth: number, error: number) => Math.abs(Math.log(got / truth)) <= Z * error;

/** Kit-years watched, faults a kit-year, and what an opening and a failure on the night cost. */
const WATCHED = 120;
const COSTS = { test: 6, failureOnTheNight: 1000, callsPerYear: 0.2, perDayNotReady: 0 };
const YEAR = 365.25 * 86_400;
const bestAt = (perYear: number) =>
  bestInterval(
    { life: { shape: 1, scale: YEAR / perYear }, testTime: 20_000, repairTime: 0, demandFailure: 0.01 },
    COSTS,
  ).best.interval;

/** How often the range of the best interval, by the faults seen, holds that of the true rate times a factor. */
function intervalsHeld(seed: number, factor: number): number {
  const random = repeatableStream(seed);
  return share(500, () => {
    const truth = 0.05 + 0.3 * random();
    const { rate } = rateOf(
      { failures: poisson(random, truth * WATCHED), time: WATCHED },
      { kind: "gamma", a: 0.5, b: 0 },
    );
    const best = bestAt(truth * factor);
    return bestAt(rate.p95) <= best && best <= bestAt(rate.p05);
  });
}

/** Many histories take a while on a busy machine; nothing here is timed. */
const PATIENT = { timeout: 400_000 };

describe("nine in ten intervals hold the truth", PATIENT, () => {
  it("of the chance of starting, each kit against a small fleet pooled warily", () => {
    const covered = pooled(11, 200, "wary");
    expect(covers(covered), `${covered}`).toBe(true);
  });

  it("of the chance of starting in fleets that seldom or never fail: no kit fails oftener than its range says", () => {
    const random = repeatableStream(5);
    const tooSure = share(300, () => {
      const kits = Array.from({ length: 5 }, () => {
        const chance = betaQuantile(0.0001 + 0.9998 * random(), 0.5, 20);
        const trials = 3 + Math.floor(10 * random());
        return { chance, trials, failures: binomial(random, trials, chance) };
      });
      return startsByFleet(kits).of(kits[0]!).failing.p95 < kits[0]!.chance;
    });
    expect(tooSure, `${tooSure}`).toBeLessThan(0.05);
  });

  it("but not where a small fleet's spread is taken as if it were known: that is too sure, as its answer says", () => {
    const covered = pooled(11, 200, "fitted");
    expect(covered, `${covered}`).toBeLessThan(0.88);
  });

  it("of the chance of starting, where the prior is the truth", () => {
    const random = repeatableStream(12);
    const covered = share(1500, () => {
      const chance = betaQuantile(0.0001 + 0.9998 * random(), 1.2, 9);
      const failures = binomial(random, 12, chance);
      const { failing } = startingOf({ least: failures, most: failures, trials: 12 }, { kind: "beta", a: 1.2, b: 9 });
      return holds(failing, chance);
    });
    expect(covers(covered), `${covered}`).toBe(true);
  });

  it("of a rate of failure", () => {
    const random = repeatableStream(13);
    const covered = share(1500, () => {
      const rate = gammaQuantile(0.0001 + 0.9998 * random(), 2) / 4;
      const failures = poisson(random, rate * 9);
      return holds(rateOf({ failures, time: 9 }, { kind: "gamma", a: 2, b: 4 }).rate, rate);
    });
    expect(covers(covered), `${covered}`).toBe(true);
  });

  const weibulls: readonly (readonly [string, (random: () => number) => LifeRecord])[] = [
    [
      "seen to fail or still good",
      (random) => {
        const [life, stop] = [lifetime(random), 4 + 14 * random()];
        return life <= stop ? { after: life, before: life, count: 1 } : { after: stop, before: Infinity, count: 1 };
      },
    ],
    [
      "found only at yearly looks",
      (random) => {
        const [life, last] = [lifetime(random), 3 + Math.floor(12 * random())];
        const look = Math.ceil(life);
        return look <= last ? { after: look - 1, before: look, count: 1 } : { after: last, before: Infinity, count: 1 };
      },
    ],
  ];
  it.each(weibulls)("of Weibull scale and shape, lives %s", (_, draw) => {
    const random = repeatableStream(14);
    const fits = Array.from({ length: 800 }, () =>
      fitLife(
        Array.from({ length: 100 }, () => draw(random)),
        "weibull",
      )!,
    );
    const scales = share(800, (i) => within(fits[i]!.scale, 10, fits[i]!.standardErrors.logScale));
    const shapes = share(800, (i) => within(fits[i]!.shape, 1.8, fits[i]!.standardErrors.logShape!));
    expect(covers(scales), `scale ${scales}`).toBe(true);
    expect(covers(shapes), `shape ${shapes}`).toBe(true);
    const wrong = share(800, (i) => within(fits[i]!.shape, 3.2, fits[i]!.standardErrors.logShape!));
    expect(wrong, "a wrong truth is not held").toBeLessThan(0.05);
  });

  it("of the best interval between openings, from faults found at openings of a fleet", () => {
    const covered = intervalsHeld(16, 1);
    expect(covers(covered), `${covered}`).toBe(true);
  });

  it("but not of the best interval where faults come three times as fast as the record has it", () => {
    const covered = intervalsHeld(16, 3);
    expect(covered, `${covered}`).toBeLessThan(0.3);
  });

  it("a prior that is not the truth is caught by the same count", () => {
    const random = repeatableStream(15);
    const covered = share(600, () => {
      const chance = betaQuantile(0.0001 + 0.9998 * random(), 5, 15);
      const failures = binomial(random, 6, chance);
      const { failing } = startingOf({ least: failures, most: failures, trials: 6 }, { kind: "beta", a: 1, b: 60 });
      return holds(failing, chance);
    });
    expect(covered).toBeLessThan(0.5);
  });
});

/** Twelve kits, the first of which may be bad. */
function fleetWith(random: () => number, bad: number): readonly Demands[] {
  return Array.from({ length: 12 }, (_, i) => ({ failures: binomial(random, 24, i === 0 ? bad : 0.05), trials: 24 }));
}

/** Accused where even the lower end of its own belief lies above twice what the others do on average. */
function accused(fleet: readonly Demands[], i: number): boolean {
  const others = fleet.filter((_, j) => j !== i);
  const failed = others.reduce((sum, one) => sum + one.failures, 0);
  const mean = (failed + 0.5) / (others.reduce((sum, one) => sum + one.trials, 0) + 1);
  const { failures, trials } = fleet[i]!;
  const { failing } = startingOf({ least: failures, most: failures, trials }, { kind: "beta", a: 0.5, b: 0.5 });
  return failing.p05 > 2 * mean;
}

describe("a kit against its fleet", PATIENT, () => {
  it("a kit that fails one time in three is found nearly always", () => {
    const random = repeatableStream(21);
    expect(share(200, () => accused(fleetWith(random, 1 / 3), 0))).toBeGreaterThan(0.85);
  });

  it("a clean kit is accused less than one time in twenty, as the lower end says", () => {
    const random = repeatableStream(22);
    const wrong = share(300, () => accused(fleetWith(random, 0.05), 0));
    expect(wrong).toBeLessThanOrEqual(0.05);
  });

  it("its own record pulls it away from the fleet as it grows", () => {
    const fleet = Array.from({ length: 8 }, () => ({ failures: 1, trials: 20 })).map((one, i) => ({
      ...one,
      failures: i % 3,
    }));
    const means = [6, 12, 24, 48, 96].map((trials) => {
      const failures = trials / 2;
      return startingOf({ least: failures, most: failures, trials }, { kind: "fleet", fleet, pooling: "fitted" })
        .failing.mean;
    });
    for (const [i, mean] of means.entries()) if (i > 0) expect(mean).toBeGreaterThan(means[i - 1]!);
    expect(means[0]!).toBeLessThan(0.5);
    expect(means.at(-1)!).toBeGreaterThan(0.35);
  });
});

function readings(random: () => number, length: number, shift: (i: number) => number) {
  return Array.from({ length }, (_, i) => ({
    at: i + 1,
    value: normalQuantile(1e-9 + random() * (1 - 2e-9)) + shift(i),
  }));
}

describe("false alarms of a chart on clean histories", PATIENT, () => {
  it("are as rare as the run length says", () => {
    const random = repeatableStream(31);
    const lengths = Array.from({ length: 300 }, () => {
      const { firstSignal } = cusum(
        readings(random, 1200, () => 0),
        0,
        0.5,
        4,
        "up",
      );
      return firstSignal ?? 1200;
    });
    const mean = lengths.reduce((sum, one) => sum + one, 0) / lengths.length;
    const cut = cusumRunLength(0.5, 4, 0, "up") * (1 - Math.exp(-1200 / cusumRunLength(0.5, 4, 0, "up")));
    expect(Math.abs(mean / cut - 1)).toBeLessThan(3 / Math.sqrt(300));
  });

  it("a jump of two sigma is seen within a few readings, and no sooner than it comes", () => {
    const random = repeatableStream(32);
    const seen = Array.from({ length: 200 }, () => {
      return (
        cusum(
          readings(random, 40, (i) => (i < 20 ? 0 : 2)),
          0,
          0.5,
          4,
          "up",
        ).firstSignal ?? 99
      );
    });
    expect(share(200, (i) => seen[i]! > 20 && seen[i]! <= 27)).toBeGreaterThan(0.85);
  });

  it("a drift is told by Mann and Kendall where there is one, and one time in twenty where there is none", () => {
    const random = repeatableStream(33);
    const told = (slope: number) =>
      share(
        400,
        () =>
          mannKendall(
            readings(random, 16, (i) => slope * i),
            0.95,
          ).p < 0.05,
      );
    expect(told(0)).toBeLessThan(0.07);
    expect(told(0.2)).toBeGreaterThan(0.8);
  });
});
