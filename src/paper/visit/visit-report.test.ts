import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { demoEntries } from "#demo";
import { createStationFold, leftOutOf, paretoOf, visitResult, type VisitResult } from "#station";
import { readPatternFolders } from "#store/patterns";
import { renderVisitReport, type VisitReport } from "../index.ts";

const { patterns } = readPatternFolders([join(import.meta.dirname, "..", "..", "..", "patterns")]);
const fold = createStationFold(patterns);
fold.add(demoEntries({ patterns, today: "2027-03-14", seed: 7 }));
const reading = fold.read();
const visit = reading.visits[0]!;
const span = { from: "2026-03-14", to: "2027-03-14" };

function pagesOf(pdf: Uint8Array): number {
  return Buffer.from(pdf)
    .toString("latin1")
    .match(/\/Type \/Page\b(?!s)/g)!.length;
}

function reportOf(result: VisitResult, records: VisitReport["records"] = []): Promise<Uint8Array> {
  return renderVisitReport({
    stationName: reading.stationName,
    placeNames: ["Outer pier store"],
    visit,
    result,
    people: new Map(reading.people.map(({ id, name }) => [id, name])),
    pareto: { items: paretoOf(reading, "item", span), modes: [], leftOut: leftOutOf(reading, span) },
    records,
    proofs: [],
    now: "2027-03-14T12:00:00Z",
  });
}

describe("the report of a visit", () => {
  it("has every kit line by line: more lines take more pages", async () => {
    const result = visitResult(visit, reading);
    const [kit] = result.kits;
    const many = { ...result, kits: Array.from({ length: 12 }, () => kit!) };
    const [one, twelve] = [pagesOf(await reportOf(result)), pagesOf(await reportOf(many))];
    expect(one).toBeGreaterThanOrEqual(2);
    expect(twelve).toBeGreaterThan(one + 3);
  });

  it("is printed too where nothing was compared, and where the kits are not to be had", async () => {
    const bare = visitResult(visit, { kits: [], patterns: reading.patterns });
    expect(bare.agreed).toBeUndefined();
    expect(pagesOf(await reportOf(bare))).toBeGreaterThanOrEqual(1);
  });
});
