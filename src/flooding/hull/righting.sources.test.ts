import { describe, expect, it } from "vitest";
import { rightingOf, type FloatingVessel, type RightingCurve } from "../index.ts";

const DEGREE = Math.PI / 180;
type Afloat = Extract<RightingCurve, { kind: "afloat" }>;

function afloat(vessel: Omit<FloatingVessel, "kind">, degrees: readonly number[]): Afloat {
  const found = rightingOf(
    { kind: "floating", ...vessel },
    degrees.map((one) => one * DEGREE),
  );
  if (found.kind !== "afloat") throw new Error(found.because);
  return found;
}

const leversOf = (vessel: Omit<FloatingVessel, "kind">, degrees: readonly number[]): number[] =>
  afloat(vessel, degrees).curve.map(({ lever }) => lever);

function boxOf(length: number, beam: number, depth: number, draught: number, kg: number): Omit<FloatingVessel, "kind"> {
  return { hull: { form: "box", length, beam, depth, draught }, kg, compartments: [] };
}

describe("Barrass & Derrett, Ship Stability for Masters and Mates, ch. 14, the wall-sided formula", () => {
  it("example 1: 6000 t, KB 3 m, KM 6 m, KG 5.5 m: GZ 0.35 m at 25 degrees, 2100 t m", () => {
    const beam = Math.sqrt(12 * 6 * 3);
    const [lever] = leversOf(boxOf(6000 / 1.025 / (6 * beam), beam, 12, 6, 5.5), [25]);
    expect(lever).toBeCloseTo(0.35, 2);
    expect(Math.abs(6000 * lever! - 2100)).toBeLessThan(10);
  });

  it("example 2: a box 65 m x 12 m x 8 m, KG 4 m, draught 4 m: 278.9 t m at 5 degrees, GM 1 m", () => {
    const found = afloat(boxOf(65, 12, 8, 4, 4), [5]);
    expect(found.gm).toBeCloseTo(1, 12);
    // The book leaves out BM tan²/2 at 5 degrees: 1.1 % of it.
    expect(Math.abs(3198 * found.curve[0]!.lever - 278.9)).toBeLessThan(0.013 * 278.9);
  });
});

describe("the wall-sided formula GZ = sin φ (GM + BM tan² φ / 2), exact for a box until bilge or deck edge meets the water", () => {
  const [beam, depth, draught, kg] = [2.6, 1.4, 0.7, 0.6];
  const bm = beam ** 2 / (12 * draught);
  const gm = draught / 2 + bm - kg;
  const wallSided = (phi: number): number => Math.sin(phi) * (gm + (bm * Math.tan(phi) ** 2) / 2);

  it.each([-25, -10, 0, 1, 5, 10, 20, 28])("at %d degrees", (degrees) => {
    const [lever] = leversOf(boxOf(9, beam, depth, draught, kg), [degrees]);
    expect(lever).toBeCloseTo(wallSided(degrees * DEGREE), 10);
  });

  it("its area to 25 degrees' worth of the curve: sin φ·GM + BM/2 (1/cos φ + cos φ − 2), exact, to 30 where the deck is high", () => {
    const high = afloat(boxOf(9, beam, 4, 2, 0.9), [30]);
    const radius = beam ** 2 / 24;
    const height = 1 + radius - 0.9;
    const areaTo = (phi: number): number =>
      height * (1 - Math.cos(phi)) + (radius / 2) * (1 / Math.cos(phi) + Math.cos(phi) - 2);
    expect(high.areaTo[30]).toBeCloseTo(areaTo(30 * DEGREE), 8);
    expect(high.areaTo[40]).toBeCloseTo(areaTo(40 * DEGREE), 8);
  });
});

/** By symmetry about the middle of the section the water's plane goes through it at every heel. DERIVED */
describe("a box half immersed, exact at every heel: past the corner breadth and depth change places", () => {
  const [beam, depth, kg] = [2.6, 1.4, 0.95];
  const exact = (phi: number): number => {
    const tan = Math.tan(phi);
    const isPast = tan > depth / beam;
    const [y, z] = isPast
      ? [beam / 4 - (depth / tan) ** 2 / (12 * beam), -(depth ** 2 / tan) / (6 * beam)]
      : [(beam ** 2 * tan) / (6 * depth), -depth / 4 + (beam ** 2 * tan ** 2) / (12 * depth)];
    return y * Math.cos(phi) + (z - (kg - depth / 2)) * Math.sin(phi);
  };
  const boat = boxOf(9, beam, depth, depth / 2, kg);

  it.each([5, 20, 28, 28.3, 30, 45, 60, 74, 75])("at %d degrees", (degrees) => {
    expect(leversOf(boat, [degrees])[0]).toBeCloseTo(exact(degrees * DEGREE), 9);
  });

  it("greatest lever and vanishing angle are those of the formula", () => {
    const found = afloat(boat, [10]);
    const fine = Array.from({ length: 75_001 }, (_, k) => (k / 1000) * DEGREE);
    const best = fine.reduce((most, phi) => (exact(phi) > exact(most) ? phi : most));
    expect(found.greatest.lever).toBeCloseTo(exact(best), 6);
    expect(Math.abs(found.greatest.heel - best)).toBeLessThan(0.1 * DEGREE);
    const gone = fine.find((phi) => phi > best && exact(phi) <= 0);
    if (gone === undefined) expect(found.vanishing).toBeUndefined();
    else expect(found.vanishing).toBeCloseTo(gone, 4);
    const high = boxOf(9, beam, depth, depth / 2, 1.25);
    expect(exactZeroOf(afloat(high, [10]))).toBeLessThan(1e-9);
  });

  function exactZeroOf({ vanishing }: Afloat): number {
    const phi = vanishing!;
    return Math.abs(exact(phi) - (1.25 - kg) * Math.sin(phi));
  }
});

