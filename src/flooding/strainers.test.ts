import { describe, expect, it } from "vitest";
import { simulateFlood, type FloodCase, type FloodRun, type PlacedPump, type Vessel } from "./index.ts";

const AFLOAT: Vessel = {
  kind: "floating",
  hull: { form: "box", length: 10, beam: 3, depth: 3, draught: 1.2 },
  kg: 0.8,
  compartments: [{ name: "hold", from: 3, to: 7, permeability: 1, level: 0.5 }],
};
const HELD: Vessel = { kind: "fixed", outsideLevel: 1.2, compartments: [{ name: "hold", area: 12, level: 0.5 }] };

const pump = (name: string, more: Partial<PlacedPump> = {}): PlacedPump => ({
  name,
  compartment: "hold",
  delivery: { kind: "steady", flow: 0.012 },
  until: 3000,
  ...more,
});

function pumpedDry(vessel: Vessel, pumps: readonly PlacedPump[], more: Partial<FloodCase> = {}): FloodRun {
  return simulateFlood({
    vessel,
    openings: [{ name: "hole", into: "hold", opening: { kind: "hole", area: 0.003, height: 0 } }],
    pumps,
    duration: 3600,
    step: 100,
    ...more,
  });
}

const sampleAt = (run: FloodRun, at: number) => run.series.find((sample) => sample.at === at)!;
const bared = (run: FloodRun): string[] =>
  run.events.filter(({ kind }) => kind === "suction-dry").map(({ name }) => name);

describe.each([
  { says: "held at a level", vessel: HELD },
  { says: "afloat", vessel: AFLOAT },
])("a space pumped dry, $says", ({ vessel }) => {
  it("with the strainer on its floor: the pump takes no more than comes in, and no water is owed", () => {
    const run = pumpedDry(vessel, [pump("kit")]);
    expect(bared(run)).toEqual(["kit"]);
    const { inflow, pumped } = sampleAt(run, 2900);
    expect(pumped).toBeCloseTo(inflow, 12);
    expect(sampleAt(run, 3100).water.hold! / (100 * inflow)).toBeGreaterThan(0.95);
  });

  it.each([0, 0.1])("by two pumps with their strainers at %f m: both are bare, and the water rises at once", (at) => {
    const run = pumpedDry(vessel, [pump("one", { suctionHeight: at }), pump("other", { suctionHeight: at })]);
    expect(bared(run).toSorted()).toEqual(["one", "other"]);
    const before = sampleAt(run, 3000);
    expect(sampleAt(run, 2900).levels.hold).toBeCloseTo(at, 9);
    expect(sampleAt(run, 3100).water.hold! - before.water.hold!).toBeGreaterThan(0.95 * 100 * before.inflow);
  });
});

describe("a mark at the height of a hole", () => {
  it("is noted as the hole is covered", () => {
    const run = pumpedDry(HELD, [], {
      openings: [{ name: "hole", into: "hold", opening: { kind: "hole", area: 0.003, height: 0.7 } }],
      marks: [{ compartment: "hold", level: 0.7 }],
    });
    expect(run.events.map(({ kind }) => kind).toSorted()).toEqual(["hole-covered", "mark"]);
  });
});
