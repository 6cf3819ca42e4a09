import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { sampleCheck, sampleMark } from "../kit-view/sample.ts";
import type { Check } from "#kit";
import { assembleReading, holdsBack, isSaid, type Typed } from "./typed-reading.ts";

const words = await fetchWords("en", "act");

const around = { today: "2026-03-14", units: "metric" } as const;
const read = (check: string, typed: Typed) => assembleReading(sampleCheck(check), typed, around, words);
const readSeal = (first: string, recorded?: string) =>
  assembleReading(sampleCheck("seal"), { first, second: first }, { ...around, recorded }, words);

describe("readings as typed", () => {
  it("asks nothing where the eye judges", () => {
    expect(read("torch-lights", {})).toEqual({ kind: "none" });
    expect(assembleReading(undefined, {}, around, words)).toEqual({ kind: "none" });
  });

  it("says what is still missing, and takes nothing for granted", () => {
    expect(read("bands", {})).toMatchObject({ missing: "Count the bands and enter how many." });
    expect(read("number", { first: "07", second: "  " }).kind).toBe("incomplete");
    expect(read("cord", { quantity: "long" }).kind).toBe("incomplete");
    expect(read("cells-date", {}).kind).toBe("incomplete");
  });

  it("takes zero counted for a reading, not for nothing", () => {
    expect(read("bands", { count: "0" })).toMatchObject({ value: { count: 0 }, judgement: { right: false } });
  });

  it("keeps the words typed beside the SI value", () => {
    const reading = read("cord", { quantity: "55 cm" });
    expect(reading).toMatchObject({ kind: "read", value: { text: "55 cm", dimension: "length" } });
    expect(reading.kind === "read" && reading.value.kind === "quantity" && reading.value.si).toBeCloseTo(0.55, 12);
  });

  it("takes of a gauge only what a gauge reads, both sides by the nearest quarter", () => {
    const gauge = { ...sampleCheck("number"), reads: "quarters" } as Check;
    const readGauge = (first: string, second: string) => assembleReading(gauge, { first, second }, around, words);
    for (const wrong of ["9/9", "5/4", "lots"]) expect(readGauge(wrong, wrong).kind).toBe("incomplete");
    expect(readGauge("3/4", "75 %")).toMatchObject({ value: { second: "75 %" }, judgement: { right: true } });
  });

  it("holds the seal against the record, of which nothing is typed", () => {
    expect(readSeal("dk 0417", "DK0417")).toMatchObject({ value: { second: "DK0417" }, judgement: { right: true } });
    const wrong = readSeal("DK417", "DK0417");
    expect(wrong).toMatchObject({ judgement: { right: false, words: "They differ: the seal and the record." } });
    expect(readSeal(" ", "DK0417")).toMatchObject({ missing: "Read and enter: the seal." });
  });

  it("says once that two numbers differ: beside the reading, and not again as the reason against it", () => {
    const wrong = readSeal("DK417", "DK0417");
    expect(isSaid(wrong, holdsBack(wrong)!)).toBe(true);
    const missing = readSeal(" ", "DK0417");
    expect(isSaid(missing, holdsBack(missing)!)).toBe(false);
  });

  it("keeps a seal's number where none stands on record, and says that it compared nothing", () => {
    expect(readSeal("DK0417")).toMatchObject({
      value: { kind: "text", text: "DK0417" },
      judgement: { words: expect.stringContaining("None stands on record") },
    });
  });

  it("takes a timed check's reading from the clock", () => {
    const timed = { ...sampleCheck("bands"), kind: "timed", atMost: 60 } as const;
    const timer = { seconds: 75, mark: sampleMark(1) };
    expect(assembleReading(timed, {}, { ...around, timer }, words)).toMatchObject({
      value: { si: 75, text: "1\u00a0min 15\u00a0s" },
      judgement: { right: false },
    });
  });
});
