import { isInputError } from "#base";
import { describe, expect, test } from "vitest";
import { idOf, makeEntry, makeStrike } from "./testing/entries.ts";
import { validateEntry } from "./validate.ts";

function codesOf(given: unknown): string[] {
  try {
    validateEntry(given);
  } catch (thrown) {
    if (isInputError(thrown)) return thrown.faults.map((fault) => fault.code);
    throw thrown;
  }
  return [];
}

function nest(depth: number): unknown {
  return JSON.parse("[".repeat(depth) + "]".repeat(depth));
}

describe("validateEntry", () => {
  test("returns a good entry as it was", () => {
    const entry = makeEntry(3, { pattern: "harbour-pump@3", after: [idOf(1), idOf(2)] });
    expect(validateEntry(JSON.parse(JSON.stringify(entry)))).toEqual(entry);
    expect(Object.keys(validateEntry(makeEntry(1)))).not.toContain("pattern");
  });

  test.each([
    ["LG-101", null],
    ["LG-101", [makeEntry(1)]],
    ["LG-101", "entry"],
    ["LG-102", { ...makeEntry(1), seq: 4 }],
    ["LG-103", { ...makeEntry(1), id: idOf(1).replace("-7", "-4") }],
    ["LG-103", { ...makeEntry(1), id: idOf(0xabc).toUpperCase() }],
    ["LG-104", { ...makeEntry(1), place: "" }],
    ["LG-104", { ...makeEntry(1), place: "a/b" }],
    ["LG-104", { ...makeEntry(1), place: "constructor" }],
    ["LG-105", { ...makeEntry(1), subject: "kit:toString" }],
    ["LG-105", { ...makeEntry(1), subject: "kit:" }],
    ["LG-105", { ...makeEntry(1), subject: `kit:${"x".repeat(97)}` }],
    ["LG-106", { ...makeEntry(1), kind: "Kit Enrolled" }],
    ["LG-107", { ...makeEntry(1), at: "2027-02-30T00:00:00Z" }],
    ["LG-107", { ...makeEntry(1), at: `2027-02-20T00:00:00.${"0".repeat(40)}Z` }],
    ["LG-108", { ...makeEntry(1), by: 7 }],
    ["LG-109", { ...makeEntry(1), device: "a b" }],
    ["LG-110", { ...makeEntry(1), pattern: "harbour-pump" }],
    ["LG-111", { ...makeEntry(1), after: [idOf(2), idOf(2)] }],
    ["LG-111", { ...makeEntry(1), after: [idOf(1)] }],
    ["LG-111", { ...makeEntry(1), after: Array.from({ length: 17 }, (_, at) => idOf(at + 2)) }],
    ["LG-111", { ...makeEntry(1), after: "none" }],
    ["LG-112", { ...makeEntry(1), body: undefined }],
    ["LG-113", { ...makeEntry(1), body: { note: "é".repeat(33_000) } }],
    ["LG-114", makeStrike(1, 1)],
    ["LG-115", { ...makeStrike(2, 1), body: { entry: idOf(1), reason: "  " } }],
    ["LG-116", { ...makeEntry(1), body: { note: "half \ud83d" } }],
    ["LG-116", { ...makeEntry(1), body: { value: NaN } }],
    ["LG-116", { ...makeEntry(1), body: JSON.parse('{"__proto__":{"role":"keeper"}}') }],
    ["LG-117", { ...makeEntry(1), body: nest(13) }],
    ["LG-117", { ...makeEntry(1), body: nest(100_000) }],
  ])("gives %s alone for one thing wrong (%#)", (code, given) => {
    expect(codesOf(given)).toEqual([code]);
  });

  test("takes the deepest body and the longest one allowed", () => {
    expect(codesOf({ ...makeEntry(1), body: nest(12) })).toEqual([]);
    expect(codesOf({ ...makeEntry(1), body: { note: "x".repeat(65_000) } })).toEqual([]);
  });

  test("LOG-12 collects every fault, each with field, what was got, what is allowed and a remedy", () => {
    const given = { ...makeStrike(2, 1), id: "7", at: "noon", extra: nest(50_000), body: {} };
    expect(codesOf(given)).toEqual(["LG-102", "LG-103", "LG-107", "LG-114", "LG-115"]);
    expect(() => validateEntry(given, "line 7")).toThrow(
      /LG-107 line 7\.at: got "noon"; allowed: a real date and time/,
    );
  });

  test.each(["constructor", "__proto__", "toString"])(
    "LOG-12 says of a place %s why it cannot be one, and what to do",
    (place) => {
      expect(() => validateEntry(makeEntry(1, { place }))).toThrow(/no name such as constructor.*Choose another id/);
    },
  );

  test("tells a few faults of very many, in few words", () => {
    const many = Array.from({ length: 50_000 }, (_, at) => [`extra${at}`, "half \ud83d"]);
    const extra = codesOf({ ...makeEntry(1), ...Object.fromEntries(many), body: Object.fromEntries(many) });
    expect(extra).toEqual(Array(20).fill("LG-102"));
    expect(codesOf({ ...makeEntry(1), body: many })).toEqual(Array(20).fill("LG-116"));
    const long = { ...makeEntry(1), ["x".repeat(1_000_000)]: 1 };
    expect(() => validateEntry(long)).toThrow(
      expect.objectContaining({ message: expect.stringMatching(/^.{1,400}$/s) }),
    );
  });

  test("leaves an unknown kind to the rooms above", () => {
    expect(codesOf(makeEntry(1, { kind: "never-heard-of" }))).toEqual([]);
  });
});
