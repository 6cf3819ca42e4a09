import { isInputError } from "#base";
import { describe, expect, it } from "vitest";
import { ask, exampleOf, schemaOf } from "./ask.ts";

const NAMES = ["hydrostatics", "righting", "inflow", "flood", "sounding", "kits-needed"] as const;

function faultsOf(name: string, given: unknown): readonly { code: string; field: string }[] {
  try {
    ask(name, given);
  } catch (thrown) {
    if (isInputError(thrown)) return thrown.faults;
    throw thrown;
  }
  return [];
}

describe.each(NAMES)("question %s", (name) => {
  it("answers its own example with finite numbers, as its schema says", () => {
    const answer = ask(name, exampleOf(name));
    expect(JSON.stringify(answer)).not.toContain("null");
    expect(Object.keys(schemaOf(name).output)).toContain("properties");
  });

  it("refuses a field it does not know", () => {
    const given = { ...(exampleOf(name) as object), colour: "red" };
    expect(faultsOf(name, given).map((fault) => fault.code)).toContain("QU-103");
  });
});

describe("what is asked in one unit or another", () => {
  it("comes out the same", () => {
    const metric = ask("inflow", { opening: { kind: "hole", diameter: 0.0508 }, outsideLevel: 0.3048, insideLevel: 0 });
    expect(
      ask("inflow", { opening: { kind: "hole", diameter: "2 in" }, outsideLevel: "1 ft", insideLevel: 0 }),
    ).toEqual(metric);
  });
});

describe("a closed form through the door", () => {
  it("a fixed vessel fills in 2A√H/K (level for level, heads above a millimetre)", () => {
    const answer = ask("flood", {
      vessel: { outsideLevel: 1.5, compartments: [{ name: "hold", area: 12 }] },
      openings: [{ kind: "hole", diameter: 0.1 }],
      pumps: [],
      duration: 1800,
      marks: [{ compartment: "hold", level: 1.125 }],
    }) as { events: { kind: string; at: number }[]; volumeError: number };
    expect(answer.events.find((event) => event.kind === "mark")!.at).toBeCloseTo(704.2233293887588, 3);
    expect(Math.abs(answer.volumeError)).toBeLessThan(1e-9);
  });

  it("pumps, failures and patches at known times are events of the answer", () => {
    const answer = ask("flood", {
      vessel: { outsideLevel: 1, compartments: [{ area: 10 }] },
      openings: [{ name: "leak", kind: "hole", area: 0.002 }],
      pumps: [{ name: "kit", flow: "200 L/min", from: "2 min", runtime: "20 min", refuelling: "3 min" }],
      events: [
        { at: "10 min", kind: "patch", name: "leak", share: 0.5 },
        { at: "50 min", kind: "pump-fails", name: "kit" },
      ],
      duration: "1 h",
    }) as { events: { kind: string; at: number }[] };
    const seen = answer.events.map((event) => `${event.kind} ${event.at}`);
    for (const one of [
      "pump-started 120",
      "opening-patched 600",
      "refuel 1320",
      "pump-started 1500",
      "pump-failed 3000",
    ]) {
      expect(seen).toContain(one);
    }
  });
});

describe("a boat without a stable lie (GM of a box = T/2 + B²/12T − KG, exact)", () => {
  const boat = { hull: { form: "box", length: 9, beam: 2.6, depth: 1.4, draught: 0.7 }, kg: 6 };
  const compartments = [{ name: "hold", from: 0, to: 3, permeability: 0.9, level: "20 cm" }];

  it("is lost at once, said with a caution and a first sample", () => {
    const given = { vessel: { ...boat, compartments }, openings: [], pumps: [], duration: "1 h" };
    const answer = ask("flood", given) as { series: unknown[]; outcome: object; cautions: string[] };
    expect(answer.outcome).toMatchObject({ kind: "lost", at: 0 });
    expect(answer.series).toHaveLength(1);
    expect(answer.cautions).toContain("no-stable-lie");
    expect(JSON.stringify(answer)).not.toContain("null");
  });
});

