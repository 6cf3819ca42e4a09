import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { likelyBeam, likelyCompartment, likelyHull, type BoatKind } from "./boat-kinds.ts";
import { lieWithWater, type Lying } from "./lying.ts";
import {
  AREA_SHARE,
  DELIVERY,
  followLevel,
  HOLE,
  OUTSIDE,
  planSteps,
  STRENGTH,
  UNKNOWNS,
} from "../soundings/sounding-model.ts";
import { spaceOf } from "../soundings/sounding-boat.ts";
import type { FloatingVessel } from "./vessel.ts";

const KINDS: readonly BoatKind[] = ["open boat", "motor boat", "sailing yacht", "fishing boat"];
const boats = fc.record({ kind: fc.constantFrom(...KINDS), length: fc.double({ min: 3, max: 40, noNaN: true }) });

describe("a boat of which little is known", () => {
  it("keeps what is given and floats with her deck dry", () => {
    fc.assert(
      fc.property(boats, fc.double({ min: 0.3, max: 2, noNaN: true }), (boat, draught) => {
        const hull = likelyHull({ ...boat, draught });
        expect(hull.draught).toBe(draught);
        expect(hull.depth).toBeGreaterThan(hull.draught);
        expect(likelyHull(boat).beam).toBe(likelyBeam(boat.length));
      }),
      { seed: 11, numRuns: 200 },
    );
  });

  it("is covered once by aft, middle and forward, and by the whole", () => {
    const parts = (["aft", "middle", "forward"] as const).map((part) =>
      likelyCompartment({ name: part, sort: "cabin", part }, 10),
    );
    expect(parts.map(({ from }) => from)).toEqual([0, ...parts.slice(0, 2).map(({ to }) => to)]);
    expect(parts.at(-1)!.to).toBe(likelyCompartment({ name: "x", sort: "open", part: "whole" }, 10).to);
  });
});

describe("how she lies with water in her", () => {
  it("loses freeboard with every level, and goes down by the end that floods", () => {
    const [dry, some, more] = [0, 0.2, 0.4].map((level) => afloat(lieWithWater(vessel(level, "aft"))));
    expect(dry!.freeboard).toBeGreaterThan(some!.freeboard);
    expect(some!.freeboard).toBeGreaterThan(more!.freeboard);
    expect(more!.aft).toBeGreaterThan(more!.forward);
    const forward = afloat(lieWithWater(vessel(0.4, "forward")));
    expect(forward.forward).toBeGreaterThan(forward.aft);
  });

  it("has the water inside where it was given, and no list of its own", () => {
    const lying = afloat(lieWithWater(vessel(0.3, "whole")));
    expect((lying.inside[0]!.aft + lying.inside[0]!.forward) / 2).toBeCloseTo(0.3, 2);
    expect(lying.heel).toBeCloseTo(0, 6);
  });
});

function vessel(level: number, part: "aft" | "forward" | "whole"): FloatingVessel {
  const hull = likelyHull({ kind: "motor boat", length: 9 });
  const compartment = { ...likelyCompartment({ name: "c", sort: "cabin", part }, 9), level };
  return { kind: "floating", hull, compartments: [compartment] };
}

function afloat(lying: Lying): Extract<Lying, { kind: "afloat" }> {
  if (lying.kind !== "afloat") throw new Error(lying.because);
  return lying;
}

describe("a level followed in a hull whose area vanishes at the keel", () => {
  const hull = likelyHull({ kind: "motor boat", length: 10 });
  const compartments = [likelyCompartment({ name: "c", sort: "engine-room", part: "aft" }, 10)];
  const space = spaceOf({ kind: "floating", hull, compartments }, "c");
  const casualty = new Float64Array(UNKNOWNS);
  casualty[STRENGTH] = 4e-3;
  casualty[AREA_SHARE] = 1;
  casualty[DELIVERY] = 1;
  casualty[HOLE] = 0.1;
  casualty[OUTSIDE] = space.outside;

  it("is never higher for more pumping, however long the steps", () => {
    for (const length of [20, 60, 180]) {
      const plan = (flow: number) => planSteps([0, 3600], [{ from: -1, flow }], length);
      const levels = [0, 2, 4, 8, 16].map((flow) =>
        followLevel(space, casualty, plan(flow * 1e-3), 0.5, new Float64Array(2)),
      );
      levels.slice(1).forEach((level, i) => expect(level).toBeLessThanOrEqual(levels[i]! + 1e-6));
      expect(levels.at(-1)).toBe(0);
    }
  });
});
