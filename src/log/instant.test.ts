import { describe, expect, test } from "vitest";
import { instantOf, parseInstant } from "./instant.ts";
import { compareEntries } from "./order.ts";
import { makeEntry } from "./testing/entries.ts";

describe("parseInstant", () => {
  test.each([
    ["1970-01-01T00:00:00Z", 0],
    ["1970-01-01T01:00:00+01:00", 0],
    ["1969-12-31T18:30:00-05:30", 0],
    ["2024-02-29T12:00:00.5Z", Date.UTC(2024, 1, 29, 12, 0, 0, 500)],
    ["2000-02-29T00:00:00Z", Date.UTC(2000, 1, 29)],
    ["0000-03-01T00:00:00Z", Date.parse("0000-03-01T00:00:00Z")],
    ["2027-03-14T09:26:53.589793238+01:00", Date.parse("2027-03-14T09:26:53.589+01:00")],
    ["2027-03-14T09:26:53-00:00", Date.parse("2027-03-14T09:26:53Z")],
  ])("reads %s", (text, ms) => {
    expect(parseInstant(text)).toBe(ms);
  });

  test.each([
    "",
    "2027-03-14",
    "2027-03-14T09:26:53",
    "2027-03-14T09:26Z",
    "2027-03-14 09:26:53Z",
    "2027-03-14t09:26:53z",
    "2027-02-29T00:00:00Z",
    "1900-02-29T00:00:00Z",
    "2027-04-31T00:00:00Z",
    "2027-13-01T00:00:00Z",
    "2027-00-10T00:00:00Z",
    "2027-01-01T24:00:00Z",
    "2027-01-01T23:59:60Z",
    "2027-01-01T00:00:00.Z",
    "2027-01-01T00:00:00+1:00",
    "2027-01-01T00:00:00+24:00",
    "2027-01-01T00:00:00+0100",
    "2027-01-01T00:00:00Z ",
    "-2027-01-01T00:00:00Z",
    "２027-01-01T00:00:00Z",
  ])("does not read %j", (text) => {
    expect(parseInstant(text)).toBeUndefined();
  });

  test("agrees with the platform's own reader over two centuries of days", () => {
    for (let ms = Date.UTC(1899, 11, 25); ms < Date.UTC(2101, 2, 5); ms += 86_400_000 + 61_007) {
      expect(parseInstant(new Date(ms).toISOString())).toBe(ms);
    }
  });

  test("instantOf stops at a text that should have been judged before", () => {
    expect(() => instantOf("yesterday")).toThrow(/Broken invariant/);
  });
});

describe("compareEntries", () => {
  test("LOG-3 orders by instant, not by text", () => {
    const early = makeEntry(2, { at: "2027-01-01T10:00:00+02:00" });
    const late = makeEntry(1, { at: "2027-01-01T09:00:00Z" });
    expect([late, early].sort(compareEntries)).toEqual([early, late]);
  });

  test("LOG-3 orders equal instants by id", () => {
    const one = makeEntry(1, { at: "2027-01-01T10:00:00+01:00" });
    const two = makeEntry(2, { at: "2027-01-01T09:00:00Z" });
    expect(compareEntries(one, two)).toBeLessThan(0);
    expect(compareEntries(two, one)).toBeGreaterThan(0);
    expect(compareEntries(one, one)).toBe(0);
  });
});
