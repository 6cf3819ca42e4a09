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

  it("says every fault in what was given", () => {
    expect(faultsOf({})).toEqual(["QU-106 anchor"]);
    expect(faultsOf({ anchor: "2026-02-30", rule: "now and then" })).toEqual(["BA-111 anchor", "BA-112 rule"]);
    expect(faultsOf({ anchor: "2026-01-01" })).toEqual(["QU-106 rule"]);
    expect(faultsOf({ gs1: "280200" })).toEqual(["QU-106 currentYear"]);
    expect(faultsOf({ anchor: "2026-01-01", rule: "0 months" })).toEqual(["BA-112 rule"]);
    expect(faultsOf({ gs1: "281300", currentYear: 2025 })).toEqual(["BA-113 gs1"]);
  });
});
