import type { StockPart } from "#readiness";
import { describe, expect, it } from "vitest";
import { askedOf, leftOut, sayBeside, sayBought, sayLeftOut, worthBuying } from "./buys-words.ts";

const PART = { id: "p1", name: "Gasket", cost: 3, leadTime: "6 weeks" } as unknown as StockPart;
const { cost: _cost, ...unpriced } = PART;

const boughtItem = (name: string, now: number, after: number) => ({
  name,
  stock: 3,
  toBuy: 1,
  emptyPerYear: { now, after },
});

describe("best buys, in words", () => {
  it("ask of a part only what is on record, and say what is missing of the others", () => {
    expect(askedOf(PART, 4, 2, "2026-06-01")).toEqual({
      name: "p1",
      perYear: 4,
      leadTime: "42 days",
      cost: 3,
      stock: 2,
    });
    expect(askedOf(PART, undefined, 2, "2026-06-01")).toBeUndefined();
    expect(askedOf(unpriced, 4, 2, "2026-06-01")).toBeUndefined();
    expect(leftOut(unpriced)).toEqual(["Gasket (price)"]);
    expect(sayLeftOut(leftOut(PART))).toBe("Left out, for want of what stands in brackets: Gasket (90 days of use).");
    expect(sayLeftOut([])).toBeUndefined();
  });

  it("leave out what changes nothing that shows, and say what comes first", () => {
    const told = {
      items: [boughtItem("seal", 0.3, 0.1), boughtItem("gasket", 0.01, 0), { name: "plug", stock: 1 }],
      exact: true,
    };
    expect(worthBuying(told)).toMatchObject({ worth: [{ name: "seal" }], idle: 1 });
    expect(sayBeside(0)).toMatch(/To order: get that first/);
    expect(sayBeside(1)).toMatch(/One more part .* less than once in twenty years/);
  });

  it("say how many kits are robbed less, and what was spent", () => {
    const items = [{ name: "p1", stock: 3, toBuy: 2, emptyPerYear: { now: 2.5, after: 0.3 } }];
    const told = { items, purchases: [{ cost: 3 }, { cost: 6 }], exact: true };
    expect(sayBought(told)).toMatch(/about 2\.5 times a year.*6\.00 spent so makes that about 0\.3: 2\.2 fewer/);
    expect(sayBought({ items, exact: true })).toMatch(/buys nothing/);
    expect(sayBought({ ...told, exact: false })).toMatch(/may be a little better\.$/);
  });
});
