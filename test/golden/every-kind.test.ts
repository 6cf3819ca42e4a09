import { readFileSync } from "node:fs";
import { join } from "node:path";
import { validateEntry, type Entry } from "#log";
import { entryKinds, judgeBody } from "#readiness";
import { createStationFold } from "#station";
import { SMALL_PATTERN } from "#src/station/sample-station.ts";
import { describe, expect, it } from "vitest";

/*
 * A log with every kind of entry, and what it was folded into when each kind came into this file. A kind is for ever: lines
 * are added here, none is changed, and what stands in `fold.json` only grows by what a new kind says.
 */

const read = (name: string) => readFileSync(join(import.meta.dirname, "every-kind", name), "utf8");
const LINES = read("log.jsonl")
  .trimEnd()
  .split("\n")
  .map((line) => JSON.parse(line) as Entry);

describe("a log with every kind of entry", () => {
  it("has each kind that there is, and no other", () => {
    expect([...new Set(LINES.map(({ kind }) => kind))].sort()).toEqual([...entryKinds].sort());
  });

  it.each(LINES)("is judged good line by line: $kind, $id", (line) => {
    expect(() => validateEntry(line)).not.toThrow();
    expect(judgeBody(line)).toEqual([]);
  });

  it("is folded into what it always was", () => {
    const fold = createStationFold([SMALL_PATTERN]);
    fold.add(LINES);
    const { patterns: _patterns, reports, ...reading } = fold.read();
    expect(JSON.parse(JSON.stringify({ ...reading, reports: [...reports] }))).toEqual(JSON.parse(read("fold.json")));
  });
});
