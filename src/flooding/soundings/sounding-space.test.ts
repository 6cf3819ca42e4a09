import { describe, expect, it } from "vitest";
import { spaceOf } from "./sounding-boat.ts";
import { areaAt, riseWith, seaWith, shapeAt, uprightSpace, volumeAt } from "./sounding-space.ts";

const BOAT = spaceOf(
  {
    kind: "floating",
    hull: { form: "box", length: 9, beam: 2.8, depth: 1.4, draught: 0.7 },
    compartments: [{ name: "hold", from: 2, to: 5, permeability: 0.85 }],
  },
  "hold",
);
const UPRIGHT = uprightSpace({ area: 12, outside: 1, outsideDoubt: 0, sinkage: 0.03 });
const HEIGHT = BOAT.step * (BOAT.areas.length - 1);

describe("area and water, sea and its rise, in one look-up", () => {
  it.each([-0.2, 0, 1e-9, BOAT.step, 0.37, HEIGHT, HEIGHT + 0.5])("are at %d m those of two, to the last bit", (h) => {
    for (const space of [BOAT, UPRIGHT]) {
      const found = new Float64Array(3);
      shapeAt(space, h, found, 1);
      expect([...found]).toEqual([0, areaAt(space, h), volumeAt(space, h)]);
    }
  });

  it.each([-0.1, 0, 0.01, 1.7, 500])("rise with %d m³ as in one, and by the slope of a straight piece", (water) => {
    for (const space of [BOAT, UPRIGHT]) {
      const found = new Float64Array(2);
      seaWith(space, water, found, 0);
      expect(found[0]).toBe(riseWith(space, water));
      expect(riseWith(space, water + 1e-4) - found[0]!).toBeCloseTo(1e-4 * found[1]!, 9);
    }
  });
});
