import { describe, expect, it } from "vitest";
import { SAMPLE } from "#web/kit-view/sample.ts";
import {
  dateField,
  datedItems,
  datesMissing,
  emptyEnrolment,
  EMPTY_ENROLMENT,
  enrolBody,
  isEnough,
} from "./enrolment.ts";

const draft = { ...EMPTY_ENROLMENT, pattern: "trial-pump@1", place: "shed", name: " Pump 1 ", serial: "SN-1" };
const CELLS = { cells: { of: "printed", date: "2027-03" } } as const;

describe("enrolling a kit", () => {
  it("wants pattern, place, name and serial before anything", () => {
    expect(isEnough(draft)).toBe(true);
    expect(isEnough({ ...draft, serial: " " })).toBe(false);
    expect(isEnough(EMPTY_ENROLMENT)).toBe(false);
  });

  it("has the only place chosen, and none where there are several", () => {
    expect(emptyEnrolment([{ id: "shed" }]).place).toBe("shed");
    expect(emptyEnrolment([{ id: "shed" }, { id: "pier" }])).toEqual(EMPTY_ENROLMENT);
  });

  it("offers the date of each item whose life goes by one, and counts those not read", () => {
    expect(datedItems(SAMPLE).map(({ id }) => id)).toEqual(["cells"]);
    expect(datesMissing(SAMPLE, draft).map(({ id }) => id)).toEqual(["cells"]);
    expect(datesMissing(SAMPLE, { ...draft, dates: CELLS })).toEqual([]);
  });

  it("writes nothing that nobody saw: no item fitted, no date, no seal", () => {
    expect(enrolBody(SAMPLE, draft)).toEqual({ name: "Pump 1", serial: "SN-1", items: [] });
    const begun = { cells: { of: "printed", date: undefined } } as const;
    expect(enrolBody(SAMPLE, { ...draft, dates: begun })).not.toHaveProperty("read");
  });

  it("writes the seal and the dates that were read, as read", () => {
    const body = enrolBody(SAMPLE, { ...draft, seal: " 00417 ", dates: CELLS });
    expect(body).toMatchObject({ seal: "00417", items: [], read: [{ item: "cells", of: "printed", date: "2027-03" }] });
    expect(dateField(body, "cells")).toBe("body.read.0.date");
  });
});
