import { describe, expect, it } from "vitest";
import { gammaChance, gammaTail } from "../distributions.ts";
import { gaussNodes } from "../gauss/index.ts";
import { leastOf } from "../least/index.ts";
import { betaChance, betaQuantile, digamma, gammaQuantile, logBeta, poissonChances } from "./index.ts";

const close = (got: number, expected: number, relative: number) =>
  expect(Math.abs(got / expected - 1)).toBeLessThan(relative);

describe("special functions", () => {
  it("t, F and binomial points printed in every table (Abramowitz & Stegun 26.9, 26.10): beta quantiles", () => {
    // F(0.95; 2, 10) = 4.10; x = 2F/(2F + 10) is beta(1, 5); t(0.975; 10) = 2.228, x = 10/(10 + t²) is beta(5, 0.5).
    close((betaQuantile(0.95, 1, 5) / (1 - betaQuantile(0.95, 1, 5))) * 5, 4.1, 2e-3);
    close(Math.sqrt(10 / betaQuantile(0.05, 5, 0.5) - 10), 2.228, 2e-4);
  });

  it("chi-square points printed in Abramowitz & Stegun 26.8: gamma quantiles", () => {
    close(2 * gammaQuantile(0.95, 0.5), 3.84146, 1e-6);
    close(2 * gammaQuantile(0.05, 5), 3.9403, 1e-5);
    close(2 * gammaQuantile(0.995, 15), 53.672, 1e-5);
  });

  it("digamma as printed in Abramowitz & Stegun table 6.1 and 6.3.3", () => {
    close(digamma(1), -0.5772156649, 1e-9);
    close(digamma(0.5), -1.96351002602, 1e-10);
    close(digamma(2), 0.4227843351, 1e-9);
  });

  it("closed forms: beta(1, b), beta(a, 1), gamma(1), logBeta of whole numbers, a large and a small argument", () => {
    close(betaQuantile(1e-6, 1, 7), 1 - (1 - 1e-6) ** (1 / 7), 1e-9);
    close(betaQuantile(0.3, 9, 1), 0.3 ** (1 / 9), 1e-12);
    close(gammaQuantile(0.3, 1), -Math.log(0.7), 1e-12);
    close(Math.exp(logBeta(3, 4)), 1 / 60, 1e-13);
    close(logBeta(1, 1e9), -Math.log(1e9), 1e-12);
    close(gammaChance(2.5, 1e-4) + gammaTail(2.5, 1e-4), 1, 1e-14);
  });

  it("quantiles turn back into their chances", () => {
    for (const [a, b] of [
      [0.5, 20.5],
      [1.24, 189_075],
      [300, 2],
      [0.02, 3],
    ] as const)
      for (const p of [0.05, 0.5, 0.95]) close(betaChance(betaQuantile(p, a, b), a, b), p, 1e-9);
  });

  it("Poisson chances of mean 4 as printed (1.8 %, 7.3 %, 14.7 %, 19.5 %)", () => {
    expect(poissonChances(4, 3).map((chance) => Number((100 * chance).toFixed(1)))).toEqual([1.8, 7.3, 14.7, 19.5]);
    expect(poissonChances(0, 2)).toEqual([1, 0, 0]);
  });

  it("Gauss places as printed in Abramowitz & Stegun table 25.4, n = 5", () => {
    const nodes = gaussNodes(5, -1, 1);
    close(nodes[4]!.at, 0.906179845938664, 1e-12);
    close(nodes[4]!.weight, 0.236926885056189, 1e-12);
    close(
      gaussNodes(48, 0, 2).reduce((sum, { at, weight }) => sum + weight * at ** 3, 0),
      4,
      1e-13,
    );
  });

  it("the least of a curve with two valleys is the deeper one", () => {
    const { at, value } = leastOf((x) => (x * x - 1) ** 2 + 0.1 * x, -2, 2, 40);
    expect(at).toBeCloseTo(-1.0122, 3);
    expect(value).toBeLessThan(-0.1);
  });
});
