import { isInputError } from "#base";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { canonicalText } from "./canonical.ts";
import type { Entry } from "./entry.ts";
import { idOf, makeEntry } from "./testing/entries.ts";
import { validateEntry } from "./validate.ts";

/** The entry, or the faults; anything else thrown is a fault of ours. */
function judge(given: unknown): Entry | "refused" {
  try {
    return validateEntry(given);
  } catch (thrown) {
    if (!isInputError(thrown)) throw thrown;
    expect(thrown.faults.length).toBeGreaterThan(0);
    for (const fault of thrown.faults) {
      for (const text of [fault.code, fault.field, fault.got, fault.allowed, fault.remedy]) expect(text).not.toBe("");
    }
    return "refused";
  }
}

const field = fc.constantFrom(
  "id",
  "place",
  "subject",
  "kind",
  "at",
  "by",
  "device",
  "pattern",
  "after",
  "body",
  "more",
);

describe.each([20_270_314, 83])("laws of judging an entry, seed %i", (seed) => {
  test("whatever arrives is an entry or is refused with faults that say everything", () => {
    const anything = fc.anything({ withBigInt: true, withDate: true, withNullPrototype: true, maxDepth: 4 });
    fc.assert(
      fc.property(anything, (given) => {
        expect(judge(given)).toBe("refused");
      }),
      { seed, numRuns: 300 },
    );
  });

  test("a good entry with one field exchanged is refused, or can be written and read back as it is", () => {
    fc.assert(
      fc.property(field, fc.anything({ maxDepth: 3, withBigInt: true }), (name, value) => {
        const judged = judge({ ...makeEntry(1, { after: [idOf(7)] }), [name]: value });
        if (judged === "refused") return;
        const text = canonicalText(judged);
        expect(judge(JSON.parse(text))).not.toBe("refused");
        expect(canonicalText(judge(JSON.parse(text)))).toBe(text);
      }),
      { seed, numRuns: 500 },
    );
  });
});
