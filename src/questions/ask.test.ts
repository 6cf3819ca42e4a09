import { describe, expect, it } from "vitest";
import { InputError } from "#base";
import { ask, exampleOf, questionNamed, questionNames, schemaOf } from "./ask.ts";

const HOSE = { bore: "65 mm", length: "20 m", roughness: "0.1 mm" };

describe("every question", () => {
  it("ASK-1 is there under the names scripts rely on", () => {
    const fixed = [
      "air",
      "delivery",
      "delivery-curve",
      "delivery-table",
      "due",
      "failure-rate",
      "fault",
      "flood",
      "found-by-check",
      "fuel",
      "hose-loss",
      "hydrostatics",
      "inflow",
      "interval",
      "kits-needed",
      "lifetimes",
      "on-scene",
      "plan-year",
      "prime",
      "proof-run",
      "righting",
      "sounding",
      "spares",
      "standby",
      "start-chance",
      "symptoms",
      "trend",
      "vacuum-test",
      "water",
    ];
    expect([...questionNames()].sort()).toEqual(fixed);
    expect(new Set(questionNames()).size).toBe(questionNames().length);
  });

  it.each(questionNames())("%s answers its own example as its output schema says", (name) => {
    const answer = ask(name, exampleOf(name));
    expect(questionNamed(name)!.output.safeParse(answer)).toMatchObject({ success: true });
  });

  it.each(questionNames())("%s has a JSON Schema in and out, with every field described or further divided", (name) => {
    const { input, output } = schemaOf(name);
    expect(JSON.stringify(input)).toContain('"properties"');
    expect(JSON.stringify(output)).toContain('"properties"');
  });

  it("tells a few faults of very many, in few words", () => {
    const many = Object.fromEntries(Array.from({ length: 20_000 }, (_, at) => [`field${at}`, 1]));
    const faults = faultsOf(() => ask("water", { ...(exampleOf("water") as object), ...many }));
    expect(faults).toHaveLength(50);
    const long = faultsOf(() => ask("water", { ...(exampleOf("water") as object), ["x".repeat(200_000)]: 1 }));
    expect(JSON.stringify(long).length).toBeLessThan(1000);
  });

  it.each(questionNames())("%s refuses an unknown field and lists the ones it knows", (name) => {
    const faults = faultsOf(() => ask(name, { ...(exampleOf(name) as object), nonsense: 1 }));
    expect(faults.map((fault) => fault.field)).toContain("nonsense");
    expect(faults.find((fault) => fault.field === "nonsense")!.allowed.length).toBeGreaterThan(3);
  });

  it("ASK-2 that is not there is refused with the list of those that are", () => {
    const [fault] = faultsOf(() => ask("watr", {}));
    expect(fault).toMatchObject({ code: "QU-100", field: "name" });
    expect(fault!.allowed).toContain("water");
  });
});

describe("faults", () => {
  it("ASK-3 are collected, each with its path as people write it", () => {
    const faults = faultsOf(() =>
      ask("delivery", {
        pump: { curve: [{ flow: "0 L/min", head: "x" }, { flow: 1 }] },
        suction: { lift: "8 lbs", bore: true },
        discharge: { ...HOSE, rise: 1, hight: 2 },
        throtle: 1,
      }),
    );
    expect(faults.map((fault) => `${fault.code} ${fault.field}`).toSorted()).toEqual([
      "BA-101 pump.curve[0].head",
      "BA-102 suction.lift",
      "QU-101 pump.curve[1].head",
      "QU-102 suction.bore",
      "QU-103 discharge.hight",
      "QU-103 throtle",
    ]);
    expect(faults.find((fault) => fault.field === "throtle")!.remedy).toBe('Did you mean "throttle"?');
  });

  it("ASK-4 name limits, with their unit", () => {
    const [fault] = faultsOf(() => ask("water", { temperature: "15 °C", salinity: 99 }));
    expect(fault).toMatchObject({ code: "QU-104", field: "salinity", allowed: "at least 0, at most 42 g/kg" });
  });

  it("name a limit that is itself not allowed, the nearer of two limits, and what must be whole", () => {
    const part = { name: "gasket", perYear: 2, leadTime: "20 days", stock: 1 };
    expect(saidOf("spares", { items: [{ ...part, cost: 0 }], target: 0.9, budget: 10 })).toEqual([
      "more than 0 Give more than 0.",
    ]);
    expect(saidOf("start-chance", { failures: 1, trials: 1e308 })).toEqual(["at most 1000000 Give at most 1000000."]);
    expect(saidOf("start-chance", { failures: 1.5, trials: 3 })[0]).toContain("Give a whole number.");
  });

  it("name the words allowed, and counts", () => {
    const curve = [{ flow: 0.01, head: 10 }];
    const rest = { suction: { ...HOSE, lift: 1 }, discharge: { ...HOSE, rise: 1 } };
    expect(faultsOf(() => ask("delivery", { ...rest, pump: { curve, drive: "steam" } }))[0]).toMatchObject({
      code: "QU-105",
      allowed: '"engine", "electric"',
    });
    expect(faultsOf(() => ask("delivery", { ...rest, pump: { curve: [] } }))[0]).toMatchObject({
      code: "QU-104",
      field: "pump.curve",
    });
  });

  it("tell the angles allowed in degrees: nobody on a boat reads radians", () => {
    const boat = { boat: { kind: "motor boat", length: 10 }, spaces: [{ name: "hold", sort: "hold", part: "aft" }] };
    const asked = { ...boat, readings: [], pumping: [], now: 0, list: "90 deg" };
    expect(faultsOf(() => ask("on-scene", asked))[0]).toMatchObject({
      code: "QU-104",
      field: "list",
      allowed: "at least -1.4, at most 1.4 rad (at least -80, at most 80°)",
    });
  });

  it("say what is missing from something that is not an object at all", () => {
    expect(faultsOf(() => ask("air", 5))[0]).toMatchObject({ code: "QU-102", field: "input" });
    expect(faultsOf(() => ask("air", undefined))[0]!.code).toBe("QU-101");
  });
});

function faultsOf(act: () => unknown) {
  try {
    act();
  } catch (thrown) {
    if (thrown instanceof InputError) return thrown.faults;
    throw thrown;
  }
  return [];
}

function saidOf(question: string, given: object): readonly string[] {
  return faultsOf(() => ask(question, given)).map((one) => `${one.allowed} ${one.remedy}`);
}
