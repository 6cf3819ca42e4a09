import type { OrderLine, StockPart } from "#readiness";
import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { sayNothingShort, sayWhy } from "./order-words.ts";

const part = { number: "=1+1", name: 'Gasket, 2"', unit: "piece", supplier: "Ravel" } as StockPart;
const LINE = { part, place: "north", count: 3, by: "2027-01-02", want: "2027-02-01", cost: 7.5, needs: [] } as unknown;

describe("the order list in words", () => {
  it("says that nothing falls short only of what is on the list, and names no day that has gone by", async () => {
    const words = await fetchWords("en", "stock");
    expect(sayNothingShort(0, words)).toMatch(/^Nothing falls short/);
    expect(sayNothingShort(20, words)).toMatch(/^Too little to tell.* 20 parts that patterns name are not on the list/);
    expect(words.orderNow()).toBe("Now");
  });

  it("says why: what there is, what is kept, what wants it", async () => {
    const needs = [{ item: "Gasket", kit: "Pump 3", day: "2027-02-01" }];
    const line = { ...(LINE as OrderLine), usable: 1, onOrder: 2, least: 4, needs } as unknown as OrderLine;
    expect(sayWhy(line, await fetchWords("en", "stock"))).toBe(
      "1 fit to use, 2 on order; keep 4; Gasket of Pump 3 by 1 February 2027; wanted by 1 February 2027; 7 days to come supposed: none given",
    );
  });
});
