import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import {
  isRiseTold,
  OTHER,
  pressedOf,
  lengthPicks,
  sayBack,
  sayRise,
  sayToldHole,
  sayTyped,
  sizeFault,
  sizePicks,
  typedUnit,
} from "./sizes.ts";

const told = await fetchWords("en", "launchTold");

describe("sizes to tell by a word", () => {
  it("say the figure they stand for, in the person's own unit", () => {
    expect(sizePicks("hole", "metric", told).map(({ words }) => words)).toContain("Fist, 90\u00a0mm");
    expect(sizePicks("hole", "us", told).map(({ words }) => words)).toContain("Fist, 3.5\u00a0in");
    expect(lengthPicks("us", told)[3]).toEqual({ id: "28", words: "28 ft", si: 28 * 0.3048 });
  });

  it("can all be left unknown, and rises are per second", () => {
    for (const kind of ["hole", "holeDepth", "water", "rising"] as const) {
      expect(sizePicks(kind, "metric", told)[0]).toEqual({ id: "unknown", words: "Not known" });
    }
    expect(sizePicks("rising", "metric", told)[3]!.si).toBeCloseTo(0.1 / 120, 12);
    const falling = sizePicks("rising", "metric", told).at(-1)!;
    expect(falling.words).toBe("Falling, 3\u00a0cm in 2 min");
    expect(falling.si).toBeCloseTo(-0.03 / 120, 12);
  });
});

describe("a size typed", () => {
  it.each([0.5, -3, 200])("of %d m is no length an estimate is made for", (si) => {
    expect(sizeFault("length", si, told)).toContain("3 to 40 m");
  });

  it("is taken where it can be one", () => {
    expect(sizeFault("length", 9, told)).toBeUndefined();
    expect(sizeFault("distance", 0, told)).toBeUndefined();
    expect(sizeFault("distance", 300 * 1852, told)).toContain("200 nmi");
  });

  it("of water, hole and depth is held to what the question takes", () => {
    expect(sizeFault("water", 0.4, told)).toBeUndefined();
    expect(sizeFault("water", 40, told)).toContain("0 to 600 cm");
    expect(sizeFault("hole", 0, told)).toContain("5 mm");
    expect(sizeFault("holeDepth", 7, told)).toContain("6 m");
  });

  it("is read back in two units, and no finer than it is told", () => {
    expect(sayBack("distance", 5 * 1852)).toBe("5\u00a0nmi, 9.3\u00a0km");
    expect(sayBack("water", 0.4)).toBe("40\u00a0cm, 16\u00a0in");
    expect(sayBack("length", 9.55)).toBe("9.55\u00a0m, 31\u00a0ft");
    expect(sayBack("distance", 0)).toBe("0\u00a0nmi, 0\u00a0km");
  });

  it("is named in the person's own unit", () => {
    expect(sayTyped("water", 0.4, "metric")).toBe("40\u00a0cm");
    expect(sayTyped("water", 0.4064, "us")).toBe("16\u00a0in");
    expect(typedUnit("distance", "us")).toBe("nmi");
  });
});

describe("a rise typed", () => {
  it("is told up to a metre in two minutes, and down as well; more is a slip", () => {
    expect([0, 0.05 / 180, -0.03 / 120, 1 / 120, -1 / 120].map(isRiseTold)).toEqual([true, true, true, true, true]);
    expect([0.05, -0.05].map(isRiseTold)).toEqual([false, false]);
  });
});

describe("what was told, said again", () => {
  it("has the hole as far as it was told, and the rise over two minutes", () => {
    expect(sayToldHole({ diameter: 0.09, depth: 0.6 }, "metric", told)).toBe(
      "hole 90\u00a0mm across, 0.6\u00a0m below the waterline",
    );
    expect(sayToldHole({ depth: 0.6 }, "us", told)).toBe("hole 1.97\u00a0ft below the waterline");
    expect(sayToldHole({}, "metric", told)).toBeUndefined();
    expect(sayRise(0.03 / 120, "metric", told)).toBe("3\u00a0cm in 2 min");
  });
});

describe("which answer of a row is pressed", () => {
  const picks = sizePicks("hole", "metric", told);

  it("is the one counted with, or what is typed", () => {
    expect(pressedOf(picks, 0.09, false)).toBe("fist");
    expect(pressedOf(picks, 0.33, false)).toBe(OTHER);
    expect(pressedOf(picks, undefined, false)).toBe("unknown");
  });

  it("is not 'not known' where a figure was typed and refused: the refusal says what is allowed", () => {
    expect(pressedOf(picks, undefined, true)).toBe(OTHER);
    expect(sizeFault("hole", 2, told)).toMatch(/to 1 m .* of a larger one tell 1 m\. It is not counted with/);
    expect(sizeFault("hole", 1, told)).toBeUndefined();
  });
});
