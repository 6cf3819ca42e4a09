import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as calendar from "./calendar.ts";
import { isInputError } from "./errors.ts";
import { dayIn, hoursBetween, isInstant, isZone } from "./instant.ts";
import { parseRecurrence, recurrenceDates } from "./recurrence.ts";
import { addSpan, formatSpan, parseSpan, shorterSpan } from "./span.ts";

function codeOf(work: () => unknown): string | undefined {
  try {
    work();
  } catch (thrown) {
    return isInputError(thrown) ? thrown.faults[0]?.code : String(thrown);
  }
  return undefined;
}

describe("dates", () => {
  it("reads a day, and a month as its last day", () => {
    expect(calendar.parseDate("2027-03-14")).toBe("2027-03-14");
    expect(calendar.parseDate(" 2028-02 ")).toBe("2028-02-29");
    expect(calendar.lastDayOf("2027-04")).toBe("2027-04-30");
  });

  it.each(["2027-02-29", "2027-13", "27-03-14", "2027-3-14", "", "0000-01-01", "2027-00-10"])("refuses %s", (text) => {
    expect(codeOf(() => calendar.parseDate(text))).toBe("BA-111");
  });

  it("writes a day in words", () => {
    expect(calendar.formatDate("2027-03-14")).toBe("14 March 2027");
  });

  it("knows the weekday", () => {
    expect(calendar.weekdayOf("1970-01-01")).toBe(4);
    expect(calendar.weekdayOf("2024-02-29")).toBe(4);
    expect(calendar.weekdayOf("1969-12-28")).toBe(7);
  });

  it.each(["1302", "131300", "130230", "abcdef"])("refuses %s as a GS1 date", (text) => {
    expect(codeOf(() => calendar.gs1Date(text, 2025))).toBe("BA-113");
  });
});

describe("spans", () => {
  it.each([
    ["12 months", { months: 12 }],
    ["2 years", { months: 24 }],
    ["90 days", { days: 90 }],
    ["1 day", { days: 1 }],
    ["6 weeks", { days: 42 }],
    ["P6M", { months: 6 }],
    ["P1Y6M", { months: 18 }],
    ["P2W", { days: 14 }],
  ])("reads %s", (text, span) => {
    expect(parseSpan(text)).toEqual(span);
  });

  it.each(["", "months", "1.5 years", "P", "P1M1D", "90", "3 fortnights"])("refuses %j", (text) => {
    expect(codeOf(() => parseSpan(text))).toBe("BA-112");
  });

  it("writes spans in the largest whole unit", () => {
    expect([{ months: 24 }, { months: 18 }, { days: 1 }, { months: 1 }].map(formatSpan)).toEqual([
      "2 years",
      "18 months",
      "1 day",
      "1 month",
    ]);
  });

  it("takes the shorter, months at their mean length", () => {
    expect(shorterSpan({ months: 3 }, { days: 90 })).toEqual({ days: 90 });
    expect(shorterSpan({ months: 3 }, { days: 92 })).toEqual({ months: 3 });
    expect(shorterSpan(undefined, { days: 92 })).toEqual({ days: 92 });
  });

  it("counts from the anchor, so that month ends do not drift", () => {
    expect([1, 2, 3].map((months) => addSpan("2023-01-31", { months }))).toEqual([
      "2023-02-28",
      "2023-03-31",
      "2023-04-30",
    ]);
  });
});

