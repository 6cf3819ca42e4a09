import { describe, expect, it } from "vitest";
import { secondsBetween, strengthOfHole } from "#test/judges/held-flood.ts";
import { eventAt, levelAt, SHARP } from "#test/references/flood-readers.ts";
import { simulateFlood, type FloodRun } from "./index.ts";

/* Water goes from the sea into one space and from that into the next. Nothing here is published. */

const CLOSE = 1e-7;
const apart = (got: number, judged: number): number => Math.abs(got / judged - 1);

interface Pair {
  readonly outside: number;
  readonly outer: { readonly area: number; readonly level: number; readonly hole: number };
  readonly inner: { readonly area: number; readonly level: number; readonly hole: number };
}

function flood({ outside, outer, inner }: Pair, duration: number, mark?: number): FloodRun {
  return simulateFlood({
    vessel: {
      kind: "fixed",
      outsideLevel: outside,
      compartments: [
        { name: "outer", area: outer.area, level: outer.level },
        { name: "inner", area: inner.area, level: inner.level },
      ],
    },
    openings: [
      { name: "breach", into: "outer", opening: { kind: "hole", area: outer.hole, height: 0 } },
      { name: "door", from: "outer", into: "inner", opening: { kind: "hole", area: inner.hole, height: 0 } },
    ],
    pumps: [],
    duration,
    step: duration / 10,
    marks: mark === undefined ? [] : [{ compartment: "inner", level: mark }],
    accuracy: SHARP,
  });
}

/**
 * With u and v the heads wanting in the outer and the inner space, both openings drowned,
 *
 *     A₁·u' = −K₁·√u + K₂·√(v − u),   A₂·v' = −K₂·√(v − u).
 *
 * v = c·u stays so where A₂·c·(K₁ − K₂·√(c − 1)) = A₁·K₂·√(c − 1). Choose c and find K₂ of it; then
 * A₁·u' = −(K₁ − K₂·√(c − 1))·√u, and √u falls in a straight line: √u = √u₀ − λt/2, λ = (K₁ − K₂·√(c − 1))/A₁.
 */
describe("DERIVED D9: two spaces whose heads keep their ratio", () => {
  const [c, areas, breach, outside] = [1.8, [7, 11] as const, 0.008, 1.5];
  const strength = strengthOfHole(breach);
  const root = Math.sqrt(c - 1);
  const door = (areas[1] * c * strength) / (root * (areas[0] + areas[1] * c));
  const hole = (breach * door) / strength;
  const first = 0.7;
  const pair: Pair = {
    outside,
    outer: { area: areas[0], level: outside - first, hole: breach },
    inner: { area: areas[1], level: outside - c * first, hole },
  };
  const lambda = (strength - door * root) / areas[0];
  const full = (2 * Math.sqrt(first)) / lambda;

  it("both levels are where the straight line has them, to the end", () => {
    const run = flood(pair, 0.95 * full);
    for (const { at } of run.series) {
      const u = (Math.sqrt(first) - (lambda * at) / 2) ** 2;
      expect(apart(levelAt(run, at, "outer"), outside - u)).toBeLessThan(CLOSE);
      expect(apart(levelAt(run, at, "inner"), outside - c * u)).toBeLessThan(CLOSE);
    }
  });

  it("and both are full at one time", () => {
    const run = flood(pair, 1.05 * full);
    expect(outside - run.series.at(-1)!.levels.inner!).toBeLessThan(1e-8);
    const nearly = flood(pair, 1.05 * full, outside - 1e-4 * c * first);
    expect(apart(eventAt(nearly, "mark"), 0.99 * full)).toBeLessThan(CLOSE);
  });
});

/**
 * A breach of K₁ ≫ K₂ keeps the outer space within (K₂/K₁)² of the head from the sea, so the inner one fills as a held
 * space does; with K₁ = 2,000·K₂ what is left out is below 3e-7.
 */
describe("DERIVED D10: two spaces, the outer one open to the sea", () => {
  it("the inner one fills through its door as Torricelli has it", () => {
    const pair: Pair = {
      outside: 1.3,
      outer: { area: 6, level: 1.3, hole: 4 },
      inner: { area: 9, level: 0, hole: 0.002 },
    };
    const space = { area: 9, strength: strengthOfHole(0.002), hole: 0, outside: 1.3, pumped: 0 };
    for (const level of [0.3, 0.8, 1.2]) {
      expect(apart(eventAt(flood(pair, 3600, level), "mark"), secondsBetween(space, 0, level))).toBeLessThan(1e-6);
    }
  });
});
