import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { demoEntries } from "#demo";
import { createStationFold, practisingOf, trainingOf } from "#station";
import { readPatternFolders } from "#store/patterns";
import { renderTrainingRecord } from "../index.ts";

const { patterns } = readPatternFolders([join(import.meta.dirname, "..", "..", "..", "patterns")]);
const fold = createStationFold(patterns);
const day = "2027-03-14";
fold.add(demoEntries({ patterns, today: day, seed: 7 }));
const reading = fold.read();

function pagesOf(pdf: Uint8Array): number {
  return Buffer.from(pdf)
    .toString("latin1")
    .match(/\/Type \/Page\b(?!s)/g)!.length;
}

async function recordOf(id: string, qualifications = reading.qualifications): Promise<Uint8Array> {
  const person = reading.people.find((one) => one.id === id)!;
  const training = trainingOf(practisingOf({ ...reading, qualifications }), id, day);
  const { stationName } = reading;
  return renderTrainingRecord({ stationName, person, day, training, naming: reading, now: `${day}T12:00:00Z` });
}

describe("the training record of a person", () => {
  it("has a line for everything done, over as many pages as that takes", async () => {
    const rows = trainingOf(practisingOf(reading), "mara-tolliver", day).doings.length;
    expect(rows).toBeGreaterThan(100);
    const hers = pagesOf(await recordOf("mara-tolliver"));
    expect(hers).toBeGreaterThan(pagesOf(await recordOf("jonas-wick")));
    expect(hers).toBeGreaterThan(rows / 60);
  });

  it("is one page for who did nothing, and where the station has set no qualification", async () => {
    expect(pagesOf(await recordOf("hal-brandreth"))).toBe(1);
    expect(pagesOf(await recordOf("mara-tolliver", []))).toBe(1);
  });
});