describe("instants", () => {
  it.each(["2026-03-14T20:00:00Z", "2026-03-14T20:00:00.123+13:00", "2024-02-29T00:00:00-05:00"])(
    "knows %s",
    (text) => {
      expect(isInstant(text)).toBe(true);
    },
  );

  it.each(["2026-03-14T20:00:00", "2026-02-30T20:00:00Z", "2026-03-14", "2026-03-14T24:00:00Z", ""])(
    "does not take %j for one",
    (text) => {
      expect(isInstant(text)).toBe(false);
    },
  );

  it("finds the calendar day in a zone", () => {
    expect(dayIn("Pacific/Auckland", "2026-03-14T20:00:00Z")).toBe("2026-03-15");
    expect(dayIn("Pacific/Apia", "2011-12-30T09:59:59Z")).toBe("2011-12-29");
    expect(dayIn("Pacific/Apia", "2011-12-30T10:00:00Z")).toBe("2011-12-31");
    expect(codeOf(() => dayIn("Mars/Base", "2026-03-14T20:00:00Z"))).toBe("BA-114");
    expect(codeOf(() => dayIn("UTC", "yesterday"))).toBe("BA-115");
    expect([isZone("Europe/Oslo"), isZone("Europe/Atlantis")]).toEqual([true, false]);
  });

  it("counts the hours of a night on which clocks go back", () => {
    expect(hoursBetween("Europe/Berlin", "2025-10-25T12:00", "2025-10-26T12:00")).toBe(25);
    expect(codeOf(() => hoursBetween("UTC", "noon", "2025-10-26T12:00"))).toBe("BA-117");
  });
});

function dates(start: string, rule: string, most = 10): readonly string[] {
  return recurrenceDates(start, parseRecurrence(rule), most);
}

describe("recurrence", () => {
  it("moves days that a month does not have forward or backward, where the rule says so", () => {
    expect(dates("2024-01-31", "FREQ=MONTHLY;SKIP=FORWARD;COUNT=4")).toEqual([
      "2024-01-31",
      "2024-03-01",
      "2024-03-31",
      "2024-05-01",
    ]);
    expect(dates("2024-02-29", "FREQ=YEARLY;SKIP=BACKWARD;COUNT=3")).toEqual([
      "2024-02-29",
      "2025-02-28",
      "2026-02-28",
    ]);
  });

  it("stops at UNTIL, at the most wanted, and where a rule gives nothing more", () => {
    expect(dates("2026-01-01", "FREQ=DAILY;INTERVAL=10;UNTIL=20260125T000000Z")).toEqual([
      "2026-01-01",
      "2026-01-11",
      "2026-01-21",
    ]);
    expect(dates("2026-01-01", "FREQ=WEEKLY", 2)).toEqual(["2026-01-01", "2026-01-08"]);
    expect(dates("2026-01-01", "FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30")).toEqual([]);
  });

  it.each(["FREQ=HOURLY", "FREQ=MONTHLY;BYHOUR=9", "INTERVAL=2", "FREQ=DAILY;INTERVAL=0", "FREQ=WEEKLY;BYDAY=XX"])(
    "refuses %s",
    (rule) => {
      expect(codeOf(() => parseRecurrence(rule))).toBe("BA-116");
    },
  );
});

describe("laws of the calendar", () => {
  const number = fc.integer({ min: -700_000, max: 2_900_000 });

  it("numbers every day once, and agrees with the runtime's own calendar", () => {
    fc.assert(
      fc.property(number, (day) => {
        const date = calendar.dateOfNumber(day);
        expect(calendar.dayNumber(date)).toBe(day);
        if (day > -719_162) expect(new Date(day * 86_400_000).toISOString().slice(0, 10)).toBe(date);
      }),
      { seed: 19700101, numRuns: 2000 },
    );
  });

  it("adds months to the same day of the month or to its last, in the month that many later", () => {
    fc.assert(
      fc.property(number, fc.integer({ min: -600, max: 600 }), (day, months) => {
        const from = calendar.dateParts(calendar.dateOfNumber(day));
        const to = calendar.dateParts(addSpan(calendar.dateOfNumber(day), { months }));
        expect(to.year * 12 + to.month - from.year * 12 - from.month).toBe(months);
        expect(to.day).toBe(Math.min(from.day, calendar.daysInMonth(to.year, to.month)));
      }),
      { seed: 19700102, numRuns: 2000 },
    );
  });
});
