import { describe, expect, it } from "vitest";
import type { Drawing } from "../card/drawing.ts";
import { litShapes } from "./lit.ts";

const DRAWING: Drawing = {
  title: "A hose and its line",
  shapes: [
    { d: "M0 0L9 0L9 9Z", as: "body", part: "hose" },
    { d: "M1 1L8 1", as: "thin", part: "hose" },
    { d: "M0 20L90 20", as: "line", part: "rope" },
    { d: "M30 30L40 30L40 40Z", as: "solid", part: "knot" },
    { d: "M50 50L90 90", as: "line" },
  ],
};

describe("what stands out in a drawing", () => {
  it("is a part's areas, with the lines on them as they are", () => {
    expect(litShapes(DRAWING, ["hose"]).map(({ lit }) => lit)).toEqual(["area", "plain", "plain", "plain", "plain"]);
  });

  it("is its lines where it is only lines, and its blot where it is only that", () => {
    expect(litShapes(DRAWING, ["rope", "knot"]).map(({ lit }) => lit)).toEqual([
      "plain",
      "plain",
      "line",
      "area",
      "plain",
    ]);
  });

  it("is nothing where nothing is told of, and keeps every shape in order", () => {
    const shapes = litShapes(DRAWING, ["moon"]);
    expect(shapes.every(({ lit }) => lit === "plain")).toBe(true);
    expect(shapes.map(({ shape }) => shape)).toEqual(DRAWING.shapes);
  });
});
