import { describe, expect, it } from "vitest";
import { integrate } from "./quadrature.ts";

describe("integrate", () => {
  it("is exact for polynomials", () => {
    const cube = integrate((x) => 4 * x ** 3 - 2 * x, -1, 3);
    expect(cube.value).toBeCloseTo(72, 11);
    expect(cube).toMatchObject({ kind: "converged", evaluations: 15 });
  });

  it("agrees with closed forms", () => {
    expect(integrate(Math.sin, 0, Math.PI).value).toBeCloseTo(2, 12);
    expect(integrate((x) => Math.exp(-x * x), 0, 8).value).toBeCloseTo(Math.sqrt(Math.PI) / 2, 11);
  });

  it("finds a root-like edge and a jump", () => {
    expect(integrate(Math.sqrt, 0, 1).value).toBeCloseTo(2 / 3, 9);
    expect(integrate((x) => (x < 1 / 3 ? 0 : 1), 0, 1).value).toBeCloseTo(2 / 3, 9);
  });

  it("runs backwards with the sign turned", () => {
    expect(integrate((x) => x, 2, 0).value).toBeCloseTo(-2, 12);
  });

  it("says when the tolerance was not met", () => {
    const wild = integrate((x) => Math.sin(1 / (x + 1e-6)), 0, 1, { maxIntervals: 3 });
    expect(wild.kind).toBe("not-converged");
    expect(wild.error).toBeGreaterThan(1e-10);
  });
});
