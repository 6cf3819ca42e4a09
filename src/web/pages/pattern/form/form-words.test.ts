import { describe, expect, it } from "vitest";
import { sayCounts, sayEntry, sayField, sayOne, sayPlace } from "./form-words.ts";

const fault = (more: object) =>
  ({ rule: "vague", where: "step a", what: "", remedy: "", weight: "note", path: [], ...more }) as Parameters<
    typeof sayPlace
  >[1];

describe("words of the form", () => {
  it("calls fields and entries as a person would", () => {
    expect([sayField("lapseLimit"), sayField("ask"), sayOne("modes"), sayOne("items")]).toEqual([
      "Lapse limit",
      "What to do",
      "a mode",
      "an item",
    ]);
    expect(sayEntry({ items: [{ id: "hose", name: "" }, {}] }, ["items", 0])).toBe("hose");
    expect(sayEntry({ items: [{}, {}] }, ["items", 1])).toBe("Number 2");
  });

  it("says where a fault is, and how many there are", () => {
    const value = { items: [{ id: "hose", name: "Hose" }] };
    expect(sayPlace(value, fault({ path: ["items", 0, "life"] }))).toBe("Hose: life");
    expect(sayPlace(value, fault({ path: ["items", 0] }))).toBe("Item: Hose");
    expect(sayPlace(value, fault({ path: ["items", 0, "life", "lapse"] }))).toBe("Hose: life: when its life ends");
    expect(sayPlace(value, fault({ path: ["container", "mass"] }))).toBe("Container: mass");
    expect(sayPlace(value, fault({ path: ["hydraulics", "pump", "greatestLift"] }))).toBe(
      "Pump and hoses: pump: greatest lift",
    );
    expect(sayPlace(value, fault({}))).toBe("Step a");
    expect(sayPlace(value, fault({ where: "container.mass over container.lifters" }))).toBe(
      "Container: mass over container: lifters",
    );
    expect(sayCounts([fault({ weight: "error" }), fault({})])).toBe("1 error, no warnings, 1 note");
  });
});
