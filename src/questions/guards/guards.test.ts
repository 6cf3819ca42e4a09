import { describe, expect, it } from "vitest";
import { ask } from "../ask.ts";
import { AREA, faultsOf, HOLD, HULL, kits, READINGS, sheet } from "./test-given.ts";

const CABIN = { name: "cabin", from: "4 m", to: "8 m", permeability: 0.95 };
const LEAK = { name: "leak", kind: "hole", diameter: "40 mm", compartment: "hold" };

function flood(more: Record<string, unknown> = {}, vessel: Record<string, unknown> = {}): readonly string[] {
  const boat = { hull: HULL, kg: "0.6 m", compartments: [HOLD, CABIN], ...vessel };
  return faultsOf("flood", { vessel: boat, openings: [LEAK], pumps: [], duration: "10 min", ...more });
}
const spaces = (...compartments: object[]) => flood({ openings: [] }, { compartments });

const held = (space: object) =>
  faultsOf("flood", { vessel: { outsideLevel: 1, compartments: [space] }, openings: [], pumps: [], duration: 60 });

describe("spaces of a boat that floods", () => {
  it("are taken where they touch, stand one on another or lie side by side", () => {
    expect(spaces(HOLD, CABIN)).toEqual([]);
    expect(spaces({ ...HOLD, top: "0.3 m" }, { ...HOLD, name: "over", floor: "0.3 m" })).toEqual([]);
    expect(spaces({ ...HOLD, sideTo: 0 }, { ...HOLD, name: "starboard", sideFrom: 0 })).toEqual([]);
  });

  it.each([
    ["overlap", [HOLD, { ...CABIN, from: "3.9 m" }], ["QU-151 vessel.compartments[1]"]],
    ["have one name twice", [HOLD, { ...CABIN, name: "hold" }], ["QU-150 vessel.compartments[1].name"]],
    ["lie outside the shell to port", [{ ...HOLD, sideFrom: -4, sideTo: -2 }], ["QU-152 vessel.compartments[0]"]],
    ["lie outside the shell to starboard", [{ ...HOLD, sideFrom: "1.4 m" }], ["QU-152 vessel.compartments[0]"]],
    ["begin above the deck", [{ ...HOLD, floor: "1.5 m" }], ["QU-152 vessel.compartments[0]"]],
    ["are told more water than they hold", [{ ...HOLD, water: "9.9 m³" }], ["QU-153 vessel.compartments[0].water"]],
    ["are told water above the deck", [{ ...HOLD, level: "1.5 m" }], ["QU-153 vessel.compartments[0].level"]],
    ["are told level and volume", [{ ...HOLD, level: 0.1, water: 0.1 }], ["QU-153 vessel.compartments[0].water"]],
  ])("are refused where they %s", (_, compartments, faults) => {
    expect(spaces(...compartments)).toEqual(faults);
  });

  it("hold what a box of their size holds, to the last litre (l·b·D·μ = 3 × 2.6 × 1.4 × 0.9 m³, exact)", () => {
    expect(spaces({ ...HOLD, water: 9.828 })).toEqual([]);
    expect(spaces({ ...HOLD, water: 9.829 })).toEqual(["QU-153 vessel.compartments[0].water"]);
  });

  it("are held to the same in a vessel held in place", () => {
    expect(held({ area: 10, top: 1, water: 10 })).toEqual([]);
    expect(held({ area: 10, top: 1, water: 11 })).toEqual(["QU-153 vessel.compartments[0].water"]);
    expect(held({ area: 10, top: 1, level: 1.1 })).toEqual(["QU-153 vessel.compartments[0].level"]);
    expect(held({ area: 10, level: 1.1 })).toEqual([]);
  });
});

