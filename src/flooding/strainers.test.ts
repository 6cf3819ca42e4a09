import { describe, expect, it } from "vitest";
import { integrateFlood } from "./simulation/simulation.ts";
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

const highStrainer = (more: Partial<PlacedPump> = {}): FloodCase => ({
  vessel: { kind: "fixed", outsideLevel: 1.2, compartments: [{ name: "hold", area: 12, level: 0.3 }] },
  openings: [{ name: "hole", into: "hold", opening: { kind: "hole", area: (Math.PI / 4) * 0.04 ** 2, height: 0 } }],
  pumps: [pump("kit", { suctionHeight: 0.5, until: 1e9, delivery: { kind: "steady", flow: 0.005 }, ...more })],
  duration: 3600,
  step: 60,
});

const boxBoat = (pumps: readonly PlacedPump[]): FloodRun =>
  simulateFlood({
    vessel: {
      kind: "floating",
      hull: { form: "box", length: 9, beam: 2.6, depth: 1.0, draught: 0.7 },
      kg: 0.4,
      compartments: [{ name: "hold", from: 1, to: 8, permeability: 0.9, level: 0.1 }],
    },
    openings: [{ name: "hole", into: "hold", opening: { kind: "hole", area: 0.005, height: 0 } }],
    pumps,
    duration: 7200,
  });

describe("a strainer above the water (orifice law: 2A√H/K to fill, DERIVED)", () => {
  const strength = 0.6 * (Math.PI / 4) * 0.04 ** 2 * Math.sqrt(2 * 9.80665);
  const reached = (2 * 12 * (Math.sqrt(0.9) - Math.sqrt(0.7))) / strength;

  it("pumps nothing until the water has come up to it, then holds it there", () => {
    const run = simulateFlood(highStrainer());
    const before = run.series.filter(({ at }) => at < reached);
    expect(before.length).toBeGreaterThan(5);
    for (const sample of before) expect(sample.pumped).toBe(0);
    const later = run.series.filter(({ at }) => at > reached);
    for (const sample of later) expect(sample.levels.hold).toBeCloseTo(0.5, 6);
    expect(Math.abs(run.volumeError)).toBeLessThan(1e-9);
  });

  it("does not hold up a flood that a pump too weak meets there: it goes on rising, slower", () => {
    const run = simulateFlood(highStrainer({ delivery: { kind: "steady", flow: 0.001 } }));
    expect(sampleAt(run, 3600).levels.hold).toBeGreaterThan(0.6);
    expect(run.events.some(({ kind }) => kind === "suction-wet")).toBe(true);
  });

  it("by the general integrator too", () => {
    const [exact, general] = [simulateFlood(highStrainer()), integrateFlood(highStrainer())];
    for (const [i, { levels }] of exact.series.entries())
      expect(general.series[i]!.levels.hold).toBeCloseTo(levels.hold!, 5);
  });

  it("takes nothing more once a lower strainer has drawn the water away beneath it", () => {
    const low = pump("low", { suctionHeight: 0, until: 1200, delivery: { kind: "steady", flow: 0.02 } });
    const upper = pump("kit", { suctionHeight: 0.25, until: 1e9, delivery: { kind: "steady", flow: 0.005 } });
    const run = simulateFlood({ ...highStrainer(), pumps: [upper, low] });
    const alone = run.series.filter(({ at, levels }) => at > 1200 && levels.hold! < 0.245);
    expect(alone.length).toBeGreaterThan(3);
    for (const sample of alone) expect(sample.pumped).toBe(0);
    for (const sample of alone) expect(sample.inflow).toBeGreaterThan(0);
  });

  it("leaves a box boat as she would be with no pump, so long as it is bare", () => {
    const none = boxBoat([]);
    const bare = boxBoat([pump("kit", { suctionHeight: 0.99, until: 1e9 })]);
    expect(none.outcome.kind).toBe("lost");
    expect(bare.outcome).toEqual(none.outcome);
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
