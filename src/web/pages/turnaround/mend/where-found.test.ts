import { describe, expect, it } from "vitest";
import { whereFound } from "./where-found.ts";

describe("the way from a line that is stopped to the line found wrong", () => {
  it("leads to the check that found it, by itself, not to what is still open at its line", () => {
    const there = { line: 2, ask: "torch/torch-lights", isAlone: true };
    expect(whereFound({ step: "torch", check: "torch-lights" }, 2)).toEqual(there);
  });

  it("leads to the line itself where no check found it", () => {
    expect(whereFound({ step: "vent" }, 1)).toEqual({ line: 1, ask: "vent", isAlone: true });
  });
});