describe("openings and strainers lie in their space and in the boat", () => {
  it.each([
    [{ x: "5 m" }, "openings[0].x"],
    [{ y: "1.4 m" }, "openings[0].y"],
    [{ height: "1.5 m" }, "openings[0].height"],
    [{ diameter: "3 m" }, "openings[0].diameter"],
  ])("an opening with %j is refused", (more, field) => {
    expect(flood({ openings: [{ ...LEAK, ...more }] })).toEqual([`QU-154 ${field}`]);
  });

  it("a slot, a sill and a floor are looked at too; a pipe may run to its space from anywhere in the boat", () => {
    const slot = { kind: "slot", width: "10 cm", sill: "1.5 m", top: "1.6 m" };
    expect(flood({ openings: [slot] })).toEqual(["QU-154 openings[0].sill"]);
    const hatch = { kind: "deck-edge", width: "1 m", sill: "1.7 m" };
    expect(flood({ openings: [hatch] })).toEqual([]);
    expect(flood({ openings: [{ ...hatch, sill: "9 m" }] })).toEqual(["QU-154 openings[0].sill"]);
    const pipe = { kind: "pipe", bore: "40 mm", length: "4 m", compartment: "hold", x: "8 m" };
    expect(flood({ openings: [pipe] })).toEqual([]);
    expect(flood({ openings: [{ ...pipe, x: "10 m" }] })).toEqual(["QU-154 openings[0].x"]);
    const raised = { compartments: [{ ...HOLD, floor: "0.2 m" }] };
    expect(flood({}, raised)).toEqual([]);
    expect(flood({ openings: [{ ...LEAK, height: "0.1 m" }] }, raised)).toEqual(["QU-154 openings[0].height"]);
  });

  it("a door lies in either of its two spaces", () => {
    const door = { kind: "slot", width: "60 cm", sill: "0.3 m", top: "1.2 m", from: "hold", compartment: "cabin" };
    expect(flood({ openings: [{ ...door, x: "4 m" }] })).toEqual([]);
    expect(flood({ openings: [{ ...door, x: "0.5 m" }] })).toEqual(["QU-154 openings[0].x"]);
  });

  it("a strainer above the deck or below the floor is refused", () => {
    const pump = { flow: "200 L/min", compartment: "hold" };
    expect(flood({ pumps: [{ ...pump, suctionHeight: "0.5 m" }] })).toEqual([]);
    expect(flood({ pumps: [{ ...pump, suctionHeight: "1.5 m" }] })).toEqual(["QU-155 pumps[0].suctionHeight"]);
    const raised = { compartments: [{ ...HOLD, floor: "0.2 m" }] };
    expect(flood({ pumps: [{ ...pump, suctionHeight: "0.1 m" }] }, raised)).toEqual(["QU-155 pumps[0].suctionHeight"]);
  });

  it("one name stands for one pump, one opening", () => {
    const pump = { name: "kit", flow: "200 L/min" };
    expect(flood({ pumps: [pump, pump] })).toEqual(["QU-150 pumps[1].name"]);
    expect(flood({ openings: [LEAK, LEAK] })).toEqual(["QU-150 openings[1].name"]);
  });
});

const sounding = (more: object) =>
  faultsOf("sounding", { compartment: AREA, readings: READINGS, pumping: [], ...more });
const scene = (more: object) => faultsOf("on-scene", sheet(more));

describe("the same guards in every question: pumping that ends before it begins", () => {
  const backwards = { from: "12 min", to: "11 min", flow: "200 L/min" };

  it("in flood, sounding and on-scene, also of a further space", () => {
    expect(flood({ pumps: [{ flow: 0.003, from: "12 min", until: "11 min" }] })).toEqual(["QU-133 pumps[0].until"]);
    expect(sounding({ pumping: [backwards] })).toEqual(["QU-133 pumping[0].to"]);
    expect(scene({ pumping: [backwards] })).toEqual(["QU-133 pumping[0].to"]);
    const cabin = { name: "cabin", sort: "cabin", part: "middle", pumping: [backwards] };
    const spaces = [{ name: "engine room", sort: "engine-room", part: "aft" }, cabin];
    expect(scene({ spaces })).toEqual(["QU-133 spaces[1].pumping[0].to"]);
  });

  it("not where it is switched on and off in one instant", () => {
    expect(scene({ pumping: [{ ...backwards, to: "12 min" }] })).toEqual([]);
    expect(sounding({ pumping: [{ ...backwards, to: "12 min" }] })).toEqual([]);
  });
});

describe("the same guards in every question: times", () => {
  it("out of order, and after now", () => {
    const swapped = READINGS.toReversed();
    expect(sounding({ readings: swapped })).toContain("QU-140 readings[1].at");
    expect(scene({ readings: swapped })).toContain("QU-140 readings[1].at");
    expect(sounding({ options: { now: "12 min" } })).toEqual(["QU-143 readings[1].at"]);
    expect(scene({ now: "12 min" })).toEqual(["QU-143 readings[1].at"]);
  });

  it("on another clock: pumping that ended days before anything was read", () => {
    const readings = READINGS.map(({ level }, i) => ({ at: `${100 + i} h`, level }));
    expect(sounding({ readings, pumping: [{ from: 0, to: "5 min", flow: 0.003 }] })).toEqual(["QU-156 pumping[0].to"]);
  });
});

const high = (level: string) => [READINGS[0]!, { at: "40 min", level }];

const timed = (readings: object[], from: string, now: string) => ({
  compartment: AREA,
  readings,
  pumping: [{ from, flow: 0.002 }],
  options: { now },
});

