import type { StockPart } from "#readiness";
import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { askedOf, boughtOf, leftOut, sayBought, sayEmpty, sayHeld, sayLeftOut } from "./buys-words.ts";

const words = await fetchWords("en", "stock");

const PART = { id: "p1", name: "Gasket", cost: 3, leadTime: "6 weeks" } as unknown as StockPart;
const { cost: _cost, ...unpriced } = PART;

const HELD = { usable: 2, onOrder: 0 };

const boughtItem = (name: string, now: number, after: number) => ({
  name,
  stock: 3,
  toBuy: 1,
  emptyPerYear: { now, after },
});

describe("best buys, in words", () => {
  it("ask of a part only what is on record, and say what is missing of the others", () => {
    expect(askedOf(PART, { perYear: 4, lots: [] }, HELD, "2026-06-01")).toEqual({
      name: "p1",
      perYear: 4,
      leadTime: "42 days",
      cost: 3,
      stock: 2,
    });
    expect(askedOf(PART, { perYear: undefined, lots: [] }, HELD, "2026-06-01")).toBeUndefined();
    expect(askedOf(unpriced, { perYear: 4, lots: [] }, HELD, "2026-06-01")).toBeUndefined();
    expect(leftOut(unpriced, words)).toEqual(["Gasket (price)"]);
    expect(sayLeftOut(leftOut(PART, words), words)).toBe(
      "Left out, for want of what stands in brackets: Gasket (90 days of use).",
    );
    expect(sayLeftOut([], words)).toBeUndefined();
  });

  it("count what is on order as bought already, and say so", () => {
    const lots = [
      { size: 1, times: 2 },
      { size: 3, times: 10 },
    ];
    expect(askedOf(PART, { perYear: 4, lots }, HELD, "2026-06-01")).toMatchObject({
      lots: [
        { size: 3, share: 10 },
        { size: 1, share: 2 },
      ],
    });
    expect(askedOf(PART, { perYear: 4, lots: [] }, { usable: 0, onOrder: 6 }, "2026-06-01")).toMatchObject({
      stock: 6,
    });
    expect(sayHeld({ usable: 0, onOrder: 6 }, words)).toBe("0, 6 on order");
    expect(sayHeld(HELD, words)).toBe("2");
  });

  const purchases = [
    { name: "seal", cost: 60 },
    { name: "seal", cost: 120 },
    { name: "gasket", cost: 122.8 },
  ];
  const items = [boughtItem("seal", 2.5, 0.3), boughtItem("gasket", 0.012, 0.011), { name: "plug", stock: 1 }];

  it("count as bought and spent only what is shown, and nothing that lessens nothing", () => {
    const bought = boughtOf({ items, purchases, exact: true });
    expect(bought.rows.map(({ name }) => name)).toEqual(["seal"]);
    expect(bought).toMatchObject({ spent: 120, now: 251, after: 31 });
  });

  it("say how many kits are robbed less in figures that agree with each other and with the table", () => {
    const bought = boughtOf({ items, purchases, exact: true });
    expect(sayBought({ exact: true }, bought, { words, currency: undefined })).toMatch(
      /about 2\.51 times a year.*120\.00 spent .* makes that about 0\.31 times: 2\.20 fewer/,
    );
    expect(sayBought({ exact: false, gap: 0.034 }, bought, { words, currency: undefined })).toMatch(
      /may be better, by at most 0\.03 parts .*\.$/,
    );
    expect(sayEmpty(0.3)).toBe("0.30");
    const parts = [0.104, 0.104].map((now, i) => boughtItem(`${i}`, now, 0.046));
    const both = boughtOf({ items: parts, purchases: [], exact: true });
    expect(sayBought({ exact: true }, both, { words, currency: undefined })).toMatch(
      /about 0\.20 times.*about 0\.10 times: 0\.10 fewer/,
    );
  });

  it("say plainly what is nothing", () => {
    const none = boughtOf({
      items: [boughtItem("seal", 0.001, 0.0001)],
      purchases: [{ name: "seal", cost: 3 }],
      exact: true,
    });
    expect(none).toMatchObject({ rows: [], spent: 0 });
    expect(sayBought({ exact: true }, none, { words, currency: undefined })).toMatch(
      /less than once in a hundred years.*buys nothing/,
    );
    const all = boughtOf({
      items: [boughtItem("seal", 0.2, 0.001)],
      purchases: [{ name: "seal", cost: 3 }],
      exact: true,
    });
    expect(sayBought({ exact: true }, all, { words, currency: undefined })).toMatch(
      /3\.00 spent .* less than once in a hundred years/,
    );
    expect(sayBought({ exact: true }, all, { words, currency: undefined })).not.toMatch(/0\.00 times/);
  });

  it("say that least is for the whole station, in a sentence that reads one way", () => {
    expect(words.spare()).toMatch(/station/i);
    expect(words.spareMore()).toMatch(
      /whole station, not for each place.*nobody waits for a part in 95 of 100 such spans/,
    );
  });
});
