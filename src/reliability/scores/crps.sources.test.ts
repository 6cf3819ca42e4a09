import { normalChance, normalQuantile } from "#numerics";
import { describe, expect, it } from "vitest";
import { crpsOfPercentiles } from "./crps.ts";

/** Finely told, so that what is straight between percentiles makes no difference. */
const FINE = Array.from({ length: 4001 }, (_, i) => (i + 0.5) / 4001);
const bell = (mean: number, sigma: number) =>
  FINE.map((chance) => ({ chance, value: mean + sigma * normalQuantile(chance) }));
const density = (z: number) => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

describe("the continuous ranked probability score", () => {
  it.each([
    [0, 1, 0],
    [0, 1, 1],
    [0, 1, -2.5],
    [0.4, 0.05, 0.52],
  ])(
    "of a bell curve of mean %f and sigma %f is σ (z (2Φ(z) − 1) + 2φ(z) − 1/√π) where %f came (Gneiting & Raftery 2007, equation 21 and below)",
    (mean, sigma, came) => {
      const z = (came - mean) / sigma;
      const closed = sigma * (z * (2 * normalChance(z) - 1) + 2 * density(z) - 1 / Math.sqrt(Math.PI));
      expect(Math.abs(crpsOfPercentiles(bell(mean, sigma), came) / closed - 1)).toBeLessThan(2e-4);
    },
  );

  it("of a standard bell curve is 0.233695 in its middle and 0.602441 one sigma off (the closed form, by hand)", () => {
    expect(crpsOfPercentiles(bell(0, 1), 0)).toBeCloseTo((Math.SQRT2 - 1) / Math.sqrt(Math.PI), 4);
    expect(crpsOfPercentiles(bell(0, 1), 0)).toBeCloseTo(0.233695, 4);
    expect(crpsOfPercentiles(bell(0, 1), 1)).toBeCloseTo(0.602441, 4);
  });

  it.each([-0.5, 0, 0.2, 0.5, 1, 1.75])(
    "of a uniform law from 0 to 1 is (x³ + (1 − x)³)/3 inside and the distance more outside (x = %f; Jordan, Krüger & Lerch 2019)",
    (came) => {
      const told = [0.05, 0.25, 0.5, 0.75, 0.95].map((chance) => ({ chance, value: chance }));
      const inside = Math.min(1, Math.max(0, came));
      const closed = (inside ** 3 + (1 - inside) ** 3) / 3 + Math.abs(came - inside);
      expect(crpsOfPercentiles(told, came)).toBeCloseTo(closed, 12);
    },
  );

  it("is E|X − x| − ½ E|X − X′| for five uneven percentiles (Gneiting & Raftery 2007, equation 21), played on 2000 places", () => {
    const told = [0.1, 0.3, 0.35, 0.35, 0.9].map((value, i) => ({ chance: [0.05, 0.25, 0.5, 0.75, 0.95][i]!, value }));
    const ends = [{ chance: 0, value: 0.05 }, ...told, { chance: 1, value: 0.9 + 0.05 * (0.55 / 0.2) }];
    const drawn = Array.from({ length: 2000 }, (_, i) => readOff(ends, (i + 0.5) / 2000));
    const mean = (of: (one: number) => number) => drawn.reduce((sum, one) => sum + of(one), 0) / drawn.length;
    for (const came of [0, 0.2, 0.35, 0.6, 1.5]) {
      const played = mean((x) => Math.abs(x - came)) - 0.5 * mean((x) => mean((y) => Math.abs(x - y)));
      expect(crpsOfPercentiles(told, came)).toBeCloseTo(played, 4);
    }
  });

  it("is the distance where no spread was told, and best where the truth is told", () => {
    const sure = [0.05, 0.95].map((chance) => ({ chance, value: 0.4 }));
    expect(crpsOfPercentiles(sure, 0.7)).toBeCloseTo(0.3, 12);
    expect(scored(1)).toBeLessThan(scored(0.6));
    expect(scored(1)).toBeLessThan(scored(1.6));
  });
});

/** Sum over what a standard bell curve brings, where one of this sigma was told. */
function scored(sigma: number): number {
  const told = bell(0, sigma);
  return FINE.filter((_, i) => i % 20 === 0).reduce((sum, p) => sum + crpsOfPercentiles(told, normalQuantile(p)), 0);
}

function readOff(ends: readonly { readonly chance: number; readonly value: number }[], chance: number): number {
  const above = ends.findIndex((one) => one.chance >= chance);
  const [from, to] = [ends[above - 1]!, ends[above]!];
  return from.value + ((chance - from.chance) / (to.chance - from.chance)) * (to.value - from.value);
}
