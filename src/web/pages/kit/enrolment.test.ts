import { describe, expect, it } from "vitest";
import { SAMPLE } from "../turnaround/sample.ts";
import { datesMissing, EMPTY_ENROLMENT, enrolBody, isEnough, splitItems } from "./enrolment.ts";

const draft = { ...EMPTY_ENROLMENT, pattern: "trial-pump@1", place: "shed", name: " Pump 1 ", serial: "SN-1" };

describe("enrolling a kit", () => {
  it("wants pattern, place, name and serial before anything", () => {
    expect(isEnough(draft)).toBe(true);
    expect(isEnough({ ...draft, serial: " " })).toBe(false);
    expect(isEnough(EMPTY_ENROLMENT)).toBe(false);
  });

  it("asks for the date of each item whose life goes by one", () => {
    expect(splitItems(SAMPLE).dated.map(({ id }) => id)).toEqual(["cells"]);
    expect(datesMissing(SAMPLE, draft).map(({ id }) => id)).toEqual(["cells"]);
    expect(datesMissing(SAMPLE, { ...draft, dates: { cells: "2027-03" } })).toEqual([]);
    expect(datesMissing(SAMPLE, { ...draft, quantities: { cells: 0 } })).toEqual([]);
  });

  it("writes counted items down as there today, and invents no date for the others", () => {
    const body = enrolBody(SAMPLE, draft, "2026-11-25");
    expect(body).toMatchObject({ name: "Pump 1", serial: "SN-1" });
    expect(body.items.map(({ item, fitted }) => [item, fitted])).toEqual([
      ["torch", "2026-11-25"],
      ["desiccant", "2026-11-25"],
    ]);
    expect("seal" in body).toBe(false);
  });

  it("writes a date that was read, and leaves out what is not in the kit", () => {
    const full = { ...draft, seal: " 00417 ", dates: { cells: "2027-03" }, quantities: { torch: 0, cells: 2 } };
    const body = enrolBody(SAMPLE, full, "2026-11-25");
    expect(body.seal).toBe("00417");
    expect(body.items).toEqual([
      { item: "cells", fitted: "2026-11-25", printed: "2027-03", quantity: 2 },
      { item: "desiccant", fitted: "2026-11-25", quantity: 1 },
    ]);
  });
});
