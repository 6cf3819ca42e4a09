import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { canonicalText } from "./canonical.ts";

const json = fc.jsonValue({ maxDepth: 5, stringUnit: "grapheme" });

describe.each([20_270_314, 41])("laws of the canonical form, seed %i", (seed) => {
  test("is JSON that says the same", () => {
    fc.assert(
      fc.property(json, (value) => {
        expect(JSON.parse(canonicalText(value))).toEqual(JSON.parse(JSON.stringify(value)));
      }),
      { seed, numRuns: 200 },
    );
  });

  test("of its own reading is itself", () => {
    fc.assert(
      fc.property(json, (value) => {
        const text = canonicalText(value);
        expect(canonicalText(JSON.parse(text))).toBe(text);
      }),
      { seed, numRuns: 200 },
    );
  });

  test("does not depend on the order in which keys were set", () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string({ unit: "grapheme" }), fc.integer(), { noNullPrototype: true }), (value) => {
        const turned = Object.fromEntries(Object.entries(value).reverse());
        expect(canonicalText(turned)).toBe(canonicalText(value));
      }),
      { seed, numRuns: 200 },
    );
  });
});
