import { describe, expect, it } from "vitest";
import { FAMILIES } from "./families.ts";
import { lastingByLaws, lastingOf } from "./lasting.ts";
import type { LifeFit } from "./fit-life.ts";

const WEIBULL: LifeFit = {
  model: "weibull",
  shape: 12,
  scale: 100,
  covariance: [
    [0.01, 0],
    [0, 0.04],
  ],
  standardErrors: { logScale: 0.1, logShape: 0.2 },
  logLikelihood: -10,
};

describe("the tail of a law of life", () => {
  it.each([
    [20, -203.917_155_371_097_3],
    [40, -804.608_442_013_753_8],
  ])("ln of the normal chance above %f is that of mpmath to 30 digits and of scipy.stats.norm.logsf", (z, expected) => {
    expect(Math.abs(FAMILIES.lognormal.logSurvival(z) / expected - 1)).toBeLessThan(2e-7);
  });
});

describe("what lasts far beyond the age that a law tells of", () => {
  it("is hopeless, and still a number with its limits", () => {
    for (const law of [WEIBULL, { ...WEIBULL, model: "lognormal" as const }]) {
      for (const [from, to] of [
        [300, 400],
        [100, 1e6],
        [1e9, 1e12],
      ] as const) {
        const { chance, low, high } = lastingOf(law, from, to, 0.9);
        expect(
          [chance, low, high].every((one) => one >= 0 && one <= 1),
          `${law.model} ${from} ${to}`,
        ).toBe(true);
        expect(low <= chance && chance <= high).toBe(true);
        expect(lastingByLaws([law], from, to, 0.9)?.chance).toBeGreaterThanOrEqual(0);
      }
    }
  });

  it("is R(to)/R(from) of the Weibull law, where both are too small for a number", () => {
    const steep = { ...WEIBULL, shape: 2, covariance: [] };
    // (to² − from²)/scale² = 4.0004 with scale 100: exp of minus that.
    expect(lastingOf(steep, 10_000, 10_002, 0.9).chance).toBeCloseTo(Math.exp(-4.0004), 9);
  });
});
