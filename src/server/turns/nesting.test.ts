import fc from "fast-check";
import { expect, test } from "vitest";
import { nestsDeeperThan } from "./nesting.ts";

function depthOf(value: unknown): number {
  if (typeof value !== "object" || value === null) return 0;
  return 1 + Math.max(0, ...Object.values(value).map(depthOf));
}

test("how deep a text nests is what reading it finds, whatever stands in its strings", () => {
  const law = fc.property(fc.jsonValue({ maxDepth: 6, stringUnit: "binary" }), fc.nat(7), (value, deepest) => {
    const text = JSON.stringify({ value, text: '\\"[[[[[[[[[\\', more: "}\\\\" });
    expect(nestsDeeperThan(deepest, text)).toBe(depthOf({ value }) > deepest);
  });
  fc.assert(law, { seed: 417, numRuns: 500 });
});

test("a text that never ends is no deeper than it is", () => {
  expect(nestsDeeperThan(2, '[[["')).toBe(true);
  expect(nestsDeeperThan(3, '[[["]]]]]"')).toBe(false);
  expect(nestsDeeperThan(0, '"[[[')).toBe(false);
});
