import { describe, expect, it } from "vitest";
import { halfBreadthAt } from "./half-breadth.ts";

const SIZE = { length: 8, beam: 2.4, depth: 1.2, draught: 0.6 };

describe("half the breadth of a hull at one place", () => {
  it("is half the beam of a box, in proportion to the height in a wedge, nothing above the deck", () => {
    expect(halfBreadthAt({ form: "box", ...SIZE }, 1, 0)).toBe(1.2);
    expect(halfBreadthAt({ form: "wedge", ...SIZE }, 1, 0.3)).toBeCloseTo(0.3, 12);
    expect(halfBreadthAt({ form: "box", ...SIZE }, 1, 1.3)).toBe(0);
  });

  it("is Wigley's own formula, y = (B/2)(1 − (2x/L)²)(1 − ((T − z)/T)²), upright above the draught", () => {
    const [x, z] = [6, 0.2];
    const by = 1.2 * (1 - ((2 * (x - 4)) / 8) ** 2);
    expect(halfBreadthAt({ form: "wigley", ...SIZE }, x, z)).toBeCloseTo(by * (1 - ((0.6 - z) / 0.6) ** 2), 12);
    expect(halfBreadthAt({ form: "wigley", ...SIZE }, x, 1)).toBeCloseTo(by, 12);
  });
});
