import { isInputError, describeFault } from "#base";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lintPatternText } from "../lint/lint.ts";
import { loadPattern } from "./load-pattern.ts";
import { SOUND_TEXT } from "../test-sound-pattern.ts";

/** Loads, or is refused with faults that say something; anything else thrown fails the property. */
function loadsOrIsRefused(text: string): void {
  try {
    loadPattern(text, "any.yaml");
  } catch (thrown) {
    if (!isInputError(thrown)) throw thrown;
    expect(thrown.faults.length).toBeGreaterThan(0);
    for (const fault of thrown.faults) expect(describeFault(fault)).toMatch(/^KI-\d{3} any\.yaml/);
  }
}

const SNIPPETS = [
  "{",
  "}",
  "[",
  "]",
  ":",
  "- ",
  "&a ",
  "*a",
  "!!set ",
  "'",
  '"',
  "\n",
  "\t",
  "---\n",
  "? ",
  "|",
  "0",
  "null",
  "~",
  "__proto__",
  "<<: *a",
  "\u0000",
  "1e999",
  ".nan",
];

const mutation = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  take: fc.nat(40),
  put: fc.oneof(fc.constantFrom(...SNIPPETS), fc.string({ maxLength: 12 })),
});

function mutated(text: string, { at, take, put }: { at: number; take: number; put: string }): string {
  const from = Math.floor(at * text.length);
  return text.slice(0, from) + put + text.slice(from + take);
}

describe("loading", () => {
  it("never throws anything but an InputError on a pattern file with pieces cut out and put in", () => {
    fc.assert(
      fc.property(fc.array(mutation, { minLength: 1, maxLength: 4 }), (mutations) =>
        loadsOrIsRefused(mutations.reduce(mutated, SOUND_TEXT)),
      ),
      { seed: 20_261_125, numRuns: 300 },
    );
  });

  it("nor on one cut short anywhere", () => {
    fc.assert(
      fc.property(fc.nat(SOUND_TEXT.length), (length) => loadsOrIsRefused(SOUND_TEXT.slice(0, length))),
      { seed: 450, numRuns: 100 },
    );
  });

  it("nor on any text at all", () => {
    fc.assert(fc.property(fc.string({ unit: "binary", maxLength: 200 }), loadsOrIsRefused), { seed: 7, numRuns: 500 });
  });

  it("nor on any plain value written as YAML", () => {
    fc.assert(fc.property(fc.json({ maxDepth: 4 }), loadsOrIsRefused), { seed: 11, numRuns: 300 });
  });

  it("nor on text nested without end", () => {
    loadsOrIsRefused("[".repeat(100_000));
    loadsOrIsRefused("- ".repeat(50_000));
  });

  it("nor on aliases that multiply", () => {
    const layers = Array.from({ length: 12 }, (_, n) => `a${n + 1}: &a${n + 1} [${`*a${n},`.repeat(9)}]`);
    loadsOrIsRefused(["a0: &a0 [x]", ...layers].join("\n"));
  });

  it("leaves the lint an answer for whatever it is given", () => {
    fc.assert(
      fc.property(mutation, (one) => {
        for (const fault of lintPatternText(mutated(SOUND_TEXT, one), "any.yaml")) expect(fault.what).not.toBe("");
      }),
      { seed: 99, numRuns: 150 },
    );
  });
});
