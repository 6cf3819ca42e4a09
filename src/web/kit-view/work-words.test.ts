import { fetchWords } from "#words";
import type { WorkLine } from "#readiness";
import { describe, expect, it } from "vitest";
import { sayWork } from "./work-words.ts";

const words = await fetchWords("en", "kitLine");

const task = (sort: string) => ({ sort }) as unknown as WorkLine["tasks"][number];

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
});
