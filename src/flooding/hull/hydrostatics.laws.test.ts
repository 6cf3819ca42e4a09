import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeBalance, makeHull, measureHydrostatics, type HullForm } from "../index.ts";

const SIZE = { length: 9, beam: 2.8, depth: 1.5, draught: 0.7 };
const FORMS: readonly HullForm[] = [
  { form: "box", ...SIZE },
  { form: "wedge", ...SIZE },
  { form: "wigley", ...SIZE },
  { form: "family", ...SIZE, blockCoefficient: 0.55 },
  {
    form: "offsets",
    draught: 0.7,
    stations: [0, 3, 6, 9].map((x, i) => ({
      x,
      offsets: [0, 0.5, 1, 1.5].map((z) => ({ z, halfBreadth: [0.9, 1.3, 1.2, 0][i]! * Math.sqrt(z / 1.5) })),
    })),
  },
];

describe.each(FORMS)("$form hull", (form) => {
  const hull = makeHull(form);
  const heel = 0.15;

  it("volume grows with draught at the rate of the waterplane area", () => {
    const [low, middle, high] = [0.6995, 0.7, 0.7005].map((draught) => measureHydrostatics(hull, { draught }));
    const slope = (high!.volume - low!.volume) / 1e-3;
    expect(slope / middle!.waterplaneArea).toBeCloseTo(1, 5);
  });

  it("is the same heeled to port as to starboard, mirrored", () => {
    const [port, starboard] = [-heel, heel].map((angle) => measureHydrostatics(hull, { draught: 0.7, heel: angle }));
    expect(port!.volume).toBeCloseTo(starboard!.volume, 12);
    expect(port!.tcb).toBeCloseTo(-starboard!.tcb, 12);
    expect(port!.bm).toBeCloseTo(starboard!.bm, 12);
  });

  it("its centre of buoyancy moves across by BM·tan(heel) at small heel", () => {
    const small = 1e-3;
    const upright = measureHydrostatics(hull, { draught: 0.7 });
    const { tcb } = measureHydrostatics(hull, { draught: 0.7, heel: small });
    expect(tcb / Math.tan(small) / upright.bm).toBeCloseTo(1, 2);
  });

  it("brute strips find the same heeled, trimmed volume within 0.2 %", () => {
    const attitude = { draught: 0.75, heel: 0.2, trim: 0.3 };
    expect(measureHydrostatics(hull, attitude).volume / bruteVolume(form, attitude)).toBeCloseTo(1, 2);
  });

  it("put down with no floodwater she lies as she lay", () => {
    const resting = makeBalance({ hull, dry: { draught: 0.7, trim: 0.1 }, kg: 0.6, compartments: [] }).settle([]);
    expect(resting.kind).toBe("afloat");
    if (resting.kind !== "afloat") return;
    expect(resting.plane.height + (resting.plane.slopeX * hull.length) / 2).toBeCloseTo(0.7, 9);
    expect(-resting.plane.slopeX * hull.length).toBeCloseTo(0.1, 9);
    expect(resting.plane.slopeY).toBeCloseTo(0, 12);
  });
});

/** Past the deck edge the curved hulls' Gauss sums have kinks: nothing to compare at these digits. */
function isDeckUnder(plane: { height: number; slopeX: number }): boolean {
  return Math.max(plane.height, plane.height + 9 * plane.slopeX) > SIZE.depth;
}

/** Counts small cells under the water, nothing clever. */
function bruteVolume(form: HullForm, attitude: { draught: number; heel: number; trim: number }): number {
  const hull = makeHull(form);
  const section = new Float64Array(400);
  const [nx, nz] = [200, 150];
  let sum = 0;
  for (let i = 0; i < nx; i += 1) {
    const x = ((i + 0.5) / nx) * hull.length;
    const count = hull.sectionAt(x, section);
    const level = attitude.draught + (attitude.trim / hull.length) * (hull.length / 2 - x);
    for (let k = 0; k < nz; k += 1) {
      const z = ((k + 0.5) / nz) * hull.depth;
      const half = halfAt(section, count, z);
      const from = Math.max(-half, (z - level) / Math.tan(attitude.heel));
      sum += Math.max(0, half - from);
    }
  }
  return (sum * hull.length * hull.depth) / nx / nz;
}

function halfAt(section: Float64Array, count: number, z: number): number {
  for (let k = 0; k < count; k += 1) {
    const p = 5 * k;
    if (z >= section[p]! && z < section[p + 1]!) {
      return Math.max(0, section[p + 2]! + z * (section[p + 3]! + z * section[p + 4]!));
    }
  }
  return 0;
}

