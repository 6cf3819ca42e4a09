import { describe, expect, test } from "vitest";
import type { Entry } from "./entry.ts";
import { createFold, type Fold } from "./fold.ts";
import { idOf, makeEntry, makeStrike } from "./testing/entries.ts";

/** Reads a subject as the list of ids applied, and counts how often anything was applied. */
function listFold(): { fold: Fold<readonly string[]>; applied: () => number } {
  let applied = 0;
  const fold = createFold<readonly string[]>({
    init: () => [],
    apply: (ids, entry) => {
      applied += 1;
      return [...ids, entry.id];
    },
  });
  return { fold, applied: () => applied };
}

function readAll(...entries: readonly Entry[]): readonly string[] | undefined {
  const { fold } = listFold();
  fold.add(entries);
  return fold.state("kit:one");
}

describe("createFold", () => {
  test("applies entries in order, each once, whatever the order and number of arrivals", () => {
    const { fold } = listFold();
    fold.add([makeEntry(3), makeEntry(1)]);
    fold.add([makeEntry(2), makeEntry(3)]);
    expect(fold.state("kit:one")).toEqual([idOf(1), idOf(2), idOf(3)]);
    expect(fold.size).toBe(3);
    expect(fold.has(idOf(2))).toBe(true);
  });

  test("knows nothing of a subject without entries", () => {
    const { fold } = listFold();
    expect(fold.state("kit:one")).toBeUndefined();
    expect(fold.entries("kit:one")).toEqual([]);
    expect(fold.heads("kit:one")).toEqual([]);
    expect(fold.history("kit:one")).toBeUndefined();
  });

  test("applies a last entry once and re-reads one subject for an earlier one", () => {
    const { fold, applied } = listFold();
    const others = Array.from({ length: 50 }, (_, at) => makeEntry(100 + at, { subject: "kit:two" }));
    fold.add([makeEntry(1), makeEntry(2), makeEntry(4), ...others]);
    expect(applied()).toBe(53);
    expect(fold.add([makeEntry(5)])).toEqual(new Set(["kit:one"]));
    expect(applied()).toBe(54);
    fold.add([makeEntry(3)]);
    expect(applied()).toBe(54 + 5);
    expect(fold.add([makeEntry(3)])).toEqual(new Set());
    expect(applied()).toBe(54 + 5);
  });

  test("re-reads when an ancestor arrives after its descendant, although it comes last in order", () => {
    const child = makeEntry(1, { after: [idOf(9)], device: "device-2" });
    const fold = createFold<boolean>({
      init: () => false,
      apply: (seen, entry, history) => seen || history.knew(entry.id, idOf(9)),
    });
    fold.add([child]);
    expect(fold.state("kit:one")).toBe(false);
    fold.add([makeEntry(9)]);
    expect(fold.state("kit:one")).toBe(true);
  });
});

describe("strikes", () => {
  test("take an entry out, before or after it arrives", () => {
    expect(readAll(makeEntry(1), makeEntry(2), makeStrike(3, 1))).toEqual([idOf(2)]);
    expect(readAll(makeStrike(3, 1), makeEntry(2), makeEntry(1))).toEqual([idOf(2)]);
    const { fold } = listFold();
    for (const entry of [makeStrike(3, 1), makeEntry(2), makeEntry(1)]) fold.add([entry]);
    expect(fold.state("kit:one")).toEqual([idOf(2)]);
    expect(fold.struckBy("kit:one", idOf(1))?.id).toBe(idOf(3));
    expect(fold.entries("kit:one").map((entry) => entry.id)).toEqual([idOf(2)]);
    expect(fold.allEntries("kit:one")).toHaveLength(3);
  });

  test("LOG-6 can be struck, which brings the entry back, and so on", () => {
    expect(readAll(makeEntry(1), makeStrike(2, 1), makeStrike(3, 2))).toEqual([idOf(1)]);
    expect(readAll(makeEntry(1), makeStrike(2, 1), makeStrike(3, 2), makeStrike(4, 3))).toEqual([]);
  });

  test("hold when their device's clock is behind that of the struck entry", () => {
    expect(readAll(makeEntry(5), makeStrike(2, 5))).toEqual([]);
  });

  test("LOG-7 do not reach into another subject", () => {
    expect(readAll(makeEntry(1), makeStrike(2, 1, { subject: "kit:two" }))).toEqual([idOf(1)]);
  });

  test("one of two that is struck leaves the other standing", () => {
    expect(readAll(makeEntry(1), makeStrike(2, 1), makeStrike(3, 1), makeStrike(4, 2))).toEqual([]);
  });

  test("in a ring count for nothing, until one from outside undoes one of them", () => {
    const ring = [makeEntry(1), makeStrike(2, 3), makeStrike(3, 2), makeStrike(4, 1), makeStrike(5, 5)];
    expect(readAll(...ring)).toEqual([]);
    expect(readAll(makeEntry(1), makeStrike(2, 3), makeStrike(3, 4), makeStrike(4, 2))).toEqual([idOf(1)]);
    expect(readAll(...ring, makeStrike(6, 4))).toEqual([idOf(1)]);
  });
});

