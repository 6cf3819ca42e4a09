import { describe, expect, it } from "vitest";
import { ERROR_WEIGHTS, NODES, TABLEAU } from "./ode-dormand-prince.ts";

const weights = [...TABLEAU[6], 0];
const sum = (terms: readonly number[]) => terms.reduce((total, term) => total + term, 0);
const inner = (power: number) => TABLEAU.map((row) => sum(row.map((a, j) => a * NODES[j]! ** power)));

describe("Dormand & Prince 1980, order conditions of the 5(4) pair", () => {
  it("rows sum to the nodes", () => {
    TABLEAU.forEach((row, s) => expect(sum(row)).toBeCloseTo(NODES[s]!, 14));
  });

  it.each([1, 2, 3, 4, 5])("quadrature condition of order %i: sum b c^(q-1) = 1/q", (q) => {
    expect(sum(weights.map((b, s) => b * NODES[s]! ** (q - 1)))).toBeCloseTo(1 / q, 14);
  });

  it("tree conditions of orders 3 to 5: sum b a c = 1/6, b c a c = 1/8, b a c^2 = 1/12, b a c^3 = 1/20", () => {
    const [first, second, third] = [inner(1), inner(2), inner(3)];
    expect(sum(weights.map((b, s) => b * first[s]!))).toBeCloseTo(1 / 6, 14);
    expect(sum(weights.map((b, s) => b * NODES[s]! * first[s]!))).toBeCloseTo(1 / 8, 14);
    expect(sum(weights.map((b, s) => b * second[s]!))).toBeCloseTo(1 / 12, 14);
    expect(sum(weights.map((b, s) => b * third[s]!))).toBeCloseTo(1 / 20, 14);
  });

  it("the error weights vanish on polynomials up to degree 3 and not on degree 4", () => {
    [0, 1, 2, 3].forEach((p) => expect(sum(ERROR_WEIGHTS.map((e, s) => e * NODES[s]! ** p))).toBeCloseTo(0, 14));
    expect(Math.abs(sum(ERROR_WEIGHTS.map((e, s) => e * NODES[s]! ** 4)))).toBeGreaterThan(1e-5);
  });
});
