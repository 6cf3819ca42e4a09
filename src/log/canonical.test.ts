import { describe, expect, test } from "vitest";
import { canonicalText } from "./canonical.ts";

describe("canonicalText", () => {
  test("sorts keys at every depth by UTF-16 code unit and adds no white space", () => {
    expect(canonicalText({ b: { z: 1, a: 2 }, a: [{ d: 1, c: 2 }], "€": 1, "\ud83d\ude00": 2 })).toBe(
      '{"a":[{"c":2,"d":1}],"b":{"a":2,"z":1},"€":1,"😀":2}',
    );
  });

  test("leaves out what is undefined, as JSON does", () => {
    expect(canonicalText({ a: undefined, b: 1 })).toBe('{"b":1}');
  });

  test.each([
    ["a lone surrogate", "\ud800"],
    ["a lone surrogate in a name", { "a\udc00": 1 }],
    ["Infinity", [Infinity]],
    ["a big integer", 1n],
    ["a function", () => 1],
    ["undefined in a list", [undefined]],
  ])("refuses %s", (_, value) => {
    expect(() => canonicalText(value)).toThrow(/LG-130/);
  });
});
