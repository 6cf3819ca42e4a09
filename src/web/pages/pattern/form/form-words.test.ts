import { patternForm, type FormField } from "#kit";
import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { sayCounts, sayEntry, sayField, sayLint, sayOne, sayPlace, sayUse, sayWhat } from "./form-words.ts";

const words = {
  form: await fetchWords("en", "patternForm"),
  fields: await fetchWords("en", "patternFields"),
  entries: await fetchWords("en", "patternEntries"),
};

const fault = (more: object) =>
  ({ rule: "vague", where: "step a", what: "", remedy: "", weight: "note", path: [], ...more }) as Parameters<
    typeof sayPlace
  >[1];

describe("words of the form", () => {
  it("calls fields and entries as a person would", () => {
    expect([
      sayField("lapseLimit", words),
      sayField("ask", words),
      sayOne("modes", words),
      sayOne("items", words),
    ]).toEqual(["Lapse limit", "What to do", "a mode", "an item"]);
    expect(sayEntry({ items: [{ id: "hose", name: "" }, {}] }, ["items", 0], words)).toBe("hose");
    expect(sayEntry({ items: [{}, {}] }, ["items", 1], words)).toBe("Number 2");
  });

  it("says where a fault is, and how many there are", () => {
    const value = { items: [{ id: "hose", name: "Hose" }] };
    expect(sayPlace(value, fault({ path: ["items", 0, "life"] }), words)).toBe("Hose: life");
    expect(sayPlace(value, fault({ path: ["items", 0] }), words)).toBe("Item: Hose");
    expect(sayPlace(value, fault({ path: ["items", 0, "life", "lapse"] }), words)).toBe(
      "Hose: life: when its life ends",
    );
    expect(sayPlace(value, fault({ path: ["container", "mass"] }), words)).toBe("Container: mass");
    expect(sayPlace(value, fault({ path: ["hydraulics", "pump", "greatestLift"] }), words)).toBe(
      "Pump and hoses: pump: greatest lift",
    );
    expect(sayPlace(value, fault({}), words)).toBe("Step a");
    expect(sayPlace(value, fault({ where: "container.mass over container.lifters" }), words)).toBe(
      "Container: mass over container: lifters",
    );
    expect(sayCounts([fault({ weight: "error" }), fault({})], words)).toBe("1 error, no warnings, 1 note");
  });

  it("says where in the steps a fault is by stage and line, as the card numbers it", () => {
    const stages = [
      { name: "Open", steps: [{ text: "Cut the seal." }, { text: "Wait." }] },
      { name: "Rig", steps: [{ text: "Couple the hose.", checks: ["hose-look"] }] },
    ];
    const at = (path: readonly (string | number)[]) => sayPlace({ stages }, fault({ path }), words);
    expect(at(["stages", 1, "steps", 0, "checks"])).toBe("Rig, line 3: checks");
    expect(at(["stages", 1, "steps", 0, "checks", 0])).toBe("Rig, line 3: checks: number 1");
    expect(at(["stages", 1, "steps", 0])).toBe("Rig, line 3: Couple the hose.");
    expect(at(["stages", 1])).toBe("Stage: Rig");
  });

  it("calls fields in what the lint says by their labels, and what is not written by no code", () => {
    expect(sayLint("Name it in the `finds` of a check that a step asks.", words)).toBe(
      "Name it in the “Modes it can find” of a check that a step asks.",
    );
    const empty = fault({ rule: "loads", what: 'KI-105: got ""; ...', given: { got: '""', allowed: "a mass" } });
    expect(sayWhat(empty, words)).toBe("Nothing is written here yet. Allowed: a mass.");
    const wrong = fault({ rule: "loads", what: "KI-105: ...", given: { got: '"heavy"', allowed: "a mass" } });
    expect(sayWhat(wrong, words)).toBe('Written is "heavy". Allowed: a mass.');
    expect(sayWhat(fault({ what: "Say its `ask`." }), words)).toBe("Say its “What to do”.");
  });

  it("says what points at a thing by where it stands in the form", () => {
    const value = { afterUse: { counted: [{ item: "pump", missing: "pump-dead" }] } };
    expect(sayUse(value, { path: ["afterUse", "counted", 0, "missing"] }, words)).toBe("After use: pump: missing");
  });

  it("has a name in the catalogue for every field that a pattern may have, and for an entry of every list", () => {
    const { fields, lists } = namesIn(patternForm());
    expect(fields.filter((name) => !Object.hasOwn(words.fields, name))).toEqual([]);
    expect(lists.filter((name) => !Object.hasOwn(words.entries, name))).toEqual([]);
  });
});

interface Names {
  readonly fields: readonly string[];
  readonly lists: readonly string[];
}

/** Names of all fields under one, and of those of them that are lists. */
function namesIn(field: FormField, name = ""): Names {
  if (field.kind === "block") return joined(field.fields.map((one) => underName(one.name, one.field)));
  if (field.kind === "choice") return joined(field.of.map((one) => namesIn(one, name)));
  if (field.kind !== "list" && field.kind !== "by-word") return { fields: [], lists: [] };
  const under = namesIn(field.of, name);
  return { ...under, lists: [name, ...under.lists] };
}

function underName(name: string, field: FormField): Names {
  const under = namesIn(field, name);
  return { ...under, fields: [name, ...under.fields] };
}

function joined(names: readonly Names[]): Names {
  return { fields: names.flatMap(({ fields }) => fields), lists: names.flatMap(({ lists }) => lists) };
}
