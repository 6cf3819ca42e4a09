import { describe, expect, it } from "vitest";
import { cutName, printGiven } from "./errors.ts";

describe("what was given, as a message prints it", () => {
  it.each([
    ["nothing", undefined],
    ['"8 ft"', "8 ft"],
    ["12", 12],
    ["NaN", Number.NaN],
    ['{"a":[1]}', { a: [1] }],
  ])("is %s", (text, given) => {
    expect(printGiven(given)).toBe(text);
  });

  it("is cut where it is long", () => {
    expect(printGiven("x".repeat(1_000_000))).toBe(`"${"x".repeat(76)}...`);
  });

  it("is told in words where it is nested deeper than anything can print", () => {
    expect(printGiven(JSON.parse("[".repeat(100_000) + "]".repeat(100_000)))).toBe("what cannot be printed");
  });
});

describe("a field's name in a message", () => {
  it("is told whole where it is short, and cut where it is long", () => {
    expect(cutName("temperature")).toBe("temperature");
    expect(cutName("x".repeat(200_000))).toBe(`${"x".repeat(77)}...`);
  });
});
