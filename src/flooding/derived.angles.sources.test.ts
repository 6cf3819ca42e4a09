import { describe, expect, it } from "vitest";
import { strengthOfHole } from "#test/judges/held-flood.ts";
import { restingBox, type InclinedBox } from "#test/judges/inclined-box.ts";
import { integralBetween, rootBetween } from "#test/judges/quadrature.ts";
import { eventAt, SHARP } from "#test/references/flood-readers.ts";
import { simulateFlood, type FloatingVessel, type FloodRun } from "./index.ts";

/* Box boats with water to one side or at one end, exact at the angle. Nothing here is published. */

const apart = (got: number, judged: number): number => Math.abs(got / judged - 1);

const [LENGTH, BEAM, DRAUGHT, KG] = [10, 3.2, 0.9, 0.7];
const SIDE = { from: 0.2, to: 1.5 };
const HEELING: InclinedBox = {
  span: BEAM,
  across: LENGTH,
  draught: DRAUGHT,
  kg: KG,
  space: { ...SIDE, across: 4, permeability: 0.85 },
};
const TRIMMING: InclinedBox = {
  span: LENGTH,
  across: BEAM,
  draught: DRAUGHT,
  kg: KG,
  space: { from: -4.5, to: -2, across: BEAM, permeability: 0.85 },
};

function boat(space: Partial<FloatingVessel["compartments"][number]>): FloatingVessel {
  return {
    kind: "floating",
    hull: { form: "box", length: LENGTH, beam: BEAM, depth: 2.4, draught: DRAUGHT },
    kg: KG,
    compartments: [{ name: "hold", from: 3, to: 7, permeability: 0.85, ...space }],
  };
}

const off = (water: number): FloatingVessel => boat({ sideFrom: SIDE.from, sideTo: SIDE.to, water });
const aft = (water: number): FloatingVessel => boat({ from: 0.5, to: 3, water });

function lying(vessel: FloatingVessel): FloodRun["series"][number] {
  return simulateFlood({ vessel, openings: [], pumps: [], duration: 1 }).series[0]!;
}

/** The cubic of test/judges/inclined-box.ts. */
describe("DERIVED D14: a box heels to a space off the centre line, and trims to one aft", () => {
  it.each([1.2, 2, 2.8])("%f m³ to one side: heel, draught and level", (water) => {
    const judged = restingBox(HEELING, water);
    const got = lying(off(water));
    expect(apart(Math.tan(got.attitude!.heel), judged.slope)).toBeLessThan(1e-9);
    expect(apart(got.attitude!.draught, judged.draught)).toBeLessThan(1e-9);
    expect(apart(got.levels.hold!, judged.depth)).toBeLessThan(1e-9);
  });

  it.each([1.2, 2.5, 4])("%f m³ aft: trim, draught and level", (water) => {
    const judged = restingBox(TRIMMING, water);
    const got = lying(aft(water));
    expect(apart(got.attitude!.trim, -judged.slope * LENGTH)).toBeLessThan(1e-9);
    expect(apart(got.attitude!.draught, judged.draught)).toBeLessThan(1e-9);
    expect(apart(got.levels.hold!, judged.depth)).toBeLessThan(1e-9);
  });
});

/**
 * A hole in her side at y, z: the sea stands there T + q·y high, the water within h + q·(y − c); true heads are those
 * less by cos φ = 1/√(1 + q²). So t = ∫dw/(K·√(cos φ·(T + q y − max(z, h + q(y − c))))), split where it is covered.
 */
describe("DERIVED D15: and floods through a hole on that side", () => {
  const [area, y, z] = [0.004, 1.5, 0.55];
  const middle = (SIDE.from + SIDE.to) / 2;
  const within = (water: number): number => {
    const { depth, slope } = restingBox(HEELING, water);
    return depth + slope * (y - middle);
  };
  const inflow = (water: number): number => {
    const { slope, draught } = restingBox(HEELING, water);
    const head = draught + slope * y - Math.max(z, within(water));
    return strengthOfHole(area) * Math.sqrt(head / Math.hypot(1, slope));
  };
  const first = 1;
  const covered = rootBetween((water) => within(water) - z, 1, 3);
  const seconds = (water: number): number => {
    const limits = water > covered ? [first, covered, water] : [first, water];
    return integralBetween((w) => 1 / inflow(w), limits, 12);
  };

  function flooding(level: number): FloodRun {
    return simulateFlood({
      vessel: off(first),
      openings: [{ name: "hole", into: "hold", x: 5, y, opening: { kind: "hole", area, height: z } }],
      pumps: [],
      duration: 1800,
      marks: [{ compartment: "hold", level }],
      accuracy: SHARP,
    });
  }

  it("is covered when the sum says", () => {
    expect(apart(eventAt(flooding(1), "hole-covered"), seconds(covered))).toBeLessThan(1e-7);
  });

  it.each([1.5, 2.4, 3])("has %f m³ in her when the sum says", (water) => {
    const level = restingBox(HEELING, water).depth;
    expect(apart(eventAt(flooding(level), "mark"), seconds(water))).toBeLessThan(1e-7);
  });
});
