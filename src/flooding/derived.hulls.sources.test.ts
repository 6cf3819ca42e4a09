import { describe, expect, it } from "vitest";
import { measureUnder, type Sections } from "#test/judges/clipped-hull.ts";
import { strengthOfHole } from "#test/judges/held-flood.ts";
import { integral, rootBetween } from "#test/judges/quadrature.ts";
import { eventAt, SHARP } from "#test/references/flood-readers.ts";
import { makeHull, measureHydrostatics, simulateFlood, type FloodRun, type HullForm, type Station } from "./index.ts";

/* Hulls whose area changes with the level. Nothing here is published: see the derivations. */

const CLOSE = 1e-7;
const HOLE = 0.008;
const K = strengthOfHole(HOLE);
const apart = (got: number, judged: number): number => Math.abs(got / judged - 1);

function flood(hull: HullForm, permeability: number, mark: number): FloodRun {
  return simulateFlood({
    vessel: {
      kind: "floating",
      hull,
      kg: 0.3,
      compartments: [{ name: "hold", from: 0, to: 9, permeability }],
      lostWhen: "foundered",
    },
    openings: [{ name: "hole", into: "hold", opening: { kind: "hole", area: HOLE, height: 0 } }],
    pumps: [],
    duration: 7200,
    marks: [{ compartment: "hold", level: mark }],
    accuracy: SHARP,
  });
}

/** t = ∫dw/(K·√(T − h)) with w = μ·V(h) and T from V(T) = V₀ + w: she sinks on an even keel. */
function secondsTo(
  level: number,
  permeability: number,
  hull: { draught: number; volume: (z: number) => number; area: (z: number) => number },
): number {
  const sunk = (h: number): number =>
    rootBetween((z) => hull.volume(z) - hull.volume(hull.draught) - permeability * hull.volume(h), 0, 10);
  const slowness = (h: number): number => (permeability * hull.area(h)) / (K * Math.sqrt(sunk(h) - h));
  return integral(slowness, 0, level, 40);
}

describe("DERIVED D11: a wedge that floods over its whole length", () => {
  const [length, beam, depth, draught] = [9, 3, 2, 0.7];
  const hull: HullForm = { form: "wedge", length, beam, depth, draught };
  const k = (length * beam) / (2 * depth);

  /**
   * V(z) = k z². Empty of goods (μ = 1): T² = T₀² + h². With the head δ = T − h, h = (T₀² − δ²)/(2δ), and
   * t = ∫2k h dh/(K√δ) = (k/2K)·∫(T₀⁴ − δ⁴)·δ^(−7/2) dδ
   *   = (k/2K)·[(2/5)·T₀⁴·(δ^(−5/2) − T₀^(−5/2)) − (2/3)·(T₀^(3/2) − δ^(3/2))].
   */
  it.each([0.2, 0.6, 1.2])("void within, %f m in the time of the closed form", (level) => {
    const delta = Math.hypot(draught, level) - level;
    const first = (2 / 5) * draught ** 4 * (delta ** -2.5 - draught ** -2.5);
    const judged = (k / (2 * K)) * (first - (2 / 3) * (draught ** 1.5 - delta ** 1.5));
    expect(apart(eventAt(flood(hull, 1, level), "mark"), judged)).toBeLessThan(CLOSE);
  });

  it.each([0.2, 0.6, 1])("with permeability 0.7, %f m in the time of the sum", (level) => {
    const wedge = { draught, volume: (z: number) => k * z * z, area: (z: number) => 2 * k * z };
    expect(apart(eventAt(flood(hull, 0.7, level), "mark"), secondsTo(level, 0.7, wedge))).toBeLessThan(CLOSE);
  });
});

