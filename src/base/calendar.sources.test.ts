import { describe, expect, it } from "vitest";
import rows from "#test/references/calendar.json" with { type: "json" };
import { gs1Date } from "./calendar.ts";
import { hoursBetween } from "./instant.ts";
import { parseRecurrence, recurrenceDates } from "./recurrence.ts";
import { addSpan, parseSpan } from "./span.ts";

/** Rows of the reference file whose id begins so, with inputs of that shape. */
function rowsOf<Inputs>(family: string) {
  const found = rows.filter((row) => row.id.startsWith(family));
  return found as unknown as readonly { readonly id: string; readonly inputs: Inputs; readonly expected: never }[];
}

describe("W3C XML Schema Part 2, Appendix E (python-dateutil 2.9.0): adding months, clamped to the month's end", () => {
  it.each(rowsOf<{ start: string; months: number }>("cal-addmonths"))("$id", ({ inputs, expected }) => {
    expect(addSpan(inputs.start, { months: inputs.months })).toBe(expected);
  });

  it("cal-iso-dur: the rows of whole days; months and days do not commute", () => {
    const dayThenMonth = addSpan(addSpan("2000-03-30", parseSpan("P1D")), parseSpan("P1M"));
    const monthThenDay = addSpan(addSpan("2000-03-30", parseSpan("P1M")), parseSpan("P1D"));
    expect([dayThenMonth, monthThenDay]).toEqual(["2000-04-30", "2000-05-01"]);
    expect(addSpan("2000-01-01", parseSpan("-P3M")).slice(0, 7)).toBe("1999-10");
  });
});

describe("GS1 General Specifications, AI (17), section 7.12: YYMMDD, day 00 is the month's last, 49 back and 50 ahead", () => {
  it.each(rowsOf<{ yymmdd: string; current_year: number }>("cal-gs1"))("$id", ({ inputs, expected }) => {
    expect(gs1Date(inputs.yymmdd, inputs.current_year)).toBe(expected);
  });
});

interface RuleInputs {
  readonly dtstart: string;
  readonly rrule: string;
}

function datesOf({ dtstart, rrule }: RuleInputs): readonly string[] {
  const start = `${dtstart.slice(0, 4)}-${dtstart.slice(4, 6)}-${dtstart.slice(6, 8)}`;
  return recurrenceDates(start, parseRecurrence(rrule), 1000);
}

describe("IETF RFC 5545, section 3.8.5.3 (python-dateutil 2.9.0): recurrence dates", () => {
  it.each(rowsOf<RuleInputs>("cal-rrule"))("$id $inputs.rrule", ({ inputs, expected }) => {
    expect(datesOf(inputs)).toEqual(expected);
  });
});

describe("IETF RFC 7529, section 5: days that a month does not have", () => {
  it.each(rowsOf<RuleInputs>("cal-skip"))("$id $inputs.rrule", ({ inputs, expected }) => {
    expect(datesOf(inputs)).toEqual(expected);
  });
});

describe("IANA time zone database 2025b: hours between two clock times", () => {
  it.each(rowsOf<{ zone: string; start: string; end: string }>("cal-tz"))(
    "$id $inputs.zone",
    ({ inputs, expected }) => {
      expect(hoursBetween(inputs.zone, inputs.start, inputs.end)).toBe(expected);
    },
  );
});
