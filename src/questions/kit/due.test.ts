import { isInputError } from "#base";
import { describe, expect, it } from "vitest";
import { dueQuestion } from "./due.ts";

function due(given: unknown): unknown {
  return dueQuestion.answer(given, {});
}

function faultsOf(given: unknown): readonly string[] {
  try {
    due(given);
  } catch (thrown) {
    if (isInputError(thrown)) return thrown.faults.map((fault) => `${fault.code} ${fault.field}`);
    throw thrown;
  }
  return [];
}

describe("the question due", () => {
  it("counts from the anchor by a span, never from the date before", () => {
    expect(due(dueQuestion.example)).toEqual({
      dates: ["2027-02-28", "2027-08-31", "2028-02-29", "2028-08-31"],
      basis: "rule",
      lastGoodDay: "2027-02-28",
    });
    expect(due({ anchor: "2026-01-31", rule: "every month", count: 2 })).toMatchObject({
      dates: ["2026-02-28", "2026-03-31"],
    });
    expect(due({ anchor: "2026-01-01", rule: "90 days", count: 1 })).toMatchObject({ dates: ["2026-04-01"] });
  });

  it("reads a printed month, and a GS1 label", () => {
    expect(due({ printed: "2027-03" })).toEqual({
      dates: ["2027-03-31"],
      basis: "printed",
      lastGoodDay: "2027-03-31",
    });
    expect(due({ gs1: "280200", currentYear: 2025 })).toMatchObject({ dates: ["2028-02-29"] });
  });

  it("gives rule and printed date together, the earlier first", () => {
    const both = { anchor: "2026-01-10", rule: "24 months", count: 1, printed: "2027-03" };
    expect(due(both)).toMatchObject({ dates: ["2027-03-31", "2028-01-10"], lastGoodDay: "2027-03-31" });
  });

  it("follows an RFC 5545 rule with its own count, from a day written in the short form", () => {
    expect(due({ anchor: "20230831T090000", rule: "FREQ=MONTHLY;INTERVAL=6;BYMONTHDAY=-1;COUNT=4" })).toMatchObject({
      dates: ["2023-08-31", "2024-02-29", "2024-08-31", "2025-02-28"],
    });
    expect(due({ anchor: "2026-01-01", rule: "FREQ=WEEKLY" })).toMatchObject({ dates: { length: 5 } });
  });

  it("leaves out what lies before a day", () => {
    expect(due({ anchor: "2020-01-31", rule: "1 month", count: 2, from: "2026-02-01" })).toMatchObject({
      dates: ["2026-02-28", "2026-03-31"],
    });
  });

  it("tells a printed date that has passed, whatever the day asked from", () => {
    expect(due({ printed: "2024-03", from: "2026-01-01" })).toEqual({
      dates: ["2024-03-31"],
      basis: "printed",
      lastGoodDay: "2024-03-31",
      passed: ["2024-03-31"],
    });
    const both = { anchor: "2025-10-01", rule: "6 months", count: 2, from: "2026-01-01" };
    expect(due({ ...both, printed: "2025-12" })).toEqual({
      dates: ["2025-12-31", "2026-04-01", "2026-10-01"],
      basis: "rule",
      lastGoodDay: "2025-12-31",
      passed: ["2025-12-31"],
    });
    expect(due({ gs1: "240300", currentYear: 2025, from: "2026-01-01" })).toMatchObject({ passed: ["2024-03-31"] });
    expect(due({ printed: "2026-03", from: "2026-03-31" })).not.toHaveProperty("passed");
  });

  it("takes for the last good day of an RFC 5545 rule the first after its anchor, which is the day it was done", () => {
    const rule = "FREQ=MONTHLY;INTERVAL=6;BYMONTHDAY=-1;COUNT=4";
    expect(due({ anchor: "2023-08-31", rule })).toMatchObject({ lastGoodDay: "2024-02-29" });
    expect(due({ anchor: "2026-01-01", rule: "FREQ=YEARLY" })).toMatchObject({ lastGoodDay: "2027-01-01" });
    expect(due({ anchor: "2026-01-01", rule: "FREQ=YEARLY;COUNT=1" })).not.toHaveProperty("lastGoodDay");
    expect(due({ anchor: "2026-01-01", rule: "FREQ=YEARLY", from: "2026-01-01" })).toMatchObject({
      lastGoodDay: "2027-01-01",
    });
    expect(due({ anchor: "2026-01-01", rule: "FREQ=YEARLY;COUNT=1", printed: "2026-05" })).toMatchObject({
      lastGoodDay: "2026-05-31",
    });
  });

  it("follows a rule of days over many years to the day asked from", () => {
    expect(due({ anchor: "2000-01-01", rule: "FREQ=DAILY", count: 2, from: "2026-01-01" })).toMatchObject({
      dates: ["2026-01-01", "2026-01-02"],
    });
  });

  it.each(["0 months", "every 0 months", "0 days", "P0M"])("refuses %j by its own words: QU-280", (rule) => {
    expect(() => due({ anchor: "2026-01-01", rule })).toThrow(
      expect.objectContaining({
        faults: [
          expect.objectContaining({ code: "QU-280", got: `"${rule}"`, remedy: expect.stringContaining("6 months") }),
        ],
      }),
    );
  });

  it("refuses dates after the year 9999, which have no place in the order: QU-281", () => {
    expect(faultsOf({ anchor: "9990-01-31", rule: "every 5 years", count: 4 })).toEqual(["QU-281 rule"]);
    expect(faultsOf({ anchor: "9999-01-01", rule: "1 year", from: "9999-12-31" })).toEqual(["QU-281 rule"]);
    expect(due({ anchor: "9990-01-31", rule: "every 5 years", count: 1 })).toMatchObject({ dates: ["9995-01-31"] });
    expect(due({ anchor: "9998-01-31", rule: "FREQ=YEARLY;COUNT=4" })).toMatchObject({
      dates: ["9998-01-31", "9999-01-31"],
    });
  });

  it("says every fault in what was given", () => {
    expect(faultsOf({})).toEqual(["QU-106 anchor"]);
    expect(faultsOf({ anchor: "2026-02-30", rule: "now and then" })).toEqual(["BA-111 anchor", "BA-112 rule"]);
    expect(faultsOf({ anchor: "2026-01-01" })).toEqual(["QU-106 rule"]);
    expect(faultsOf({ gs1: "280200" })).toEqual(["QU-106 currentYear"]);
    expect(faultsOf({ gs1: "281300", currentYear: 2025 })).toEqual(["BA-113 gs1"]);
  });
});