describe("DERIVED D12: a hull by its offsets", () => {
  const [low, high, depth, draught] = [0.6, 1.5, 1.8, 0.6];
  const station = (x: number): Station => ({
    x,
    offsets: [
      { z: 0, halfBreadth: low },
      { z: depth, halfBreadth: high },
    ],
  });

  /** b(z) = b₀ + s·z, so V(z) = L·(2b₀ z + s z²). */
  it.each([0.3, 0.7, 1])("of one trapezoid all along floods to %f m in the time of the sum", (level) => {
    const slope = (high - low) / depth;
    const trapezoid = {
      draught,
      volume: (z: number) => 9 * (2 * low * z + slope * z * z),
      area: (z: number) => 9 * (2 * low + 2 * slope * z),
    };
    const hull: HullForm = { form: "offsets", draught, stations: [station(0), station(9)] };
    expect(apart(eventAt(flood(hull, 0.65, level), "mark"), secondsTo(level, 0.65, trapezoid))).toBeLessThan(CLOSE);
  });

  const tapered: Sections = {
    stations: [
      {
        x: 0,
        offsets: [
          [0, 0.9],
          [0.5, 1.3],
          [1.6, 1.4],
        ],
      },
      {
        x: 3,
        offsets: [
          [0, 0.5],
          [0.6, 1.4],
          [1.6, 1.5],
        ],
      },
      {
        x: 6.5,
        offsets: [
          [0, 0.2],
          [0.5, 0.8],
          [1.6, 1.3],
        ],
      },
      {
        x: 9,
        offsets: [
          [0, 0.05],
          [0.5, 0.1],
          [1.6, 0.4],
        ],
      },
    ].map(({ x, offsets }) => ({
      x,
      offsets: offsets.map(([z, halfBreadth]) => ({ z: z!, halfBreadth: halfBreadth! })),
    })),
  };

  it.each([
    { says: "on an even keel", draught: 0.7, heel: 0, trim: 0, within: 1e-9 },
    { says: "trimmed", draught: 0.8, heel: 0, trim: 0.5, within: 1e-6 },
    { says: "heeled", draught: 0.8, heel: 0.2, trim: 0, within: 1e-6 },
    { says: "heeled and trimmed", draught: 0.8, heel: -0.3, trim: -0.4, within: 2e-6 },
  ])("that tapers, $says: volume and centre of many polygons", ({ draught, heel, trim, within }) => {
    const hull = makeHull({ form: "offsets", draught, stations: tapered.stations });
    const got = measureHydrostatics(hull, { draught, heel, trim });
    const slopeX = -trim / 9;
    const judged = measureUnder(tapered, { height: draught - 4.5 * slopeX, slopeX, slopeY: Math.tan(heel) });
    expect(apart(got.volume, judged.volume)).toBeLessThan(within);
    expect(Math.abs(got.lcb - judged.x)).toBeLessThan(9 * within);
    expect(Math.abs(got.tcb - judged.y)).toBeLessThan(3 * within);
    expect(Math.abs(got.kb - judged.z)).toBeLessThan(within);
  });
});

describe("DERIVED D13: box and wedge heeled and trimmed, by polygons", () => {
  const size = { length: 9, beam: 3, depth: 1.6, draught: 0.8 };
  it.each([
    { form: "box", keel: 1.5, heel: 0.25, trim: 0.4 },
    { form: "box", keel: 1.5, heel: 0.7, trim: -0.9 },
    { form: "wedge", keel: 0, heel: 0.25, trim: 0.4 },
    { form: "wedge", keel: 0, heel: -0.5, trim: 0.2 },
  ] as const)("$form at heel $heel rad and trim $trim m", ({ form, keel, heel, trim }) => {
    const offsets = [
      { z: 0, halfBreadth: keel },
      { z: 1.6, halfBreadth: 1.5 },
    ];
    const sections = { stations: [0, 9].map((x) => ({ x, offsets })) };
    const got = measureHydrostatics(makeHull({ form, ...size }), { draught: 0.8, heel, trim });
    const slopeX = -trim / 9;
    const judged = measureUnder(sections, { height: 0.8 - 4.5 * slopeX, slopeX, slopeY: Math.tan(heel) });
    expect(apart(got.volume, judged.volume)).toBeLessThan(1e-9);
    expect(Math.abs(got.lcb - judged.x)).toBeLessThan(1e-8);
    expect(Math.abs(got.tcb - judged.y)).toBeLessThan(1e-8);
    expect(Math.abs(got.kb - judged.z)).toBeLessThan(1e-8);
  });
});
