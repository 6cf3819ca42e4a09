import fc from "fast-check";
import { expect, it } from "vitest";
import { findRoot } from "./root.ts";

it("finds the only root of every rising cubic, to the last digits", () => {
  fc.assert(
    fc.property(
      fc.double({ min: -50, max: 50, noNaN: true }),
      fc.double({ min: 0.01, max: 100, noNaN: true }),
      (root, slope) => {
        const outcome = findRoot((x) => (x - root) ** 3 + slope * (x - root), -60, 70);
        expect(outcome.kind).toBe("found");
        if (outcome.kind !== "found") return;
        expect(Math.abs(outcome.root - root)).toBeLessThan(1e-12 * (1 + Math.abs(root)) + 1e-13);
        expect(outcome.iterations).toBeLessThan(60);
      },
    ),
    { seed: 20_260_101, numRuns: 500 },
  );
});