describe("soundings of a boat without a stable lie", () => {
  it("forecast nothing, and say why", () => {
    const hull = { form: "box", length: 9, beam: 2.6, depth: 1.4, draught: 0.7 };
    const compartments = [{ name: "hold", from: 0, to: 3, permeability: 0.9 }];
    const asked = (kg: number) => ({
      vessel: { hull, kg, compartments },
      readings: [
        { at: 0, level: "20 cm" },
        { at: "5 min", level: "24 cm" },
      ],
      pumping: [],
    });
    type Answer = {
      forecast: { fan: unknown[]; loss: object };
      warnings: { kind: string }[];
      cautions: string[];
      advice: unknown[];
    };
    const answer = ask("sounding", asked(6)) as Answer;
    expect(answer.forecast).toMatchObject({ fan: [], loss: { chance: 1, within: 0 } });
    expect(answer.advice).toEqual([]);
    expect(answer.warnings[0]).toMatchObject({ kind: "no-stable-lie" });
    expect(answer.cautions).toContain("no-stable-lie");
    const steady = ask("sounding", asked(0.6)) as Answer;
    expect(steady.forecast.fan.length).toBeGreaterThan(5);
    expect(steady.cautions).not.toContain("no-stable-lie");
  });
});

describe("what cannot be is refused, every fault at once", () => {
  it("a series of more samples than anyone reads, however short its step", () => {
    const week = { ...(exampleOf("flood") as object), duration: "7 d" };
    for (const step of ["1 s", 1e-9]) expect(faultsOf("flood", { ...week, step })).toMatchObject([{ field: "step" }]);
    expect(faultsOf("flood", { ...week, step: "0.9 min" })).toMatchObject([{ code: "QU-106", field: "step" }]);
    expect(faultsOf("flood", { ...(exampleOf("flood") as object), step: "1 s" })).toEqual([]);
  });

  it("bulkheads the wrong way round and an unknown compartment", () => {
    const faults = faultsOf("flood", {
      vessel: {
        hull: { form: "box", length: 9, beam: 2.6, depth: 1.4, draught: 0.7 },
        compartments: [{ name: "a", from: 5, to: 3 }],
      },
      openings: [{ kind: "hole", diameter: "5 cm", compartment: "b" }],
      pumps: [{ flow: 0.01, until: 5, from: 9 }],
      duration: "1 h",
    });
    expect(faults.map((fault) => fault.field)).toEqual(
      expect.arrayContaining(["vessel.compartments[0].to", "openings[0].compartment", "pumps[0].until"]),
    );
  });

  it.each([
    ["hydrostatics", { hull: { form: "box", length: 9, beam: 2.6, draught: 0 } }, "hull.draught"],
    ["hydrostatics", { hull: { form: "box", length: 9, beam: 2.6, depth: 1.4, draught: 0.7 }, draught: 3 }, "draught"],
    ["inflow", { opening: { kind: "hole" }, outsideLevel: 1, insideLevel: 0 }, "opening.diameter"],
    [
      "inflow",
      { opening: { kind: "slot", width: 1, sill: 1, top: 0.5 }, outsideLevel: 1, insideLevel: 0 },
      "opening.top",
    ],
    ["sounding", { readings: [{ at: 0, level: 1 }], pumping: [] }, "compartment"],
    [
      "sounding",
      {
        compartment: { area: 9 },
        readings: [
          { at: 9, level: 1 },
          { at: 3, level: 1 },
        ],
        pumping: [],
      },
      "readings[1].at",
    ],
    ["kits-needed", { length: 1, boat: "motor boat", distance: 0 }, "length"],
  ])("%s: %j", (name, given, field) => {
    expect(faultsOf(name, given).map((fault) => fault.field)).toContain(field);
  });
});
