import { describe, expect, it } from "vitest";
import type { Check } from "#kit";
import { fetchWords } from "#words";
import { readCell, readClockCell, readFittingCell, type Cell } from "./card-cell.ts";
import { sampleCheck } from "#web/kit-view/sample.ts";

const words = await fetchWords("en", "turnaroundRecord");
const around = { today: "2026-03-14" } as const;
const cell = (check: string | undefined, text: string) =>
  readCell(check === undefined ? undefined : sampleCheck(check), text, around);
const meaning = (check: string | undefined, text: string) => {
  const read = cell(check, text);
  return read.kind === "read" ? read.meaning : read.fault(words);
};
const faultOf = (read: Cell<unknown>) => (read.kind === "fault" ? read.fault(words) : undefined);
const seal = (text: string) => readCell(sampleCheck("seal"), text, { ...around, recorded: "00417" });

const gauge = (text: string) => readCell({ ...sampleCheck("number"), reads: "quarters" } as Check, text, around);

describe("boxes of a filled card", () => {
  it("reads the letters", () => {
    expect(meaning("torch-lights", "s")).toEqual({ answer: "seen" });
    expect(meaning(undefined, "W")).toEqual({ answer: "wrong" });
    expect(meaning("torch-lights", "n no torch here")).toEqual({ answer: "not-possible", why: "no torch here" });
  });

  it("never takes an empty or doubtful box for an answer", () => {
    for (const text of ["", "ok", "x", "yes", "seen"]) expect(cell("torch-lights", text).kind).toBe("fault");
    expect(meaning("torch-lights", "n")).toContain("type why");
  });

  it("lets a reading answer by its limits, and does not take a bare s for one", () => {
    expect(meaning("cord", "55")).toMatchObject({ answer: "seen", value: { text: "55 cm" } });
    expect(meaning("cord", "0.4 m")).toMatchObject({ answer: "wrong" });
    expect(meaning("bands", "3")).toMatchObject({ answer: "wrong", value: { count: 3 } });
    expect(meaning("number", "07 / 07")).toMatchObject({ answer: "seen" });
    expect(meaning("cells-date", "2027-02")).toMatchObject({ answer: "seen", value: { date: "2027-02" } });
    for (const check of ["cord", "bands", "number", "cells-date"]) expect(cell(check, "s").kind).toBe("fault");
  });

  it("reads both sides of a gauge in quarters, parted by a stroke with blanks, and refuses what no gauge reads", () => {
    expect(gauge("3/4 / 3/4")).toMatchObject({ meaning: { answer: "seen", value: { first: "3/4", second: "3/4" } } });
    expect(gauge("full / 1/2")).toMatchObject({ meaning: { answer: "wrong" } });
    for (const text of ["9/9 / 9/9", "3/4", "5/4 / 5/4"])
      expect(faultOf(gauge(text))).toContain("Type both as 1/2 / 3/4");
  });

  it("takes s for a look at what is measured when new", () => {
    const letters = { ...sampleCheck("cord"), once: true } as Check;
    expect(readCell(letters, "s", around)).toMatchObject({ meaning: { answer: "seen" } });
    expect(readCell(letters, "0.4 m", around)).toMatchObject({ meaning: { answer: "wrong" } });
  });

  it("holds a seal's number against the record", () => {
    expect(seal("00417")).toMatchObject({ meaning: { answer: "seen", value: { first: "00417", second: "00417" } } });
    expect(seal("00471")).toMatchObject({ meaning: { answer: "wrong" } });
    expect(seal("00471 / 00471")).toMatchObject({ meaning: { answer: "wrong" } });
    expect(faultOf(seal(""))).toBe("Type what was read: the seal. Or w, or n and why.");
  });

  it("refuses dates and numbers that are none", () => {
    expect(cell("cells-date", "2027-02-30").kind).toBe("fault");
    expect(cell("bands", "-1").kind).toBe("fault");
    expect(cell("number", "07 /").kind).toBe("fault");
  });
});

describe("boxes of clocks and of things fitted", () => {
  it("reads how long, and refuses less than was asked", () => {
    const wait = { kind: "wait", atLeast: 120 } as const;
    expect(readClockCell(wait, "2 min 5 s")).toEqual({
      kind: "read",
      meaning: { kind: "time", seconds: 125 },
    });
    expect(readClockCell(wait, "130").kind).toBe("read");
    expect(faultOf(readClockCell(wait, "90 s"))).toBe("At least 2\u00a0min is asked there.");
    expect(readClockCell(wait, "").kind).toBe("fault");
  });

  it("reads a prime of any length, and pulls by number", () => {
    expect(readClockCell({ kind: "prime", atMost: 60 }, "75 s").kind).toBe("read");
    expect(readClockCell({ kind: "pulls", atMost: 6 }, "3")).toMatchObject({ meaning: { pulls: 3 } });
    expect(readClockCell({ kind: "pulls", atMost: 6 }, "some").kind).toBe("fault");
  });

  it("wants the printed date where the item carries one", () => {
    expect(readFittingCell(false, "s")).toEqual({ kind: "read", meaning: {} });
    expect(readFittingCell(true, "s").kind).toBe("fault");
    expect(readFittingCell(true, "2028-09")).toEqual({ kind: "read", meaning: { printed: "2028-09" } });
  });
});
