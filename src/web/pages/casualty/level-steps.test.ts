import { describe, expect, it } from "vitest";
import { levelSteps, stepLevel } from "./level-steps.ts";

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
