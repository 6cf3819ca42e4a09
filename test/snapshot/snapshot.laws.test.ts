import { demoEntries } from "#demo";
import type { Entry, PlaceChain } from "#log";
import { boardOf, createStationFold, snapshotMark, snapshotOf } from "#station";
import { readPatternFolders } from "#store/patterns";
import { describe, expect, test } from "vitest";

const { patterns } = readPatternFolders(["patterns"]);
const demo = demoEntries({ patterns, today: "2026-11-28", seed: 7 });
const AT = "2026-11-28T12:00:00Z";
const HEADS: readonly PlaceChain[] = [{ place: "north", seq: 1, hash: "0".repeat(64) }];

function foldOf(lines: readonly Entry[]) {
  const fold = createStationFold(patterns);
  fold.add(lines);
  return fold;
}

function size(lines: readonly Entry[]): number {
  return JSON.stringify(snapshotOf(foldOf(lines), HEADS, AT)).length;
}

/** As it goes over the wire. */
function sent<Value>(value: Value): Value {
  return JSON.parse(JSON.stringify(value)) as Value;
}

describe("a snapshot of the demo station's two years", () => {
  const whole = snapshotOf(foldOf(demo), HEADS, AT);

  test.each([0, 1, 40, 777, 5000, 9001, demo.length - 3, demo.length])(
    "made after %i lines, with the lines after it, says what all lines say",
    (split) => {
      const base = sent(snapshotOf(foldOf(demo.slice(0, split)), HEADS, AT));
      const fold = createStationFold(patterns, base);
      for (let at = split; at < demo.length; at += 311) fold.add(demo.slice(at, Math.min(demo.length, at + 311)));
      expect(snapshotMark(sent(snapshotOf(fold, HEADS, AT)))).toBe(snapshotMark(whole));
    },
  );

  test.each([3000, 7000, 11_000, demo.length])(
    "of %i lines gives every kit the standing that its lines give it",
    (end) => {
      const lines = demo.slice(0, end);
      const fold = foldOf(lines);
      const now = lines.at(-1)!.at;
      const early = createStationFold(patterns, sent(snapshotOf(fold, HEADS, AT)));
      expect(boardOf(early.read(), now).standings).toEqual(boardOf(fold.read(), now).standings);
    },
  );

  test("is the same whatever the order in which the lines came", () => {
    const mixed = demo.toSorted((one, other) => (one.id.slice(-6) < other.id.slice(-6) ? -1 : 1));
    expect(snapshotMark(snapshotOf(foldOf(mixed), HEADS, AT))).toBe(snapshotMark(sent(whole)));
  });

  test("is another when one line is", () => {
    const changed = demo.map((line) =>
      line.kind === "kit-enrolled" && line.subject === demo.findLast(({ kind }) => kind === "kit-enrolled")!.subject
        ? { ...line, body: { ...(line.body as object), name: "Another" } }
        : line,
    );
    expect(snapshotMark(snapshotOf(foldOf(changed), HEADS, AT))).not.toBe(snapshotMark(whole));
  });

  test("grows with the kits and not with the years", () => {
    expect(size(demo)).toBeLessThan(1.6 * size(demo.slice(0, demo.length / 2)));
  });
});
