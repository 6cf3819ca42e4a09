import { describe, expect, it } from "vitest";
import { makeBody, makeGeneralBody } from "./body.ts";
import type { FloatingVessel } from "../index.ts";

/** Floodwater over a floor takes her stiffness; a little less water and she lists as far as the floor's edge. */
const BOAT: FloatingVessel = {
  kind: "floating",
  hull: { form: "box", length: 11.5, beam: 3.55, depth: 2.025, draught: 1.265 },
  compartments: [{ name: "hold", from: 1, to: 10.5, permeability: 0.52, floor: 0.5, level: 0.6 }],
};

/** Water at which upright is neither stable nor unstable, to rounding [m³]. */
function turningWater(): number {
  const { straight } = makeBody(BOAT);
  let [low, high] = [0.1, 1.5];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (straight!.holds(middle, middle)) high = middle;
    else low = middle;
  }
  return high;
}

describe("a boat whose upright position is just losing its stability", () => {
  it("is not called capsized: she lies upright, or lists a little", () => {
    const at = turningWater();
    for (let k = -60; k <= 60; k += 1) {
      const body = makeGeneralBody(BOAT);
      body.settle([at + 0.05]);
      const resting = body.settle([at + Math.sign(k) * 10 ** (-Math.abs(k) / 5)]);
      expect(resting.kind, `${k}`).toBe("afloat");
    }
  });
});
