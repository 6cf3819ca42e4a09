import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { levelAfter, simulateFlood, strengthOf } from "../index.ts";

const opening = (area: number, height: number) => ({ kind: "hole", area, height }) as const;

function simulated(
  space: { area: number; holeArea: number; hole: number; outside: number; pumped: number },
  start: number,
): number {
  return simulateFlood({
    vessel: {
      kind: "fixed",
      outsideLevel: space.outside,
      compartments: [{ name: "hold", area: space.area, level: start }],
    },
    openings: [{ name: "hole", into: "hold", opening: opening(space.holeArea, space.hole) }],
    pumps: [{ name: "pump", compartment: "hold", delivery: { kind: "steady", flow: space.pumped } }],
    duration: 1800,
    accuracy: { relative: 1e-8, absolute: 1e-10, linearBelow: 1e-6 },
  }).series.at(-1)!.levels.hold!;
}

function number(min: number, max: number): fc.Arbitrary<number> {
  return fc.double({ min, max, noNaN: true });
}

describe("the closed form and the simulation judge each other", () => {
  it("agree to a tenth of a millimetre on random spaces, holes, levels and pumps", () => {
    const spaces = fc.record({
      area: number(3, 40),
      holeArea: number(1e-4, 0.02),
      hole: fc.oneof(fc.constant(0), number(0, 2.2)),
      outside: number(0.2, 2),
      pumped: fc.oneof(fc.constant(0), number(0.0005, 0.03)),
    });
    fc.assert(
      fc.property(spaces, number(0, 2.4), (space, start) => {
        const exact = levelAfter({ ...space, strength: strengthOf(opening(space.holeArea, 0)) }, start, 1800);
        expect(Math.abs(exact - simulated(space, start))).toBeLessThan(1e-4);
      }),
      { numRuns: 200, seed: 12 },
    );
  });

  it("two half times are one whole time", () => {
    const space = { area: 20, strength: 0.047, hole: 0.2, outside: 1.6, pumped: 0.03 };
    const half = levelAfter(space, 0.1, 700);
    expect(levelAfter(space, half, 700)).toBeCloseTo(levelAfter(space, 0.1, 1400), 12);
  });
});
