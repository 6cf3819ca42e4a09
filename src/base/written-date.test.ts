import { describe, expect, it } from "vitest";
import { dateOfSerial, readWrittenDate, type DateOrder } from "./written-date.ts";

function said(text: string, order?: DateOrder): string {
  const read = readWrittenDate(text, order);
  return read.kind === "date" ? read.date : `${read.fault.code}`;
}

describe("a date as people write it", () => {
  it.each([
    ["2026-03-04", "2026-03-04"],
    ["2026-03", "2026-03"],
    ["2026/3/4", "2026-03-04"],
    ["2026-03-04T00:00:00", "2026-03-04"],
    ["2026-03-04 00:00:00", "2026-03-04"],
    ["4 March 2026", "2026-03-04"],
    ["4. Mar. 2026", "2026-03-04"],
    ["04-Sept-2026", "2026-09-04"],
    ["March 4, 2026", "2026-03-04"],
    ["Mar 2026", "2026-03"],
    ["03/2026", "2026-03"],
    ["25/03/2026", "2026-03-25"],
    ["03/25/2026", "2026-03-25"],
    ["5/5/2026", "2026-05-05"],
    [" 25.03.2026 ", "2026-03-25"],
  ])("%s is %s", (text, date) => {
    expect(said(text)).toBe(date);
  });

  it("may be two days where only figures stand, and says which", () => {
    expect(readWrittenDate("03/04/2026")).toMatchObject({
      kind: "either",
      dayFirst: "2026-04-03",
      monthFirst: "2026-03-04",
      fault: { code: "BA-119", got: '"03/04/2026"', allowed: "3 April 2026 or 4 March 2026, not either" },
    });
    expect(said("03/04/2026", "day-first")).toBe("2026-04-03");
    expect(said("03/04/2026", "month-first")).toBe("2026-03-04");
  });

  it("is held to the order that was said, though the other would give a day", () => {
    expect(said("25/03/2026", "month-first")).toBe("BA-120");
    expect(said("03/25/2026", "day-first")).toBe("BA-120");
  });

  it.each(["03/04/26", "3.4.26", "3-Apr-26", "3 April 26"])("%s has a year of two figures: refused", (text) => {
    expect(said(text)).toBe("BA-118");
  });

  it.each([
    "31/02/2026",
    "2026-02-30",
    "29 February 2026",
    "13/2026",
    "soon",
    "",
    "45",
    "May",
    "4 Mars 2026",
    "0/5/2026",
  ])("%s is no date", (text) => {
    expect(said(text)).toBe("BA-120");
  });
});

describe("a serial number of a spreadsheet, ECMA-376 part 1, 18.17.4.1, FROM MEMORY", () => {
  it("counts from the end of 1899, or from 1904 where the workbook says so", () => {
    expect(dateOfSerial(25_569)).toBe("1970-01-01");
    expect(dateOfSerial(36_526)).toBe("2000-01-01");
    expect(dateOfSerial(46_085.75)).toBe("2026-03-04");
    expect(dateOfSerial(46_085 - 1462, 1904)).toBe("2026-03-04");
    expect(dateOfSerial(109_574)).toBe("2199-12-31");
  });

  it("is none outside 1970 to 2199: a bare year is no day of 1905", () => {
    expect(dateOfSerial(2026)).toBeUndefined();
    expect(dateOfSerial(109_575)).toBeUndefined();
    expect(dateOfSerial(Number.NaN)).toBeUndefined();
  });
});