/** V sections: of the two wetted sides a·b stays, (a − b)/(a + b) = tan φ tan α, the centroid is a third of both. DERIVED */
describe("a wedge, exact until its deck edge is under", () => {
  const [beam, depth, draught, kg] = [2.4, 1.6, 0.8, 0.7];
  const alpha = Math.atan(beam / 2 / depth);
  const exact = (phi: number): number => {
    const t = Math.tan(phi) * Math.tan(alpha);
    const side = draught / Math.cos(alpha);
    const [a, b] = [side * Math.sqrt((1 + t) / (1 - t)), side * Math.sqrt((1 - t) / (1 + t))];
    const [y, z] = [((a - b) * Math.sin(alpha)) / 3, ((a + b) * Math.cos(alpha)) / 3];
    return y * Math.cos(phi) + (z - kg) * Math.sin(phi);
  };

  it.each([2, 10, 20, 30, 38])("at %d degrees", (degrees) => {
    const wedge = { hull: { form: "wedge", length: 8, beam, depth, draught } as const, kg, compartments: [] };
    expect(leversOf(wedge, [degrees])[0]).toBeCloseTo(exact(degrees * DEGREE), 9);
  });
});

/** Water in a space with upright sides heels as a box does: its middle moves by b² tan φ/12h and rises by half of tan φ times that. DERIVED */
describe("a box with slack water amidships, exact while its floor and deck stay wet and dry", () => {
  const [length, beam, depth, draught, kg] = [10, 3, 2, 0.8, 0.7];
  const space = { name: "hold", from: 3, to: 7, permeability: 0.85, level: 0.6 };
  const inside = space.permeability * 4 * beam * space.level;
  const dry = length * beam * draught;
  const sunk = draught + inside / (length * beam);
  const middleOf = (height: number, tan: number): readonly [number, number] => [
    (beam ** 2 * tan) / (12 * height),
    height / 2 + (beam ** 2 * tan ** 2) / (24 * height),
  ];
  const exact = (phi: number): number => {
    const tan = Math.tan(phi);
    const [y, z] = middleOf(sunk, tan);
    const [yWater, zWater] = middleOf(space.level, tan);
    const across = (dry + inside) * y - inside * yWater;
    const up = (dry + inside) * z - inside * zWater - dry * kg;
    return (across * Math.cos(phi) + up * Math.sin(phi)) / (dry + inside);
  };
  const boat = { hull: { form: "box", length, beam, depth, draught } as const, kg, compartments: [space] };

  it.each([1, 5, 10, 20])("at %d degrees", (degrees) => {
    expect(leversOf(boat, [degrees])[0]).toBeCloseTo(exact(degrees * DEGREE), 9);
  });

  it("its GM is the slope of that at upright", () => {
    expect(afloat(boat, [5]).gm).toBeCloseTo(exact(1e-6) / 1e-6, 6);
    expect(afloat({ ...boat, compartments: [] }, [5]).gm - afloat(boat, [5]).gm).toBeGreaterThan(0.1);
  });
});

describe("a boat heeled with her trim free", () => {
  it("has no moment in trim left: her lever is not that of a boat held on even keel", () => {
    const hull = { form: "family", length: 9, beam: 3, depth: 1.5, draught: 0.8, blockCoefficient: 0.5 } as const;
    const aft = { name: "engine room", from: 0.5, to: 3, permeability: 0.85, level: 0.6 };
    const [lever] = leversOf({ hull, kg: 0.9, compartments: [aft] }, [30]);
    const middle = { ...aft, from: 3.25, to: 5.75 };
    expect(Math.abs(lever! - leversOf({ hull, kg: 0.9, compartments: [middle] }, [30])[0]!)).toBeGreaterThan(0.005);
  });
});

describe("levers to port and to starboard", () => {
  it("mirror one another, and the side asked about is the side of the greatest", () => {
    const boat = boxOf(9, 2.6, 1.4, 0.7, 0.95);
    const [port, starboard] = [afloat(boat, [-20, -40]), afloat(boat, [20, 40])];
    expect(port.curve.map(({ lever }) => -lever)).toEqual(starboard.curve.map(({ lever }) => expect.closeTo(lever, 9)));
    expect(port.greatest.heel).toBeCloseTo(-starboard.greatest.heel, 9);
    expect(port.greatest.lever).toBeCloseTo(starboard.greatest.lever, 9);
    expect(port.areaTo[30]).toBeCloseTo(starboard.areaTo[30]!, 9);
  });

  it("a boat too heavy to float has none", () => {
    const full = [{ name: "hold", from: 0, to: 9, permeability: 1, water: 0.9 * 9 * 2.6 * 1.4 }];
    const found = rightingOf({ kind: "floating", ...boxOf(9, 2.6, 1.4, 0.7, 0.6), compartments: full }, [0.1]);
    expect(found.kind).toBe("founders");
  });
});
