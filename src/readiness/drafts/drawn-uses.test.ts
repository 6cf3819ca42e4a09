import { describe, expect, it } from "vitest";
import type { DrawnUse } from "../state.ts";
import { DrawnUses } from "./drawn-uses.ts";

const MADE = { at: "2027-03-14T10:00:00Z", by: "ann", device: "tablet" };
const TAKEN = { part: "p", place: "north", count: 1, turnaround: "t" };
const use = (entry: string, item = "gasket"): DrawnUse => ({ ...MADE, ...TAKEN, entry, item });

describe("parts taken off shelves for a kit", () => {
  it("stay in the order in which they were taken, whichever is put right; the last of some is told by that order", () => {
    const [one, two, three] = [use("1"), use("2"), use("3", "plug")];
    const uses = new DrawnUses([one, two]);
    uses.add(three);
    uses.remove(one);
    expect(uses.lastOf([three, two])).toBe(three);
    expect(uses.takeChanged()).toEqual([two, three]);
    expect(uses.byWork("t", "gasket")).toEqual([two]);
    expect(uses.byLine("1")).toBeUndefined();
  });

  it("are told anew only where any came or went", () => {
    const uses = new DrawnUses([use("1")]);
    expect([uses.isNone, uses.takeChanged()]).toEqual([false, undefined]);
    uses.remove(use("9"));
    expect(new DrawnUses([]).isNone).toBe(true);
    expect(uses.lastOf([])).toBeUndefined();
  });
});
