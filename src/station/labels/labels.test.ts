import type { KitState } from "#readiness";
import { describe, expect, it } from "vitest";
import { findShelf, findTyped, labelCode, LABEL_SHEETS, musterOrder, readLabel } from "./index.ts";

const named = (id: string, name: string, serial: string) => ({ id, name, serial }) as KitState;
const KITS = [named("k1", "Pump 1", "BR-P01"), named("k2", "Pump 2", "BR-P02"), named("k10", "Pump 10", "BR-P10")];

describe("the code of a label", () => {
  it("is read back as what it stands for, and as nothing where it is another's", () => {
    for (const of of [{ kind: "kit", kit: "br-01" } as const, { kind: "shelf", place: "north", shelf: "a" } as const]) {
      expect(readLabel(labelCode(of))).toEqual(of);
    }
    for (const text of ["", "https://example.org", "drykeel:kit:", "drykeel:kit:a b", "drykeel:shelf:north"]) {
      expect(readLabel(text)).toBeUndefined();
    }
  });

  it("holds the id of the kit and nothing that lapses: no name, no seal, no address", () => {
    expect(labelCode({ kind: "kit", kit: "k1" })).toBe("drykeel:kit:k1");
  });
});

describe("a kit by what is typed", () => {
  it("is found by serial or name, whatever the case, blanks and dashes", () => {
    expect(findTyped(KITS, " br p02")?.id).toBe("k2");
    expect(findTyped(KITS, "PUMP 10")?.id).toBe("k10");
    expect(findTyped(KITS, "pump")).toBeUndefined();
    expect(findTyped([...KITS, named("k9", "Pump 1", "X")], "Pump 1")).toBeUndefined();
  });
});

const shelf = (id: string, name: string) => ({ id, name, kits: [] });
describe("a shelf by what is typed", () => {
  const PLACES = [
    { id: "north", name: "North shed", shelves: [shelf("a", "Left wall"), shelf("b", "Floor")] },
    { id: "south", name: "South shed", shelves: [shelf("c", "Floor")] },
    { id: "quay", name: "Quay", shelves: [] },
  ];

  it("is found by its name, with its place's where two places have one of that name", () => {
    expect(findShelf(PLACES, "left-wall")).toEqual({ place: "north", shelf: "a" });
    expect(findShelf(PLACES, "Floor")).toBeUndefined();
    expect(findShelf(PLACES, "South shed, floor")).toEqual({ place: "south", shelf: "c" });
    expect(findShelf(PLACES, "floor south shed")).toEqual({ place: "south", shelf: "c" });
    expect(findShelf(PLACES, " ")).toBeUndefined();
  });
});

describe("the order of a muster", () => {
  it("goes shelf by shelf, then by name; a kit that left the place is left out", () => {
    const shelves = [{ id: "a", name: "Left", kits: ["k10", "gone"] }];
    expect(musterOrder(KITS, { shelves }).map(({ kit, shelf }) => [kit.id, shelf?.name])).toEqual([
      ["k10", "Left"],
      ["k1", undefined],
      ["k2", undefined],
    ]);
  });
});

describe("sheets of labels", () => {
  it.each(LABEL_SHEETS)("$name fit on their paper", ({ paper, columns, rows, width, height, gap }) => {
    // ISO 216:2007 A4 and ANSI/ASME Y14.1 size A [mm].
    const [wide, high] = paper === "A4" ? [210, 297] : [215.9, 279.4];
    expect(columns * width + (columns - 1) * gap).toBeLessThanOrEqual(wide);
    expect(rows * height).toBeLessThanOrEqual(high);
  });
});
