import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { monotoneCubic, straightSegments, type TablePoint } from "./interpolate.ts";

const FALLING = [0, 0.004, 0.008, 0.012, 0.016].map((x, i) => ({ x, y: [38, 36.5, 32, 24.5, 13][i]! }));

describe("monotoneCubic", () => {
  it("goes through its points", () => {
    const curve = monotoneCubic(FALLING);
    for (const { x, y } of FALLING) expect(curve.value(x)).toBeCloseTo(y, 12);
  });

  it("is flat with one point and a straight line with two", () => {
    expect(monotoneCubic([{ x: 1, y: 7 }]).value(99)).toBe(7);
    const line = monotoneCubic([FALLING[0]!, FALLING[1]!]);
    expect(line.value(0.002)).toBeCloseTo(37.25, 12);
    expect(line.slope(0.5)).toBeCloseTo(-375, 9);
  });

  it("goes on straight beyond its ends", () => {
    const curve = monotoneCubic(FALLING);
    const step = curve.value(0.018) - curve.value(0.017);
    expect(step / 0.001).toBeCloseTo(curve.slope(0.016), 6);
  });

  it("refuses points out of order as a bug of the caller", () => {
    expect(() => monotoneCubic([FALLING[1]!, FALLING[0]!])).toThrow(/rises strictly/);
  });
});

describe("straightSegments", () => {
  it("goes through its points with chords between and beyond", () => {
    const curve = straightSegments(FALLING);
    expect(curve.value(0.006)).toBeCloseTo(34.25, 12);
    expect(curve.value(0.018)).toBeCloseTo(7.25, 12);
    expect(curve.slope(0.018)).toBeCloseTo(-2875, 9);
  });

  it("is flat with one point", () => {
    expect(straightSegments([{ x: 0, y: 3 }]).value(4)).toBe(3);
  });
});

describe("laws", () => {
  const table = fc
    .array(fc.tuple(fc.double({ min: 0.01, max: 1, noNaN: true }), fc.double({ min: 0, max: 5, noNaN: true })), {
      minLength: 2,
      maxLength: 9,
    })
    .map((steps) => {
      let x = 0;
      let y = 0;
      return steps.map(([dx, dy]): TablePoint => ({ x: (x += dx), y: (y += dy) }));
    });

  it("rises wherever its points rise", () => {
    fc.assert(
      fc.property(table, fc.double({ min: 0, max: 1, noNaN: true }), (points, share) => {
        const curve = monotoneCubic(points);
        const last = points[points.length - 1]!.x;
        const x = points[0]!.x + share * (last - points[0]!.x);
        expect(curve.value(x + 1e-3)).toBeGreaterThanOrEqual(curve.value(x) - 1e-12);
      }),
      { seed: 20_260_102, numRuns: 500 },
    );
  });

  it("has the slope it says", () => {
    fc.assert(
      fc.property(table, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (points, share) => {
        const curve = monotoneCubic(points);
        const last = points[points.length - 1]!.x;
        const x = points[0]!.x + share * (last - points[0]!.x);
        const h = 1e-6;
        const measured = (curve.value(x + h) - curve.value(x - h)) / (2 * h);
        expect(Math.abs(measured - curve.slope(x))).toBeLessThan(1e-2 * (1 + Math.abs(measured)));
      }),
      { seed: 20_260_103, numRuns: 300 },
    );
  });
});
