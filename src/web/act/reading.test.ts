import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import type { Value } from "#readiness";
import { sayReading, lastTime, sayLimits, writeValue } from "./reading.ts";
import { sampleCheck, sampleTurnaround } from "../kit-view/sample.ts";

const words = await fetchWords("en", "act");
const parts = await fetchWords("en", "parts");

const length = (si: number): Value => ({ kind: "quantity", si, dimension: "length", text: `${si * 100} cm` });
const judge = (check: string, value: Value) =>
  sayReading(sampleCheck(check), value, { today: "2026-03-14" }, { units: "metric", words });

describe("readings against their limits", () => {
  it("holds a measure against both limits, the limits themselves allowed", () => {
    expect(judge("cord", length(0.5))).toEqual({ right: true, words: "Within limits." });
    expect(judge("cord", length(0.6))?.right).toBe(true);
    expect(judge("cord", length(0.49))).toMatchObject({
      right: false,
      words: expect.stringContaining("Too low: at least"),
    });
    expect(judge("cord", length(0.61))).toMatchObject({
      right: false,
      words: expect.stringContaining("Too high: at most"),
    });
  });

  it("says how many are missing or too many", () => {
    expect(judge("bands", { kind: "count", count: 3 })?.words).toBe("1 missing: 4 bands belong there.");
    expect(judge("bands", { kind: "count", count: 6 })?.words).toBe("2 too many: 4 bands belong there.");
    expect(judge("bands", { kind: "count", count: 4 })?.right).toBe(true);
  });

  it("compares two sides as read, letter case and blanks aside", () => {
    expect(judge("number", { kind: "match", first: "DK 07", second: " DK 07" })?.right).toBe(true);
    expect(judge("number", { kind: "match", first: "BR-E06", second: "br-e06" })?.right).toBe(true);
    expect(judge("number", { kind: "match", first: "DK 07", second: "DK 01" })?.right).toBe(false);
  });

  it("lets a printed month last through its last day", () => {
    expect(judge("cells-date", { kind: "date", date: "2026-03" })?.right).toBe(true);
    expect(judge("cells-date", { kind: "date", date: "2026-03-13" })?.right).toBe(false);
    expect(judge("cells-date", { kind: "date", date: "2026-02" })?.words).toContain("28 February 2026");
  });

  it("leaves what is judged by eye to the eye", () => {
    expect(judge("torch-lights", { kind: "text", text: "bright" })).toBeUndefined();
  });

  it("shows limits in the person's unit and in the unit they were written in", () => {
    expect(sayLimits(sampleCheck("cord"), { units: "us", words })).toContain("50.0\u00a0cm (");
    expect(sayLimits(sampleCheck("bands"), { units: "metric", words })).toBe("4 bands");
    expect(sayLimits(sampleCheck("torch-lights"), { units: "metric", words })).toBeUndefined();
  });
});

describe("last time", () => {
  it("finds the newest reading of the same ask, passing over turnarounds that read none", () => {
    const old = sampleTurnaround({ key: "rig/cord", value: length(0.51) });
    const newer = sampleTurnaround({ key: "rig/cord", value: length(0.55) });
    const none = sampleTurnaround({ key: "rig/cord" });
    expect(lastTime([old, newer, none], "rig/cord")?.value).toEqual(length(0.55));
    expect(lastTime([none], "rig/cord")).toBeUndefined();
  });

  it("writes each kind of reading as it was entered", () => {
    expect(writeValue(length(0.5), parts)).toBe("50 cm");
    expect(writeValue(length(0.5), parts, "metric")).toBe("50 cm");
    expect(writeValue(length(0.5), parts, "us")).toBe("50 cm (1.64\u00a0ft)");
    expect(writeValue({ kind: "match", first: "a", second: "b" }, parts)).toBe("a / b");
    expect(writeValue({ kind: "date", date: "2027-02" }, parts)).toBe("2027-02 (to 28 February 2027)");
  });
});
