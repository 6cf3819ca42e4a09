import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { sampleKit } from "../pages/board/sample-kits.ts";
import { datesFor, sayLasts, sayRead } from "./date-words.ts";
import { SAMPLE, sampleMark } from "./sample.ts";

const words = await fetchWords("en", "dates");
const parts = await fetchWords("en", "parts");

const cells = SAMPLE.items.find(({ id }) => id === "cells")!;
const around = { pattern: { ...SAMPLE, policy: { turnaround: { months: 12 } } }, policy: {}, today: "2026-11-25" };
const lasts = (date: string) => sayLasts(cells, { item: "cells", of: "printed", date }, around, words);

describe("a date read off an item", () => {
  it("is held against the day by which the next turnaround is due, and against today", () => {
    expect(lasts("2028-03")).toEqual({ words: "Good until 31 March 2028.", tooSoon: false });
    expect(lasts("2027-03")).toMatchObject({
      tooSoon: true,
      words: expect.stringContaining("due by 25 November 2027"),
    });
    expect(lasts("2026-10")).toMatchObject({ tooSoon: true, words: expect.stringContaining("Out of date") });
  });

  it("is told as it was read, or that it cannot be, or that nobody has looked", () => {
    const mark = sampleMark(0);
    const said = (dates: object) =>
      sayRead(sampleKit("1", { dates: { cells: { mark, ...dates } } }), cells, words, parts);
    expect(said({ printed: "2027-03" })).toContain("Good until 2027-03");
    expect(said({ cannot: true })).toBe("Looked at: no date can be read");
    expect(sayRead(sampleKit("1"), cells, words, parts)).toBe("No date on record");
  });

  it("of a printed life is its last good day; of one that counts from fitting, when it was fitted or made", () => {
    expect(datesFor(cells)).toEqual(["printed"]);
    expect(datesFor({ ...cells, life: { kind: "fitted", span: { months: 24 } } })).toEqual(["fitted", "made"]);
  });
});