describe("heads and history", () => {
  test("the head is the newest entry nobody names; two after work done apart", () => {
    const { fold } = listFold();
    fold.add([makeEntry(1)]);
    expect(fold.heads("kit:one")).toEqual([idOf(1)]);
    fold.add([
      makeEntry(2, { after: [idOf(1)], device: "device-a" }),
      makeEntry(3, { after: [idOf(1)], device: "device-b" }),
    ]);
    expect(fold.heads("kit:one")).toEqual([idOf(2), idOf(3)]);
    expect(fold.history("kit:one")?.madeApart(idOf(2), idOf(3))).toBe(true);
    fold.add([makeEntry(4, { after: [idOf(2), idOf(3)], device: "device-b" })]);
    expect(fold.heads("kit:one")).toEqual([idOf(4)]);
    expect(fold.history("kit:one")?.knew(idOf(4), idOf(1))).toBe(true);
    expect(fold.history("kit:one")?.knew(idOf(1), idOf(4))).toBe(false);
  });

  test("at most the sixteen newest heads are named", () => {
    const { fold } = listFold();
    fold.add(Array.from({ length: 20 }, (_, at) => makeEntry(at, { device: `device-${at}` })));
    expect(fold.heads("kit:one")).toEqual(Array.from({ length: 16 }, (_, at) => idOf(at + 4)));
  });

  test("a device knew what it wrote itself, even where it did not name it", () => {
    const { fold } = listFold();
    fold.add([makeEntry(1), makeEntry(2), makeEntry(3, { device: "device-2" })]);
    const history = fold.history("kit:one");
    expect(history?.knew(idOf(2), idOf(1))).toBe(true);
    expect(history?.knew(idOf(1), idOf(2))).toBe(false);
    expect(history?.madeApart(idOf(2), idOf(3))).toBe(true);
    expect(history?.madeApart(idOf(2), idOf(2))).toBe(false);
    expect(history?.knew(idOf(2), idOf(77))).toBe(false);
    expect(history?.entry(idOf(3))?.device).toBe("device-2");
  });

  test("LOG-8 what is known does not depend on the clock", () => {
    const { fold } = listFold();
    fold.add([makeEntry(1, { after: [idOf(5)], device: "device-b" }), makeEntry(5, { device: "device-a" })]);
    expect(fold.history("kit:one")?.knew(idOf(1), idOf(5))).toBe(true);
  });

  test("a forged ring of names ends in an answer", () => {
    const { fold } = listFold();
    fold.add([
      makeEntry(1, { after: [idOf(3)], device: "a" }),
      makeEntry(2, { after: [idOf(1)], device: "b" }),
      makeEntry(3, { after: [idOf(2)], device: "c" }),
      makeEntry(4, { after: [idOf(3)], device: "d" }),
      makeEntry(5, { device: "e" }),
    ]);
    expect(fold.history("kit:one")?.knew(idOf(4), idOf(1))).toBe(true);
    expect(fold.history("kit:one")?.knew(idOf(4), idOf(5))).toBe(false);
  });

  test("reaches back over a chain of fifty thousand without running out of stack", () => {
    const chain = Array.from({ length: 50_000 }, (_, at) =>
      makeEntry(at, { device: `device-${at}`, after: at === 0 ? [] : [idOf(at - 1)] }),
    );
    const lastOnly = createFold<string>({ init: () => "", apply: (_, entry) => entry.id });
    lastOnly.add(chain);
    expect(lastOnly.history("kit:one")?.knew(idOf(49_999), idOf(0))).toBe(true);
  });
});