describe("block coefficient of the form family", () => {
  it("comes out as asked", () => {
    for (const blockCoefficient of [0.35, 0.4444, 0.5, 0.6, 0.75]) {
      const hull = makeHull({ form: "family", ...SIZE, blockCoefficient });
      const { volume } = measureHydrostatics(hull, { draught: SIZE.draught });
      expect(volume / (SIZE.length * SIZE.beam * SIZE.draught) / blockCoefficient).toBeCloseTo(1, 4);
    }
  });
});

describe("floodwater and lost buoyancy", () => {
  const spaces = fc.record({
    from: fc.double({ min: 0.5, max: 4, noNaN: true }),
    length: fc.double({ min: 0.5, max: 3, noNaN: true }),
    permeability: fc.double({ min: 0.5, max: 1, noNaN: true }),
  });

  it("water let in to the sea's level and buoyancy lost give one attitude and one displacement × GM", () => {
    fc.assert(
      fc.property(fc.constantFrom(...FORMS), spaces, (form, space) => {
        const hull = makeHull(form);
        const compartment = {
          name: "a",
          from: space.from,
          to: space.from + space.length,
          permeability: space.permeability,
        };
        const balance = makeBalance({ hull, dry: { draught: 0.6 }, kg: 0.4, compartments: [compartment] });
        const lost = balance.settleOpen([true]);
        if (lost.kind !== "afloat" || isDeckUnder(lost.plane)) return;
        const water = space.permeability * balance.tanks[0]!.integrals[0]!;
        const added = balance.settle([water]);
        expect(added.kind).toBe("afloat");
        if (added.kind !== "afloat") return;
        // Along the length curved hulls are summed at Gauss points, whose waterplane is not exactly the volume's slope.
        expect(added.plane.height).toBeCloseTo(lost.plane.height, 5);
        expect(added.plane.slopeX).toBeCloseTo(lost.plane.slopeX, 5);
        expect(added.levels[0]).toBeCloseTo(lost.plane.height, 5);
        expect(added.stiffness / lost.stiffness).toBeCloseTo(1, 5);
      }),
      { numRuns: 60, seed: 41 },
    );
  });

  it("a bulkhead on the centre line takes three quarters of the free surface effect away", () => {
    const hull = makeHull({ form: "box", ...SIZE });
    const whole = { name: "whole", from: 3, to: 6, permeability: 1 };
    const halves = [
      { ...whole, name: "port", sideTo: 0 },
      { ...whole, name: "starboard", sideFrom: 0 },
    ];
    const stiffness = (compartments: (typeof whole)[], water: number[]): number => {
      const resting = makeBalance({ hull, dry: { draught: 0.7 }, kg: 0.7, compartments }).settle(water);
      return resting.kind === "afloat" ? resting.stiffness : Number.NaN;
    };
    const solid = (3 * 2.8 ** 3) / 12;
    const undivided = stiffness([whole], [2]);
    expect(stiffness(halves, [1, 1]) - undivided).toBeCloseTo((3 / 4) * solid, 6);
  });

  it("righting levers rise from nothing with the slope GM", () => {
    const hull = makeHull({ form: "family", ...SIZE, blockCoefficient: 0.5 });
    const compartments = [{ name: "a", from: 2, to: 5, permeability: 0.9 }];
    const balance = makeBalance({ hull, dry: { draught: 0.7 }, kg: 0.6, compartments });
    const resting = balance.settle([0.8]);
    if (resting.kind !== "afloat") throw new Error(resting.because);
    const lever = balance.leverAt([0.8], 1e-4)!;
    expect(lever / 1e-4 / (resting.stiffness / resting.volume)).toBeCloseTo(1, 4);
  });

  it("with GM gone she lolls at the wall-sided angle, tan² = −2 GM / BM", () => {
    const hull = makeHull({ form: "box", length: 10, beam: 3, depth: 2, draught: 0.6 });
    const kg = 0.3 + 1.25 + 0.05;
    const resting = makeBalance({ hull, dry: { draught: 0.6 }, kg, compartments: [] }).settle([]);
    if (resting.kind !== "afloat") throw new Error(resting.because);
    expect(Math.abs(resting.plane.slopeY)).toBeCloseTo(Math.sqrt((2 * 0.05) / 1.25), 6);
  });

  it("more weight than the whole hull displaces founders her; no righting lever capsizes her", () => {
    const hull = makeHull({ form: "box", ...SIZE });
    const compartments = [{ name: "a", from: 0, to: 9, permeability: 1 }];
    expect(makeBalance({ hull, dry: { draught: 0.7 }, kg: 0.6, compartments }).settle([30]).kind).toBe("founders");
    expect(makeBalance({ hull, dry: { draught: 0.7 }, kg: 3, compartments: [] }).settle([]).kind).toBe("capsizes");
  });
});
