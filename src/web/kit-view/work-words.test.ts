import { fetchWords } from "#words";
import type { WorkLine } from "#readiness";
import { describe, expect, it } from "vitest";
import { sayWork } from "./work-words.ts";

const words = await fetchWords("en", "kitLine");

const task = (sort: string) => ({ sort }) as unknown as WorkLine["tasks"][number];

const prove = (...proveAt: readonly number[]) => ({ sort: "prove", proveAt }) as const;

describe("what a line of work is, in a few words", () => {
  it.each([
    [
      "a turnaround with two items to renew",
      ["renew", "turnaround", "renew"],
      undefined,
      "Turnaround; item to renew, 2",
    ],
    ["a muster", ["muster"], undefined, "Muster"],
    [
      "an opening that was planned, with the muster that it settles",
      ["muster"],
      "2026-12-14",
      "Planned opening; muster",
    ],
    ["an opening that was planned and settles nothing else", [], "2026-12-14", "Planned opening"],
    ["a planned opening that renews", ["renew"], "2026-12-14", "Item to renew"],
    ["a flush", [], undefined, "Flush"],
  ])("says %s", (_what, sorts, planned, said) => {
    expect(sayWork({ tasks: sorts.map(task), ...(planned && { planned }) }, words)).toBe(said);
  });

  it("says of a finding that was put right what is left: its proof, and at which lines", () => {
    expect(sayWork({ tasks: [prove(52)] }, words)).toBe("Prove at line 52 what was mended");
    expect(sayWork({ tasks: [prove(60, 52)] }, words)).toBe("Prove at lines 52, 60 what was mended");
    expect(sayWork({ tasks: [prove()] }, words)).toBe("Prove what was mended");
    expect(sayWork({ tasks: [task("mend"), prove(52)] }, words)).toBe(
      "Finding to mend; prove at line 52 what was mended",
    );
  });
});
