import { describe, expect, it } from "vitest";
import { hullAlone } from "./casualty-hull.ts";

const YACHT = { kind: "sailing yacht", length: 8 } as const;

describe("a yacht's draught told to the foot of her keel", () => {
  it("leaves the hull's own to be taken from her length", () => {
    const { boat, keel, keelInDepth } = hullAlone({ ...YACHT, draught: 2.1 });
    expect(boat.draught).toBeCloseTo(0.52, 12);
    expect(keel).toBeCloseTo(1.58, 12);
    expect(keelInDepth).toBe(0);
    expect(boat).not.toHaveProperty("depth");
  });

  it("takes the depth from the same foot where that leaves a freeboard that a yacht has", () => {
    const { boat } = hullAlone({ ...YACHT, draught: 2.1, depth: 3 });
    expect(boat.depth! - boat.draught!).toBeCloseTo(0.9, 12);
  });

  it.each([
    [1.3, 1.6],
    [1.3, 1],
    [1.7, 1.6],
  ])("takes a depth of %s m for the hull's own at a draught of %s m", (depth, draught) => {
    const { boat } = hullAlone({ ...YACHT, depth, draught });
    expect(boat.depth).toBe(depth);
    expect(boat.draught).toBeCloseTo(0.52, 12);
  });

  it("keeps a shallow hull afloat", () => {
    const { boat } = hullAlone({ ...YACHT, depth: 0.5, draught: 1.6 });
    expect(boat.draught).toBeCloseTo(0.4, 12);
  });
});

describe("a boat's draught that is her hull's", () => {
  it.each([
    { ...YACHT, draught: 0.8 },
    { ...YACHT },
    { kind: "fishing boat", length: 8, draught: 1.4 } as const,
    { length: 8, draught: 1.4 },
  ])("stands as told: %j", (boat) => {
    expect(hullAlone(boat)).toEqual({ boat, keel: 0, keelInDepth: 0 });
  });
});