describe("a time of day where an instant is asked", () => {
  const clock = [
    { at: "23:50", level: "0.50 m" },
    { at: "23:55", level: "0.53 m" },
    { at: "24:05", level: "0.58 m" },
  ];
  const counted = [0, 5, 15].map((minutes, i) => ({ at: `${minutes} min`, level: clock[i]!.level }));

  it("says the same as the minutes between, in sounding and on-scene, over midnight", () => {
    const byClock = ask("sounding", timed(clock, "23:55", "24:06")) as { holding: number; age: number };
    const byCount = ask("sounding", timed(counted, "5 min", "16 min")) as { holding: number; age: number };
    expect(byClock.holding).toBeCloseTo(byCount.holding, 9);
    expect(byClock.age).toBe(60);
    expect(scene({ readings: clock, now: "24:06" })).toEqual([]);
  });

  it("is not mixed with times counted from a start", () => {
    expect(sounding({ readings: clock, pumping: [{ from: "5 min", flow: 0.002 }] })).toEqual([
      "QU-160 pumping[0].from",
    ]);
    expect(sounding({ readings: counted, pumping: [{ from: "23:55", flow: 0.002 }] })).toContain(
      "QU-160 pumping[0].from",
    );
    expect(scene({ readings: clock, now: 0 })).toContain("QU-160 now");
  });

  it("is refused where it does not exist, and where a length of time is asked", () => {
    expect(sounding({ readings: [{ at: "25:70", level: "0.5 m" }] })).toEqual(["BA-106 readings[0].at"]);
    expect(flood({ duration: "14:05" })).toEqual(["BA-106 duration"]);
    expect(sounding({ options: { horizon: "1:30" } })).toEqual(["BA-106 options.horizon"]);
  });

  it("is told to count on where it comes before the one before", () => {
    const back = [...clock.slice(0, 2), { at: "00:05", level: "0.58 m" }];
    expect(sounding({ readings: back })).toEqual(["QU-140 readings[2].at"]);
  });
});

describe("a rate as people say it", () => {
  it("is the same as in metres a second", () => {
    const kits = { length: "10 m", boat: "motor boat", distance: "8 nmi" };
    const said = ["5 cm in 2 min", "2.5 cm/min", "5 cm per 2 min", "rising 5 cm in 2 min", "2.5 cm a minute"];
    const asked = said.map((rising) => ask("kits-needed", { ...kits, rising }));
    const si = ask("kits-needed", { ...kits, rising: 0.05 / 120 });
    for (const one of asked) expect(one).toEqual(si);
  });
});

describe("a level that falls, before launch", () => {
  it("is answered, as evidence of less water, however it is told; and said", () => {
    const untold = ask("kits-needed", kits({})) as { inflow: { p95: number } };
    const tellings = [
      { ago: "5 min", water: "60 cm" },
      { ago: 0, water: "50 cm" },
    ];
    for (const told of [{ rising: "-2 cm/min" }, { rising: -3e-4 }, { rising: "-5 cm in 2 min" }, { tellings }]) {
      const { inflow, assumptions } = ask("kits-needed", kits(told)) as {
        inflow: { p95: number };
        assumptions: readonly { what: string }[];
      };
      expect(inflow.p95).toBeLessThan(untold.inflow.p95);
      expect(assumptions.map(({ what }) => what).join(" ")).toContain("A level that falls was told");
    }
  });
});

describe("the same guards in every question: levels", () => {
  it("above her deck and the coaming on it", () => {
    expect(scene({ readings: high("9 m"), now: "1 h" })).toEqual(["QU-142 readings[1].level"]);
    const vessel = { hull: HULL, compartments: [HOLD] };
    expect(sounding({ compartment: undefined, vessel, readings: high("2.5 m") })).toEqual(["QU-142 readings[1].level"]);
    expect(faultsOf("kits-needed", kits({ waterInside: "6 m" }))).toEqual(["QU-142 waterInside"]);
  });

  it("above the sea, which no hole brings about", () => {
    expect(sounding({ readings: high("2.2 m") })).toContain("QU-157 readings[1].level");
    expect(sounding({ readings: high("1.3 m") })).toEqual([]);
  });

  it("a rise that no hole gives", () => {
    const leap = [READINGS[0]!, { at: "10 min 2 s", level: "1.4 m" }];
    expect(sounding({ readings: leap })).toEqual(["QU-159 readings[1].level"]);
    const rising = { holeDiameter: "20 mm", rising: "10 cm/min" };
    expect(faultsOf("kits-needed", kits(rising))).toEqual([]);
    expect(ask("kits-needed", kits(rising))).toMatchObject({ riseBeyondHole: true });
    expect(ask("kits-needed", kits({ ...rising, holeDiameter: "100 mm" }))).toMatchObject({ riseBeyondHole: false });
  });
});

describe("the same guards in every question: holes and spaces", () => {
  it("deeper or wider than the hull, longer than the boat", () => {
    expect(faultsOf("kits-needed", kits({ holeDepth: "5 m" }))).toEqual(["QU-158 holeDepth"]);
    expect(faultsOf("kits-needed", kits({ length: "3 m", holeDiameter: "1 m" }))).toEqual([]);
    expect(faultsOf("kits-needed", kits({ spaceLength: "11 m" }))).toEqual(["QU-141 spaceLength"]);
    expect(faultsOf("kits-needed", kits({ holeDepth: "1 m", spaceLength: "4 m", waterInside: "40 cm" }))).toEqual([]);
  });
});
