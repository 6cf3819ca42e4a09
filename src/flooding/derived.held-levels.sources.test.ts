import { describe, expect, it } from "vitest";
import {
  levelAfterSeconds,
  secondsBetween,
  strengthOfHole,
  strengthOfPipe,
  type HeldFlood,
} from "#test/judges/held-flood.ts";
import { integralBetween } from "#test/judges/quadrature.ts";
import { eventAt, levelAt, SHARP, steadyPump } from "#test/references/flood-readers.ts";
import { levelAfter, simulateFlood, type FloodCase, type FloodRun, type Opening } from "./index.ts";

/*
 * One upright space, the sea held at a level. Nothing here is published: each judge is a closed form or a quadrature
 * of its own in test/judges, which shares no code with this room.
 */

/** Events are met on the steps' interpolant, across the corner they stand at; nowhere is more than this lost. */
const CLOSE = 1e-7;
const HOLE = 0.006;
const K = strengthOfHole(HOLE);

interface Held extends Omit<HeldFlood, "strength" | "area"> {
  readonly floor: number;
  readonly permeability?: number;
}

const judgedOf = (held: Held, strength = K): HeldFlood => ({
  ...held,
  strength,
  area: held.floor * (held.permeability ?? 1),
});

function flood(held: Held, start: number, more: Partial<FloodCase> & { readonly opening?: Opening } = {}): FloodRun {
  const { opening = { kind: "hole", area: HOLE, height: held.hole }, ...rest } = more;
  const space = { name: "hold", area: held.floor, permeability: held.permeability ?? 1, level: start };
  return simulateFlood({
    vessel: { kind: "fixed", outsideLevel: held.outside, compartments: [space] },
    openings: [{ name: "hole", opening, into: "hold" }],
    pumps: held.pumped > 0 ? [steadyPump(held.pumped)] : [],
    duration: 3600,
    accuracy: SHARP,
    ...rest,
  });
}

const secondsTo = (held: Held, from: number, to: number, opening?: Opening): number =>
  eventAt(flood(held, from, { marks: [{ compartment: "hold", level: to }], ...(opening && { opening }) }), "mark");

const apart = (got: number, judged: number): number => Math.abs(got / judged - 1);

describe("DERIVED D1: hole above the floor, constant inflow and then Torricelli", () => {
  const held = { floor: 12, hole: 0.5, outside: 1.6, pumped: 0 };
  const places: readonly Held[] = [held, { ...held, permeability: 0.6 }, { ...held, pumped: 0.008 }];

  it.each(places)("the hole is covered, and three heights passed, when the closed form says: %j", (space) => {
    const judged = judgedOf(space);
    expect(apart(eventAt(flood(space, 0), "hole-covered"), secondsBetween(judged, 0, 0.5))).toBeLessThan(CLOSE);
    for (const level of [0.3, 0.8, 1.1]) {
      expect(apart(secondsTo(space, 0, level), secondsBetween(judged, 0, level))).toBeLessThan(CLOSE);
    }
  });

  it("the exact answer of this room gives the same levels", () => {
    for (const space of places.map((place) => judgedOf(place))) {
      for (const level of [0.3, 0.8, 1.1]) {
        expect(apart(levelAfter(space, 0, secondsBetween(space, 0, level)), level)).toBeLessThan(1e-12);
      }
    }
  });

  it("where all but a millionth of the head is gone nothing is left to fill but that millionth", () => {
    const full = secondsBetween(judgedOf(held), 0, 1.6 - 1.1e-6);
    expect(apart(secondsTo(held, 0, 1.6 - 1.1e-6), full)).toBeLessThan(1e-7);
  });
});

describe("DERIVED D2: a pump stronger than the hole", () => {
  it("dries a space with the hole in its floor when the logarithm says", () => {
    const held = { floor: 12, hole: 0, outside: 1.2, pumped: 1.3 * K * Math.sqrt(1.2) };
    const run = flood(held, 0.9);
    expect(apart(eventAt(run, "suction-dry"), secondsBetween(judgedOf(held), 0.9, 0))).toBeLessThan(CLOSE);
    expect(run.outcome.kind).toBe("dry");
  });

  it("lowers the level past a hole in the upper side, then at a constant rate to the strainer", () => {
    const held = { floor: 10, hole: 0.7, outside: 1.3, pumped: 1.2 * K * Math.sqrt(0.6) };
    const pumps = [steadyPump(held.pumped, { suctionHeight: 0.05 })];
    const run = flood(held, 1.25, { pumps, duration: 7200 });
    const judged = judgedOf(held);
    expect(apart(eventAt(run, "hole-uncovered"), secondsBetween(judged, 1.25, 0.7))).toBeLessThan(CLOSE);
    expect(apart(eventAt(run, "suction-dry"), secondsBetween(judged, 1.25, 0.05))).toBeLessThan(CLOSE);
  });
});

