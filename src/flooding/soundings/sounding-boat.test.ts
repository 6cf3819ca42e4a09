import { describe, expect, it } from "vitest";
import {
  followLevel,
  lieWithWater,
  likelyCompartment,
  likelyHull,
  planSteps,
  simulateFlood,
  spaceOf,
  strengthOf,
  type FloatingVessel,
} from "../index.ts";
import { riseWith, volumeAt } from "./sounding-space.ts";

function boatWith(part: "aft" | "middle" | "forward", level?: number): FloatingVessel {
  const hull = likelyHull({ kind: "motor boat", length: 10 });
  const space = likelyCompartment({ name: "space", sort: "cabin", part }, hull.length);
  return { kind: "floating", hull, kg: 0.7, compartments: [{ ...space, ...(level !== undefined && { level }) }] };
}

describe.each(["aft", "middle", "forward"] as const)("the space of a rounded boat, %s", (part) => {
  const space = spaceOf(boatWith(part), "space");

  it("has water inside and out where the boat comes to rest with that water in her", () => {
    const { from, to } = boatWith(part).compartments[0]!;
    const middle = (from + to) / 20;
    for (const water of [0.2, 0.8, 1.6]) {
      const boat = boatWith(part);
      const lying = lieWithWater({ ...boat, compartments: [{ ...boat.compartments[0]!, water }] });
      if (lying.kind !== "afloat") throw new Error(lying.because);
      const inside = (lying.inside[0]!.aft + lying.inside[0]!.forward) / 2;
      const outside = lying.aft + middle * (lying.forward - lying.aft);
      expect(volumeAt(space, inside)).toBeCloseTo(water, 3);
      expect(Math.abs(space.outside + riseWith(space, water) - outside)).toBeLessThan(2e-3);
    }
  });

  it("floods as the full simulation has it, trim and all: within 3 mm", () => {
    const area = 0.0015;
    const run = simulateFlood({
      vessel: boatWith(part, 0.2),
      openings: [{ name: "hole", into: "space", opening: { kind: "hole", area, height: 0.1 } }],
      pumps: [],
      duration: 2400,
      step: 600,
    });
    const levels = new Float64Array(5).fill(run.series[0]!.levels.space!);
    const strength = strengthOf({ kind: "hole", area, height: 0.1 });
    const casualty = Float64Array.of(strength, 1, 1, 0.1, 0.2, space.outside);
    followLevel(space, casualty, planSteps([0, 600, 1200, 1800, 2400], [], 10), levels[0]!, levels);
    const kept = run.series.filter(({ at }) => at % 600 === 0);
    expect(kept.length).toBeGreaterThan(2);
    for (const { at, levels: there } of kept) expect(Math.abs(levels[at / 600]! - there.space!)).toBeLessThan(3e-3);
  });
});

describe("the level at which a boat is lost", () => {
  it("is where the low end's deck edge goes under, sooner than in the middle", () => {
    const [aft, middle] = (["aft", "middle"] as const).map((part) => spaceOf(boatWith(part), "space").lossLevel!);
    expect(aft!).toBeLessThan(middle!);
  });
});
