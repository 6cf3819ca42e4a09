import { describe, expect, it } from "vitest";
import { simulateFlood, type FloatingVessel, type FloodRun } from "./index.ts";

const HULL = { form: "box", length: 9, beam: 2.6, depth: 1, draught: 0.7 } as const;

function floodOf(more: Partial<FloatingVessel>): FloodRun {
  return simulateFlood({
    vessel: {
      kind: "floating",
      hull: HULL,
      compartments: [{ name: "hold", from: 0, to: 3, permeability: 0.9 }],
      ...more,
    },
    openings: [{ name: "hole", into: "hold", opening: { kind: "hole", area: 0.002, height: 0 } }],
    pumps: [],
    duration: 600,
  });
}

const lostNow = (run: FloodRun): void => {
  expect(run.outcome).toMatchObject({ kind: "lost", at: 0 });
  expect(run.events).toContainEqual({ kind: "lost", at: 0, name: "boat" });
  expect(run.series).toHaveLength(1);
  expect(run.series[0]!.at).toBe(0);
  expect(JSON.stringify(run)).not.toContain("null");
};

describe("a boat that is lost as she is told (freeboard of a box = depth less draught less trim/2, exact)", () => {
  it("by the trim: her deck edge aft is 0.05 m under", () => {
    const run = floodOf({ trim: 0.7 });
    lostNow(run);
    expect(run.events[0]).toEqual({ kind: "deck-edge", at: 0, name: "deck edge" });
    expect(run.series[0]!.attitude!.freeboard).toBeCloseTo(-0.05, 3);
  });

  it("by the water in her: it weighs more than her freeboard carries", () => {
    const spaces = [{ name: "hold", from: 0, to: 9, permeability: 1, water: 0.31 * 9 * 2.6 }];
    lostNow(floodOf({ kg: 0.1, compartments: spaces }));
  });

  it("not where she is told to be lost only when she founders", () => {
    expect(floodOf({ trim: 0.62, lostWhen: "foundered" }).series.length).toBeGreaterThan(1);
  });
});

describe("a boat with no stable lie at the start (GM = KB + BM − KG, box, exact)", () => {
  it("is lost at once, with a first sample of what was told and no attitude", () => {
    const run = floodOf({ kg: 6, compartments: [{ name: "hold", from: 0, to: 3, permeability: 0.9, level: 0.2 }] });
    lostNow(run);
    expect(run.series[0]!.attitude).toBeUndefined();
    expect(run.series[0]!.water.hold).toBeCloseTo(3 * 2.6 * 0.9 * 0.2, 9);
    expect(run.series[0]!.levels.hold).toBeCloseTo(0.2, 1);
  });

  it("also as one that sinks evenly", () => {
    const run = floodOf({ kg: 6, compartments: [{ name: "hold", from: 3, to: 6, permeability: 0.9, level: 0.2 }] });
    lostNow(run);
    expect(run.series[0]!.levels.hold).toBeCloseTo(0.2, 9);
  });

  it("also where boat and water weigh more than her hull carries", () => {
    const spaces = [{ name: "hold", from: 0, to: 9, permeability: 1, water: 0.99 * 9 * 2.6 }];
    lostNow(floodOf({ lostWhen: "foundered", compartments: spaces }));
  });
});
