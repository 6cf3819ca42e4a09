import { isInputError } from "#base";
import { describe, expect, test } from "vitest";
import { emptyChain, extendChain } from "./chain.ts";
import { endOfRun, readRun } from "./run.ts";
import { makeEntry } from "./testing/entries.ts";

const entries = [1, 2, 3, 4, 5].map((number) => makeEntry(number));
const kept = extendChain(emptyChain("harbour"), entries, "2027-02-01T00:00:00.000Z");
const end = { seq: 5, hash: kept[4]!.hash };

describe("a run of lines", () => {
  test("leads to its end from any head before it", () => {
    expect(endOfRun({ before: emptyChain("harbour"), lines: kept })).toEqual(end);
    expect(endOfRun({ before: kept[2]!, lines: kept.slice(3) })).toEqual(end);
  });

  test.each([
    ["a line changed", kept.map((one) => (one.seq === 4 ? { ...one, entry: { ...one.entry, by: "x" } } : one))],
    ["a line left out", kept.filter(({ seq }) => seq !== 4)],
    ["two lines exchanged", [kept[2]!, kept[4]!, kept[3]!]],
    ["a line of another place", [kept[2]!, { ...kept[3]!, entry: { ...kept[3]!.entry, place: "elsewhere" } }]],
    ["nothing", []],
  ])("leads nowhere with %s", (_, lines) => {
    const before = lines[0] === kept[2] ? kept[1]! : emptyChain("harbour");
    expect(endOfRun({ before, lines })).toBeUndefined();
  });

  test("is read as it was sent, and refused where a part is none", () => {
    expect(readRun(JSON.parse(JSON.stringify(kept)) as unknown[], "lines")).toEqual(kept);
    for (const poor of [null, 7, { ...kept[0], seq: "1" }, { ...kept[0], received: "today" }, { entry: entries[0] }]) {
      expect(faultsOf(() => readRun([poor], "lines"))).toEqual(["LG-160 lines[0]"]);
    }
    expect(faultsOf(() => readRun([{ ...kept[0], entry: {} }], "lines"))[0]).toMatch(/^LG-\d+ lines\[0\]\.entry/);
  });
});

function faultsOf(act: () => unknown): readonly string[] {
  try {
    act();
    return [];
  } catch (cause) {
    return isInputError(cause) ? cause.faults.map(({ code, field }) => `${code} ${field}`) : [String(cause)];
  }
}
