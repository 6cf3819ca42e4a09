import { describe, expect, it } from "vitest";
import { lengthPicks, sizeFault, sizePicks } from "./sizes.ts";

describe("sizes to tell by a word", () => {
  it("say the figure they stand for, in the person's own unit", () => {
    expect(sizePicks("hole", "metric").map(({ words }) => words)).toContain("Fist, 90\u00a0mm");
    expect(sizePicks("hole", "us").map(({ words }) => words)).toContain("Fist, 3.5\u00a0in");
    expect(lengthPicks("us")[2]).toEqual({ id: "28", words: "28 ft", si: 28 * 0.3048 });
  });

  it("can all be left unknown, and rises are per second", () => {
    for (const kind of ["hole", "holeDepth", "water", "rising"] as const) {
      expect(sizePicks(kind, "metric")[0]).toEqual({ id: "unknown", words: "Not known" });
    }
    expect(sizePicks("rising", "metric")[3]!.si).toBeCloseTo(0.1 / 120, 12);
  });
});

describe("a size typed", () => {
  it.each([0.5, -3, 200])("of %d m is no length an estimate is made for", (si) => {
    expect(sizeFault("length", si)).toContain("3 to 40 m");
  });

  it("is taken where it can be one", () => {
    expect(sizeFault("length", 9)).toBeUndefined();
    expect(sizeFault("distance", 0)).toBeUndefined();
    expect(sizeFault("distance", 300 * 1852)).toContain("200 nmi");
  });
});
