import { fetchWords } from "#words";
import type { KitState, Standing } from "#readiness";
import { describe, expect, it } from "vitest";
import { kitChoices } from "./kit-choices.ts";

const messages = await fetchWords("en", "sheetPumps");

const kit = (id: string, more: object = {}) =>
  ({ id, name: `Pump ${id}`, pattern: "small@1", custody: { kind: "home" }, ...more }) as unknown as KitState;
const standing = (kind: Standing["standing"]) => ({ standing: kind }) as Standing;

const HER = { id: "c1", name: "Grey boat", opened: { at: "2027-03-14T10:00:00Z" } as never };
const VIEW = {
  me: { role: "crew" as const },
  kits: [
    kit("10"),
    kit("2"),
    kit("3"),
    kit("4", { custody: { kind: "away", at: "2027-03-14T10:05:00Z", to: "Motor boat Grey Boat, north" } }),
    kit("5", { custody: { kind: "away", at: "2027-03-14T10:05:00Z", to: "elsewhere" } }),
    kit("6", { turnaround: {} }),
    kit("7", { pattern: "large@2" }),
  ],
  standings: new Map([
    ["10", standing("ready")],
    ["2", standing("ready")],
    ["3", standing("grounded")],
    ["7", standing("ready-with-limits")],
  ]),
};

describe("kits to put on her", () => {
  it("are those on her already, then the ready ones by number, then those with limits, then the grounded", () => {
    expect(kitChoices(VIEW, { ...HER, pumps: [] }, messages).map(({ words }) => words)).toEqual([
      "Pump 4, on her",
      "Pump 2",
      "Pump 10",
      "Pump 7, ready with limits",
      "Pump 3, grounded",
    ]);
  });

  it("are those on her alone for a role that may hand none over: SN-103", () => {
    const view = { ...VIEW, me: { role: "commander" as const } };
    expect(kitChoices(view, { ...HER, pumps: [] }, messages).map(({ words }) => words)).toEqual(["Pump 4, on her"]);
  });

  it("are never one that pumps on her, lies open, or is with another vessel", () => {
    const pumps = [{ kit: "2" }] as never;
    const ids = kitChoices(VIEW, { ...HER, pumps }, messages).map(({ id }) => id);
    expect(ids).not.toContain("2");
    expect(ids).not.toContain("5");
    expect(ids).not.toContain("6");
  });
});
