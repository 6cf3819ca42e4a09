import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { levelFault, levelSteps, readLevel, sayTyped, stepLevel, withUnit } from "./level-steps.ts";

const words = await fetchWords("en", "soundings");

describe("a level set by taps", () => {
  it("goes by whole centimetres, or by inches", () => {
    expect(stepLevel(0.54, 5, "metric")).toBeCloseTo(0.59, 9);
    expect(stepLevel(0.5435, -1, "metric")).toBeCloseTo(0.53, 9);
    expect(stepLevel(0.254, 2, "us")).toBeCloseTo(12 * 0.0254, 9);
  });

  it("stays between the lowest point and what a boat can hold", () => {
    expect(stepLevel(0.02, -5, "metric")).toBe(0);
    expect(stepLevel(9.99, 5, "metric")).toBe(10);
  });

  it("has as many steps down as up", () => {
    for (const system of ["metric", "us"] as const)
      expect(levelSteps(system).reduce((sum, one) => sum + one, 0)).toBe(0);
  });
});

describe("a level typed", () => {
  it("is read with a point or a comma, and also while it is being typed", () => {
    expect(readLevel("12.5", "metric")).toBeCloseTo(0.125, 12);
    expect(readLevel("12,5", "metric")).toBeCloseTo(0.125, 12);
    expect(readLevel("12.", "metric")).toBeCloseTo(0.12, 12);
    expect(readLevel("10", "us")).toBeCloseTo(0.254, 12);
  });

  it("may carry any unit, as people say it", () => {
    expect(readLevel("41 cm", "metric")).toBeCloseTo(0.41, 12);
    expect(readLevel("41cm", "metric")).toBeCloseTo(0.41, 12);
    expect(readLevel("10 in", "us")).toBeCloseTo(0.254, 12);
    expect(readLevel("1.2 m", "metric")).toBeCloseTo(1.2, 12);
    expect(readLevel("41 cm", "us")).toBeCloseTo(0.41, 12);
    expect(readLevel("2 ft 6 in", "metric")).toBeCloseTo(0.762, 12);
    expect(readLevel("3½ in", "us")).toBeCloseTo(3.5 * 0.0254, 12);
    expect(readLevel("half a metre", "us")).toBeCloseTo(0.5, 12);
    expect(["-5 cm", "12 m", "5 kPa", "2 ft 6"].map((text) => readLevel(text, "metric"))).toEqual(
      Array.from({ length: 4 }, () => undefined),
    );
  });

  it.each(["abc", "-5", "99999", "12 kPa"])("says why %j is none", (text) => {
    expect(levelFault(text, "metric", words)).toBe(
      "A level here is a number from 0 to 1000 cm, such as 41; or with its unit: 2 ft 6 1/2 in.",
    );
  });

  it("finds no fault with what is being typed, or with nothing", () => {
    expect(
      ["", " ", ".", ",", "4", "41", "41 c", "41 cm", "2 f", "2 ft 6", "2 ft 6 i"].map((text) =>
        levelFault(text, "metric", words),
      ),
    ).toEqual(Array.from({ length: 11 }, () => undefined));
    expect(levelFault("999", "us", words)).toBe(
      "A level here is a number from 0 to 393 in, such as 16; or with its unit: 2 ft 6 1/2 in.",
    );
  });

  it.each(["1/0 in", "3 1/0 in", "1/0 m", "1/0"])("is not read from %j, which is no number, and says so", (text) => {
    expect(readLevel(text, "metric")).toBeUndefined();
    expect(levelFault(text, "metric", words)).toContain("such as 41");
  });

  it.each([
    ["2 ft 11 in", 35 * 0.0254],
    ["2 ft 6.5 in", 30.5 * 0.0254],
    ["1 ft 10 1/2 in", 22.5 * 0.0254],
    ["2 ft 6\u00bd in", 30.5 * 0.0254],
  ])("is read from feet and inches as people say them: %j", (text, level) => {
    expect(readLevel(text, "metric")).toBeCloseTo(level, 9);
  });

  it.each(["2 ft 6", "2 f", "1 ft 10 1/2"])("tells once the field is left that %j wants its unit", (text) => {
    expect(levelFault(text, "metric", words)).toBeUndefined();
    expect(levelFault(text, "metric", words, true)).toContain("or with its unit");
  });

  it.each(["", " ", "-5", "1e9", "abc", "5 0", "1001", "NaN", "."])(
    "is not read from %j, nor cut to a limit",
    (text) => {
      expect(readLevel(text, "metric")).toBeUndefined();
    },
  );

  it("stands in the box to a tenth", () => {
    expect(sayTyped(0.1254, "metric")).toBe("12.5");
    expect(sayTyped(undefined, "metric")).toBe("");
  });
});

describe("a unit put by its own key, where the keypad has digits only", () => {
  it.each(["metric", "us"] as const)("makes feet and inches of digits alone, for %s", (system) => {
    const feet = withUnit("2", "ft", system)!;
    const both = withUnit(`${feet}6`, "in", system)!;
    expect(both).toBe("2 ft 6 in");
    expect(readLevel(both, system)).toBeCloseTo(30 * 0.0254, 12);
    expect(readLevel(withUnit(`${feet}6.5`, "in", system)!, system)).toBeCloseTo(30.5 * 0.0254, 12);
    expect(readLevel(withUnit("30", "in", system)!, system)).toBeCloseTo(30 * 0.0254, 12);
  });

  it("waits for a figure, is put once, and makes no level that there cannot be", () => {
    expect(["", "2 ft ", "2 ft 6 in"].map((text) => withUnit(text, "in", "us"))).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
    expect(withUnit("2 ft 6", "ft", "us")).toBeUndefined();
    expect(withUnit("40", "ft", "us")).toBeUndefined();
  });
});
