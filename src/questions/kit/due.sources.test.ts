import { describe, expect, it } from "vitest";
import rows from "#test/references/calendar.json" with { type: "json" };
import { dueQuestion } from "./due.ts";

function rowsOf<Inputs>(family: string) {
  const found = rows.filter((row) => row.id.startsWith(family));
  return found as unknown as readonly { readonly id: string; readonly inputs: Inputs; readonly expected: never }[];
}

function due(given: unknown): { readonly dates: readonly string[] } {
  return dueQuestion.answer(given, {}) as { readonly dates: readonly string[] };
}

describe("W3C XML Schema Part 2, Appendix E (python-dateutil 2.9.0), asked as due", () => {
  it.each(rowsOf<{ start: string; months: number }>("cal-addmonths"))("$id", ({ inputs, expected }) => {
    expect(due({ anchor: inputs.start, rule: `${inputs.months} months`, count: 1 }).dates).toEqual([expected]);
  });
});

describe("GS1 General Specifications, AI (17), section 7.12, asked as due", () => {
  it.each(rowsOf<{ yymmdd: string; current_year: number }>("cal-gs1"))("$id", ({ inputs, expected }) => {
    expect(due({ gs1: inputs.yymmdd, currentYear: inputs.current_year }).dates).toEqual([expected]);
  });
});

describe("IETF RFC 5545, section 3.8.5.3, and RFC 7529, section 5, asked as due", () => {
  const all = [
    ...rowsOf<{ dtstart: string; rrule: string }>("cal-rrule"),
    ...rowsOf<{ dtstart: string; rrule: string }>("cal-skip"),
  ];
  it.each(all)("$id $inputs.rrule", ({ inputs, expected }) => {
    expect(due({ anchor: inputs.dtstart, rule: inputs.rrule }).dates).toEqual(expected);
  });
});
