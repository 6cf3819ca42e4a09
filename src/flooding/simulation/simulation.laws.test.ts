import { repeatableStream } from "#numerics";
import { describe, expect, it } from "vitest";
import { faultsOfMany, randomFixed, randomFloating } from "#test/judges/random-floods.ts";
import { simulateFlood } from "../index.ts";

/** Seconds on a quiet machine; a busy one gets minutes [ms]. */
const PATIENCE = 300_000;

// With the 17,000 of afloat.laws.test.ts they are 100,006.
describe("random valid spaces held at a level: finite, bounded, no water lost", () => {
  it.each([1, 2, 3, 4, 5, 6, 7])(
    "11,858 of up to three spaces, part %i",
    (part) => {
      expect(faultsOfMany(11_858, part, randomFixed)).toEqual([]);
    },
    PATIENCE,
  );
});

describe("the time step", () => {
  const given = randomFloating(repeatableStream(5), "box");
  const waterWith = (relative: number): number =>
    simulateFlood({ ...given, accuracy: { relative, absolute: relative * 1e-2 } }).series.at(-1)!.water.after!;

  it("refined a thousandfold gives the same answer to its tolerance", () => {
    expect(waterWith(1e-6) / waterWith(1e-9)).toBeCloseTo(1, 5);
  });

  it("the answer does not depend on how often the series is sampled", () => {
    const [often, seldom] = [1, 600].map((step) => simulateFlood({ ...given, step }).series.at(-1)!.water.after!);
    expect(often! / seldom!).toBeCloseTo(1, 12);
  });
});
