import { InputError, isInputError, type Fault } from "#base";
import { describe, expect, it } from "vitest";
import { loadPattern } from "./load-pattern.ts";
import { changedText, SOUND_TEXT } from "../test-sound-pattern.ts";

const FILE = "sound.yaml";

function faultsOf(text: string): readonly Fault[] {
  try {
    loadPattern(text, FILE);
  } catch (thrown) {
    if (isInputError(thrown)) return thrown.faults;
    throw thrown;
  }
  return [];
}

describe("a sound pattern file", () => {
  const pattern = loadPattern(SOUND_TEXT, FILE);

  it("becomes SI", () => {
    expect(pattern.container.mass).toBe(20);
    expect(pattern.hydraulics?.suction?.length).toBeCloseTo(4.572, 12);
    expect(pattern.hydraulics?.suction?.bore).toBeCloseTo(0.0508, 12);
    expect(pattern.hydraulics?.pump.curve[1]?.flow).toBeCloseTo(0.005, 12);
    expect(pattern.engine?.burn[1]?.burn).toBeCloseTo(1.5e-3 / 3600, 15);
  });

  it("keeps spans as calendar time", () => {
    expect(pattern.policy).toEqual({ proofRun: { months: 12 }, muster: { days: 30 } });
    expect(pattern.items[1]?.life).toEqual({ kind: "fitted", span: { months: 24 } });
  });

  it("brings modes and checks out from under their items", () => {
    expect(pattern.modes.map((mode) => `${mode.item}/${mode.id}`)).toContain("gasket/gasket-thin");
    expect(pattern.checks.find((check) => check.id === "gasket-thickness")).toMatchObject({
      item: "gasket",
      atLeast: 0.003,
      atMost: 0.005,
      unit: "mm",
    });
  });

  it("puts a part where the item it is fixed to lives", () => {
    expect(pattern.items[1]).toMatchObject({ partOf: "pump", place: "inside" });
  });

  it("numbers the steps through all stages", () => {
    const lines = pattern.stages.flatMap((stage) => stage.steps.map((step) => step.line));
    expect(lines).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
  });

  it("fills in what need not be said", () => {
    expect(pattern.items[0]).toMatchObject({ quantity: 1, life: { kind: "none" }, lapse: "notes", extendable: false });
    expect(pattern.stages[0]?.steps[0]).toMatchObject({ needs: { people: 1, minutes: 1, tools: [] }, optional: false });
  });
});

