import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { stillToSay } from "./still-to-say.ts";

const words = { handOver: await fetchWords("en", "handOver"), standing: await fetchWords("en", "standing") };

const COUNTED = [{ item: "line", mode: "gone" }] as unknown as Parameters<typeof stillToSay>[1];
const NO = { salt: "no", oil: "no", sewage: "no", fuel: "no" } as const;
const said = new Map();

describe("a return that cannot be written yet", () => {
  it("says what is still to be said, in the order of the page", () => {
    expect(stillToSay({ met: { salt: "yes" }, said }, COUNTED, words)).toEqual([
      "yes or no to oil, sewage, fuel",
      "when it last pumped",
      "whether all is there",
    ]);
    expect(stillToSay({ met: NO, counting: "some", said }, COUNTED, words)).toEqual([
      "of each thing counted, whether it is there, and what is wrong",
    ]);
  });

  it("says nothing once all is said; where nothing is counted, no count is asked", () => {
    expect(stillToSay({ met: NO, counting: "all", said }, COUNTED, words)).toEqual([]);
    expect(stillToSay({ met: NO, said }, [], words)).toEqual([]);
  });
});
