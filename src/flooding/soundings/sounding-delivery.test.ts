import { normalQuantile, repeatableStream } from "#numerics";
import { describe, expect, it } from "vitest";
import {
  followLevel,
  likelyPrior,
  planSteps,
  readSoundings,
  strengthOf,
  uprightSpace,
  type Pumped,
  type SoundingCase,
} from "../index.ts";

const STATED = 0.008;
const SPACE = uprightSpace({ area: 12, outside: 1.2, outsideDoubt: 0.03, lossLevel: 1.1 });

/** Soundings five minutes apart, good to 15 mm, of a 70 mm hole; the pump runs from the first or second one. */
function watch(more: {
  readonly share: number;
  readonly seed: number;
  readonly count?: number;
  readonly pumpFrom?: number;
  /** Share from halfway on. */
  readonly later?: number;
}): SoundingCase {
  const count = more.count ?? 6;
  const from = more.pumpFrom ?? 300;
  const times = Array.from({ length: count }, (_, k) => 300 * k);
  const halfway = 150 * count;
  const moved: Pumped[] = [
    { from, to: halfway, flow: STATED * more.share },
    { from: halfway, flow: STATED * (more.later ?? more.share) },
  ];
  const strength = strengthOf({ kind: "hole", area: (Math.PI / 4) * 0.07 ** 2, height: 0 });
  const levels = new Float64Array(count).fill(0.5);
  followLevel(SPACE, Float64Array.of(strength, 1, 1, 0, 0.5, 1.2), planSteps(times, moved, 10), 0.5, levels);
  const draw = repeatableStream(more.seed);
  const readings = times.map((at, k) => ({
    at,
    level: Math.max(0, levels[k]! + 0.015 * normalQuantile(draw())),
  }));
  return { space: SPACE, readings, pumping: [{ from, flow: STATED }], prior: likelyPrior(readings[0]!.level) };
}

const SEEDS = [11, 12, 13, 14, 15, 16, 17, 18];

describe("a pump that moves clearly less than stated from its start", () => {
  it.each([0.5, 0.35, 0.6])("at %s of it is no misfit: delivery is found, and chances are given", (share) => {
    for (const pumpFrom of [0, 300]) {
      for (const seed of SEEDS) {
        const found = readSoundings(watch({ share, seed, pumpFrom }));
        expect(found.misfit.flagged).toBe(false);
        expect(found.quantities.pumpDelivery.p05).toBeLessThan(share * STATED);
        expect(found.quantities.pumpDelivery.p95).toBeGreaterThan(share * STATED);
        const { gaining, holding, losing } = found.chances;
        expect(gaining + holding + losing).toBeCloseTo(1, 9);
      }
    }
  });

  it("at a third of it, started with the second sounding, leaves little doubt that she is losing", () => {
    const chances = SEEDS.map((seed) => readSoundings(watch({ share: 0.35, seed })).chances.losing);
    expect(Math.min(...chances)).toBeGreaterThan(0.6);
  });
});

describe("a strainer that blocks on the way", () => {
  it.each([0.5, 0.9])("from %s of what is stated to a tenth is flagged", (share) => {
    for (const seed of SEEDS) {
      const { misfit } = readSoundings(watch({ share, seed, count: 10, later: share / 10 }));
      expect(misfit.flagged).toBe(true);
    }
  });
});

describe("a pump that moves what is stated", () => {
  it("is no misfit either", () => {
    for (const seed of SEEDS) expect(readSoundings(watch({ share: 0.95, seed })).misfit.flagged).toBe(false);
  });
});
