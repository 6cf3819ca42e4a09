import { describe, expect, it } from "vitest";
import { findRoot } from "./root.ts";

describe("findRoot", () => {
  it("finds a root with its residual inside its bracket", () => {
    const outcome = findRoot((x) => x * x - 2, 0, 2);
    expect(outcome.kind).toBe("found");
    if (outcome.kind !== "found") return;
    expect(outcome.root).toBeCloseTo(Math.SQRT2, 14);
    expect(Math.abs(outcome.residual)).toBeLessThan(1e-14);
    expect(outcome.bracket[0]).toBeLessThanOrEqual(Math.SQRT2);
    expect(outcome.bracket[1]).toBeGreaterThanOrEqual(Math.SQRT2);
  });

  it("needs few steps where the function is smooth", () => {
    const outcome = findRoot((x) => Math.exp(x) - 5, 0, 10);
    expect(outcome.kind === "found" && outcome.iterations).toBeLessThan(14);
  });

  it("ends within a bisection's count of steps on a cliff", () => {
    const outcome = findRoot((x) => (x < Math.PI ? -1 : 1e9), 0, 10);
    expect(outcome.kind).toBe("found");
    expect(outcome.kind === "found" && outcome.root).toBeCloseTo(Math.PI, 13);
  });

  it("takes an end that is itself the root", () => {
    expect(findRoot((x) => x, 0, 1)).toMatchObject({ kind: "found", root: 0, residual: 0 });
    expect(findRoot((x) => x - 1, 0, 1)).toMatchObject({ kind: "found", root: 1, residual: 0 });
  });

  it("takes the ends in either order", () => {
    const outcome = findRoot((x) => x ** 3 - 8, 5, -1);
    expect(outcome.kind === "found" && outcome.root).toBeCloseTo(2, 12);
  });

  it("says when the ends do not bracket a root", () => {
    expect(findRoot((x) => x * x + 1, -1, 1)).toMatchObject({ kind: "not-bracketed", values: [2, 2] });
  });

  it("says when it ran out of steps", () => {
    const outcome = findRoot((x) => Math.tanh(50 * (x - 0.9)), -100, 1, { maxIterations: 3 });
    expect(outcome).toMatchObject({ kind: "not-converged", iterations: 3 });
  });

  it("stops at the residual asked for", () => {
    const outcome = findRoot((x) => x * x - 2, 0, 2, { residualTolerance: 1e-3 });
    expect(outcome.kind === "found" && Math.abs(outcome.residual)).toBeLessThanOrEqual(1e-3);
    expect(outcome.kind === "found" && outcome.iterations).toBeLessThan(6);
  });

  it("does not ask again for end values it was given", () => {
    const asked: number[] = [];
    const f = (x: number): number => (asked.push(x), x * x - 2);
    expect(findRoot(f, 0, 2, { ends: [-2, 2] }).kind).toBe("found");
    expect(asked).not.toContain(0);
    expect(asked).not.toContain(2);
  });
});
