import { describe, expect, test } from "vitest";
import { emptyChain, extendChain, type Entry, type KeptEntry } from "#log";
import { Judge } from "../../scripts/torture-judge.ts";
import type { BatchMark, LeftBehind } from "../../scripts/torture-target.ts";
import { EntryMaker } from "./sample-log.ts";

const make = new EntryMaker(1);
const batch = [1, 2, 3].map(() => make.next({ body: { batch: 1, of: 3 } }));
const kept = extendChain(emptyChain("harbour-1"), batch, "2027-02-01T00:00:00.000Z");

function leaving(entries: readonly KeptEntry[], photos: readonly string[] = []): LeftBehind {
  return {
    since: async (cursor) => entries.filter((one) => one.seq > (cursor[one.entry.place] ?? 0)),
    photo: async (hash) => (photos.includes(hash) ? { hash, mime: "image/png", bytes: new Uint8Array() } : undefined),
    integrity: async () => "ok",
  };
}

function newJudge(acknowledged: readonly Entry[]): Judge {
  const judge = new Judge((entry) => entry.body as BatchMark);
  judge.noteSent(batch);
  judge.noteAcknowledged(acknowledged);
  return judge;
}

describe("the judge of the torture", () => {
  test("finds nothing where all is kept, at once and bit by bit", async () => {
    const judge = newJudge(batch);
    expect(await judge.judge(leaving(kept))).toEqual([]);
    expect(await judge.judge(leaving(kept))).toEqual([]);
    judge.startOver();
    expect(await judge.judge(leaving(kept))).toEqual([]);
    expect([judge.kept, judge.acknowledged]).toEqual([3, 3]);
  });

  test("takes no offence at a batch that was kept and never acknowledged, or neither", async () => {
    expect(await newJudge([]).judge(leaving(kept))).toEqual([]);
    expect(await newJudge([]).judge(leaving([]))).toEqual([]);
  });

  test.each([
    ["a lost acknowledged batch", [], /acknowledged entry .* is lost/],
    ["half a batch", kept.slice(0, 2), /batch 1 is half kept: 2 of 3/],
    [
      "an entry kept twice",
      extendChain(emptyChain("harbour-1"), [...batch, ...batch], "2027-02-01T00:00:00Z"),
      /twice/,
    ],
    ["a gap", kept.filter((one) => one.seq !== 2), /chain of harbour-1 breaks at 3/],
    ["a changed entry", kept.map((one) => ({ ...one, entry: { ...one.entry, by: "x" } })), /not as it was sent/],
  ])("finds %s", async (_, left, fault) => {
    expect((await newJudge(batch).judge(leaving(left))).join("\n")).toMatch(fault);
  });

  test("finds a lost photo, but only one that was acknowledged", async () => {
    const judge = newJudge([]);
    judge.notePhoto("aa", true);
    judge.notePhoto("bb", true);
    judge.notePhoto("cc", false);
    expect(await judge.judge(leaving([], ["aa"]))).toEqual(["acknowledged photo bb is lost"]);
  });
});
