import { fetchWords, inWords } from "#words";
import { describe, expect, it } from "vitest";
import type { Band, Shortfall } from "#readiness";
import { placeLines } from "./board-lines.ts";
import { sampleKit, sampleStanding, SHED } from "../pages/board/sample-kits.ts";
import { rowsOf, strengthRow, tableOf, yearFrom, type PlaceAhead } from "./year-ahead.ts";

const words = {
  bands: await fetchWords("en", "bands"),
  parts: await fetchWords("en", "parts"),
  standing: await fetchWords("en", "standing"),
};

const range = { from: "2026-11-25", to: "2027-11-24" };
const bands: readonly Band[] = [
  { from: "2026-11-25", to: "2026-12-20", standing: "ready", because: { say: "sound" } },
  { from: "2026-12-21", to: "2027-01-22", standing: "grounded", because: { say: "outOfDate", of: { item: "Petrol" } } },
  { from: "2027-01-23", to: "2027-11-24", standing: "grounded", because: { say: "proofRunDue" } },
];

function aheadWith(shortfalls: readonly Shortfall[], strength = 1): PlaceAhead {
  const place = { ...SHED, strength };
  const kit = sampleKit("1");
  const standings = new Map([["1", sampleStanding("ready", "2026-12-20")]]);
  const [lines] = placeLines({ kits: [kit], standings, places: [place], place });
  return { lines: lines!, bands: new Map([["1", bands]]), shortfalls };
}

describe("the year ahead", () => {
  it("is today and the 364 days after it", () => {
    expect(yearFrom("2026-11-25")).toEqual(range);
  });

  it("draws bands of one standing as one, and tells each reason in the table", () => {
    const ahead = aheadWith([], 0);
    expect(rowsOf(ahead, range, words)[0]?.pieces.map(({ from, to, fill }) => [from, to, fill])).toEqual([
      ["2026-11-25", "2026-12-20", "ready"],
      ["2026-12-21", "2027-11-24", "grounded"],
    ]);
    expect(tableOf(ahead, words).map(({ because }) => because)).toEqual(
      bands.map(({ because }) => inWords(because, words.standing)),
    );
  });

  it("heads the kits with the place's strength, unless nothing is asked of it", () => {
    expect(rowsOf(aheadWith([]), range, words).map(({ label }) => label)).toEqual(["Strength", "Pump 1"]);
    expect(rowsOf(aheadWith([], 0), range, words).map(({ label }) => label)).toEqual(["Pump 1"]);
  });

  it("covers every day of the range once with enough or short", () => {
    const short = [
      { from: "2026-12-21", to: "2027-01-05", holds: 0, must: 1 },
      { from: "2027-02-01", to: "2027-11-24", holds: 0, must: 1 },
    ];
    const { pieces } = strengthRow(aheadWith(short), range, words.bands);
    expect(pieces.map(({ from, to, word }) => [from, to, word])).toEqual([
      ["2026-11-25", "2026-12-20", "Enough"],
      ["2026-12-21", "2027-01-05", "1 short"],
      ["2027-01-06", "2027-01-31", "Enough"],
      ["2027-02-01", "2027-11-24", "1 short"],
    ]);
  });

  it("draws no more kits than are asked for", () => {
    expect(rowsOf(aheadWith([]), range, words, 0).map(({ label }) => label)).toEqual(["Strength"]);
  });
});
