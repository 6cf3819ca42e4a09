import { describe, expect, it } from "vitest";
import { faultsOfMany, randomEven, randomFloating } from "../../test/judges/random-floods.ts";

/** Half a minute on a quiet machine; a busy one gets minutes [ms]. */
const PATIENCE = 300_000;

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
