import { describe, expect, it } from "vitest";
import { rightingOf } from "./righting.ts";
import type { FloatingVessel } from "./vessel.ts";

const DEGREE = Math.PI / 180;
const HEELS = [10, 20, 30, 40, 60].map((heel) => heel * DEGREE);

/** A box boat with a third of her flooded and her weight far up. */
function boxWith(kg: number): FloatingVessel {
  const hull = { form: "box", length: 9, beam: 2.6, depth: 1.4, draught: 0.7 } as const;
  return {
    kind: "floating",
    hull,
    kg,
    compartments: [{ name: "hold", from: 1, to: 4, permeability: 0.85, level: 0.6 }],
  };
}

function curveOf(kg: number) {
  const found = rightingOf(boxWith(kg), HEELS);
  if (found.kind !== "afloat") throw new Error(found.because);
  return found;
}

describe("a boat whose centre of gravity is so high that no trim holds her at a steep heel", () => {
  it("has a lever at every heel asked for, and negative ones are answers", () => {
    const { curve, areaTo, trimHeldFrom } = curveOf(4);
    expect(curve.map(({ heel }) => Math.round(heel / DEGREE))).toEqual([10, 20, 30, 40, 60]);
    curve.slice(1).forEach(({ lever }, k) => expect(lever).toBeLessThan(curve[k]!.lever));
    expect(areaTo[40]).toBeLessThan(areaTo[30]!);
    expect(trimHeldFrom! / DEGREE).toBeGreaterThan(30);
    expect(trimHeldFrom! / DEGREE).toBeLessThan(40);
  });

  it("goes on smoothly from where her trim was free", () => {
    const [before, after] = [38, 39]
      .map((heel) => rightingOf(boxWith(4), [heel * DEGREE]))
      .map((found) => (found.kind === "afloat" ? found.curve[0]!.lever : Number.NaN));
    expect(Math.abs(after! - before!)).toBeLessThan(0.08);
  });

  it("has her trim free all the way where her weight lies as it does in boats", () => {
    expect(curveOf(0.9).trimHeldFrom).toBeUndefined();
    expect(curveOf(1.4).trimHeldFrom).toBeUndefined();
  });
});