describe("each kind of fault", () => {
  it.each<[string, string, Partial<Fault>]>([
    ["a broken file", "id: [sound\nname: x", { code: "KI-101", field: "sound.yaml:2:1" }],
    ["two documents", `${SOUND_TEXT}\n---\nid: other\n`, { code: "KI-101" }],
    ["a key given twice", `${SOUND_TEXT}\nid: again\n`, { code: "KI-101" }],
    ["an unknown alias", "id: *nowhere\n", { code: "KI-101" }],
    ["a file too long", `# ${"x".repeat(600_000)}`, { code: "KI-100", field: FILE }],
    ["an unknown field", changedText([["items", 0, "colour"], "red"]), { code: "KI-102", got: '"colour"' }],
    ["a missing field", changedText([["name"], undefined]), { code: "KI-103", got: "nothing", remedy: "Add `name`." }],
    ["a word not allowed", changedText([["items", 0, "lapse"], "stops"]), { code: "KI-104", got: '"stops"' }],
    ["a kind of check not known", changedText([["items", 0, "checks", 0, "kind"], "guess"]), { code: "KI-104" }],
    ["a number without unit", changedText([["container", "mass"], 20]), { code: "KI-104", got: "20" }],
    ["an unknown unit", changedText([["container", "mass"], "20 stone"]), { code: "KI-105", got: '"20 stone"' }],
    ["an unknown unit of a check", changedText([["items", 1, "checks", 0, "unit"], "furlong"]), { code: "KI-105" }],
    ["a limit in the wrong unit", changedText([["items", 1, "checks", 0, "atMost"], "5 kg"]), { code: "KI-105" }],
    ["a span not understood", changedText([["policy", "muster"], "soon"]), { code: "KI-106", got: '"soon"' }],
    ["a span of nothing", changedText([["items", 1, "life"], "0 months"]), { code: "KI-106" }],
    ["a mode that is not there", changedText([["items", 0, "checks", 0, "finds", 0], "no-mode"]), { code: "KI-107" }],
    ["a check that is not there", changedText([["stages", 0, "steps", 0, "checks", 0], "no-c"]), { code: "KI-107" }],
    ["an item that is not there", changedText([["stages", 6, "steps", 0, "stows", 0], "no-item"]), { code: "KI-107" }],
    ["a place that is not there", changedText([["items", 0, "place"], "nowhere"]), { code: "KI-107" }],
    [
      "a caution that is not there",
      changedText([["stages", 0, "steps", 1, "cautions", 0], "beware"]),
      { code: "KI-107" },
    ],
    ["an id given twice", changedText([["items", 2, "id"], "pump"]), { code: "KI-108", got: '"pump"' }],
    ["a number outside its limits", changedText([["version"], 0]), { code: "KI-109", got: "0" }],
    [
      "neither roughness",
      changedText([["hydraulics", "suction", "roughness"], undefined]),
      { code: "KI-110", got: "neither" },
    ],
    [
      "both roughnesses",
      changedText([["hydraulics", "suction", "hazenWilliams"], 140]),
      { code: "KI-110", got: "both" },
    ],
    ["an item nowhere", changedText([["items", 0, "place"], undefined]), { code: "KI-110", got: "neither" }],
    ["a part of itself", changedText([["items", 0, "partOf"], "gasket"]), { code: "KI-110", got: "a circle" }],
  ])("%s", (_, text, expected) => {
    expect(faultsOf(text)).toContainEqual(expect.objectContaining(expected));
  });

  it("a list where the pattern should be", () => {
    expect(faultsOf("- one\n- two\n")).toContainEqual(expect.objectContaining({ code: "KI-104" }));
  });

  it("nothing at all", () => {
    expect(faultsOf("")).toContainEqual(expect.objectContaining({ field: expect.stringContaining("sound.yaml:1:1") }));
  });
});

describe("the faults of a file", () => {
  it("say file, line and column of the field", () => {
    const line = SOUND_TEXT.split("\n").findIndex((text) => text.includes("mass: 20 kg")) + 1;
    const [fault] = faultsOf(SOUND_TEXT.replace("mass: 20 kg", "mass: 20 stone"));
    expect(fault?.field).toBe(`sound.yaml:${line}:3 container.mass`);
    expect(fault?.allowed).toContain("kg");
  });

  it("come all at once, whatever their kind", () => {
    const text = changedText(
      [["container", "mass"], "20 stone"],
      [["items", 0, "colour"], "red"],
      [["items", 0, "place"], "nowhere"],
      [["items", 2, "id"], "pump"],
    );
    expect(new Set(faultsOf(text).map((fault) => fault.code))).toEqual(
      new Set(["KI-105", "KI-102", "KI-107", "KI-108"]),
    );
  });

  it("tell where the first of two like ids stands", () => {
    const line = SOUND_TEXT.split("\n").findIndex((text) => text.includes("- id: pump")) + 1;
    const [fault] = faultsOf(SOUND_TEXT.replace("- id: cells", "- id: pump"));
    expect(fault?.remedy).toContain(`line ${line} `);
  });

  it("know text torn apart by a comma inside braces", () => {
    const text = SOUND_TEXT.replace("name: Pump dead,", "name: Pump dead, or nearly,");
    expect(faultsOf(text)[0]?.remedy).toContain("quotes");
  });

  it("are an InputError that prints them one to a line", () => {
    expect(() => loadPattern(changedText([["name"], undefined]), FILE)).toThrow(InputError);
    expect(() => loadPattern(changedText([["name"], undefined]), FILE)).toThrow(
      /KI-103 sound\.yaml:\d+:\d+ name: got nothing/,
    );
  });
});
