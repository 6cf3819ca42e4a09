import { describe, expect, it } from "vitest";
import { simulateFlood, type FloodCase } from "../index.ts";
import { faultsOfMany, randomEven, randomFloating } from "#test/judges/random-floods.ts";

/** Half a minute on a quiet machine; a busy one gets minutes [ms]. */
const PATIENCE = 300_000;

const SPACES = Array.from({ length: 12 }, (_, k) => ({ name: `space ${k}`, from: k, to: k + 1, permeability: 0.9 }));

/** As much as may be asked: a week, twelve spaces, thirty holes and twenty pumps that stop for petrol every six minutes. */
const LONGEST: FloodCase = {
  vessel: {
    kind: "floating",
    hull: { form: "family", length: 12, beam: 4, depth: 2.4, draught: 0.9, blockCoefficient: 0.5 },
    kg: 0.9,
    compartments: SPACES,
    lostWhen: "foundered",
  },
  openings: Array.from({ length: 30 }, (_, k) => ({
    name: `hole ${k}`,
    into: SPACES[k % 12]!.name,
    ...(k >= 12 ? { from: SPACES[(k + 1) % 12]!.name } : {}),
    opening: { kind: "hole", area: (Math.PI / 4) * (0.02 + 0.003 * k) ** 2, height: 0.1 + 0.03 * (k % 12) },
  })),
  pumps: Array.from({ length: 20 }, (_, k) => ({
    name: `pump ${k}`,
    compartment: SPACES[k % 12]!.name,
    delivery: { kind: "steady", flow: 0.002 + 0.0003 * k },
    refuel: { runtime: 300, pause: 60 },
  })),
  duration: 604_800,
  step: 60.48,
};

describe("the longest story that may be asked for", () => {
  it("ends with what came of it so far, and says why", () => {
    const { outcome, counters, series } = simulateFlood(LONGEST);
    expect(outcome).toMatchObject({ kind: "gave-up", because: expect.stringContaining("ask about a shorter time") });
    expect(counters.looks * SPACES.length).toBeLessThan(500_000);
    expect(series.at(-1)!.at).toBe("at" in outcome ? outcome.at : Number.NaN);
  });
});

describe("random valid boats afloat: finite, bounded, no water lost", () => {
  it.each([21, 22, 23])(
    "5,000 boxes with one space in the middle, seed %i",
    (seed) => {
      expect(faultsOfMany(5000, seed, randomEven)).toEqual([]);
    },
    PATIENCE,
  );

  it.each([
    { form: "box", count: 1000, seed: 11 },
    { form: "wedge", count: 700, seed: 12 },
    { form: "family", count: 150, seed: 13 },
    { form: "wigley", count: 150, seed: 14 },
  ] as const)(
    "$count of form $form with two spaces",
    ({ form, count, seed }) => {
      expect(faultsOfMany(count, seed, (draw) => randomFloating(draw, form))).toEqual([]);
    },
    PATIENCE,
  );
});
