import { wrongMeasures } from "#readiness";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { onSceneQuestion } from "./on-scene.ts";

const KINDS = ["open boat", "motor boat", "sailing yacht", "fishing boat"] as const;
const share = fc.double({ min: 0, max: 1, noNaN: true });
const boats = fc
  .record({
    kind: fc.constantFrom(...KINDS),
    length: fc.double({ min: 3, max: 40, noNaN: true }),
    beam: share,
    depth: share,
    draught: share,
    told: fc.integer({ min: 0, max: 7 }),
  })
  .map(({ kind, length, beam, depth, draught, told }) => ({
    kind,
    length,
    ...((told & 1) > 0 && { beam: length * (0.08 + 0.9 * beam) }),
    ...((told & 2) > 0 && { depth: length * (0.03 + 0.35 * depth) }),
    ...((told & 4) > 0 && { draught: length * (0.02 + 0.3 * draught) }),
  }))
  .filter((boat) => wrongMeasures(boat).length === 0);

describe("a boat that is accepted", () => {
  it("floats dry, upright, with freeboard and a metacentric height that a boat has", () => {
    fc.assert(
      fc.property(boats, (boat) => {
        const spaces = [{ name: "a", sort: "cabin", part: "middle" }];
        const answer = onSceneQuestion.answer({ boat, spaces, readings: [], pumping: [], now: 0 }, {});
        expect(answer.lying).toMatchObject({ kind: "afloat" });
        const { gm, freeboard } = answer.lying as { gm: number; freeboard: number };
        expect(freeboard).toBeGreaterThan(0);
        expect(gm).toBeGreaterThan(0.05);
        expect(gm).toBeLessThan(3 * answer.hull.beam);
      }),
      { seed: 41, numRuns: 400 },
    );
  });
});