describe("DERIVED D3: a pump that takes exactly what comes in", () => {
  const held = { floor: 10, hole: 0.5, outside: 1.4, pumped: K * Math.sqrt(0.9) };

  it("below the hole the level stays where it is", () => {
    const run = flood(held, 0.2);
    expect(Math.abs(levelAt(run, 3600) - 0.2)).toBeLessThan(1e-12);
    expect(run.outcome.kind).toBe("holding");
  });

  it("above the hole the level sinks towards it and never comes there: u − e falls off as the logarithm says", () => {
    const run = flood(held, 1.1);
    for (const at of [300, 900, 2700]) {
      const judged = levelAfterSeconds(judgedOf(held), 1.1, at, [0.5 + 1e-12, 1.1]);
      expect(apart(levelAt(run, at), judged)).toBeLessThan(CLOSE);
    }
    expect(run.events.some(({ kind }) => kind === "hole-uncovered")).toBe(false);
  });
});

/** Of each hole K·√(H − max(h, z)); t = ∫A dh/(ΣQ − Q_pump), split where a hole is covered. */
describe("DERIVED D4: several holes at different heights, by quadrature", () => {
  const [floor, outside, pumped] = [14, 1.5, 0.012];
  const holes = [
    { area: 0.002, height: 0 },
    { area: 0.004, height: 0.45 },
    { area: 0.003, height: 0.9 },
    { area: 0.005, height: 1.45 },
  ];
  const inflow = (level: number): number =>
    holes.reduce(
      (sum, { area, height }) => sum + strengthOfHole(area) * Math.sqrt(outside - Math.max(level, height)),
      0,
    );
  const judged = (to: number): number => {
    const limits = [0, ...holes.map(({ height }) => height).filter((z) => z > 0 && z < to), to];
    return integralBetween((level) => floor / (inflow(level) - pumped), limits);
  };

  it.each([0.2, 0.45, 0.7, 1.2])("reaches %f m in the time of the sum", (level) => {
    const run = simulateFlood({
      vessel: { kind: "fixed", outsideLevel: outside, compartments: [{ name: "hold", area: floor }] },
      openings: holes.map((hole, k) => ({ name: `hole ${k}`, opening: { kind: "hole", ...hole }, into: "hold" })),
      pumps: [steadyPump(pumped)],
      duration: 1800,
      marks: [{ compartment: "hold", level }],
      accuracy: SHARP,
    });
    expect(apart(eventAt(run, "mark"), judged(level))).toBeLessThan(CLOSE);
  });
});

describe("DERIVED D5: water stands higher inside and runs out", () => {
  it.each([
    { says: "into the air, the hole above the sea", hole: 0.6, outside: 0.3, pumped: 0 },
    { says: "into the sea, the hole below it", hole: 0.1, outside: 0.6, pumped: 0 },
    { says: "into the air, a pump helping", hole: 0.6, outside: 0.3, pumped: 0.008 },
  ])("$says", ({ hole, outside, pumped }) => {
    const held = { floor: 9, hole, outside, pumped };
    const judged = judgedOf(held);
    for (const level of [1.1, 0.8, 0.61]) {
      expect(apart(secondsTo(held, 1.5, level), secondsBetween(judged, 1.5, level))).toBeLessThan(CLOSE);
      expect(apart(levelAfter(judged, 1.5, secondsBetween(judged, 1.5, level)), level)).toBeLessThan(1e-12);
    }
  });
});

describe("DERIVED D6: a broken pipe in place of the hole", () => {
  it("fills with K = A·√(2g/(1 + ΣK + f·L/D)), straight and with fittings", () => {
    const held = { floor: 6, hole: 0.2, outside: 1.4, pumped: 0 };
    const pipe = { bore: 0.08, length: 2.5, friction: 0.025, fittings: 1.9 };
    const opening: Opening = { kind: "pipe", height: 0.2, ...pipe };
    const judged = judgedOf(held, strengthOfPipe(pipe));
    for (const level of [0.15, 0.6, 1.3]) {
      expect(apart(secondsTo(held, 0, level, opening), secondsBetween(judged, 0, level))).toBeLessThan(CLOSE);
    }
  });
});
