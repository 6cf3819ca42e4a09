import { describe, expect, it } from "vitest";
import { listLines } from "./lines.ts";
import { compareMarks, leadsTo, neighbour, openBefore, pastOptional, resumeAt } from "./position.ts";
import { SAMPLE, sampleMark, sampleTurnaround, type SampleAnswer } from "../kit-view/sample.ts";

const lines = (...given: SampleAnswer[]) => listLines(SAMPLE, sampleTurnaround(...given));

describe("where a turnaround goes on", () => {
  it("starts at the first line", () => {
    expect(resumeAt(lines(), "phone")).toBe(1);
  });

  it("goes on at the first open line after the last answer", () => {
    expect(resumeAt(lines({ key: "vent" }), "phone")).toBe(2);
  });

  it("stays on a line of which only part is answered", () => {
    expect(resumeAt(lines({ key: "vent" }, { key: "torch/torch-lights" }), "phone")).toBe(2);
  });

  it("goes back to what was passed over once nothing is open further on, and leaves optional lines alone", () => {
    const passed = lines({ key: "torch/torch-lights" }, { key: "torch/cells-date" }, { key: "desiccant" });
    expect(resumeAt(passed, "phone")).toBe(1);
    expect(openBefore(passed, 4)).toEqual([1]);
  });

  it("gives no line once every line that must be answered is", () => {
    const all = ["vent", "torch/torch-lights", "torch/cells-date", "desiccant"].map((key) => ({ key }));
    expect(resumeAt(lines(...all), "phone")).toBeUndefined();
  });

  it("follows this device's own last answer before another's", () => {
    const two = lines({ key: "vent", device: "phone" }, { key: "desiccant", device: "tablet" });
    expect(resumeAt(two, "phone")).toBe(2);
  });

  it("leaves out every optional line that follows the one left out", () => {
    expect(pastOptional(lines(), 2)).toBe(4);
    expect(pastOptional(lines(), 4)).toBeUndefined();
  });

  it("steps to the line before and after, and no further", () => {
    expect(neighbour(lines(), 1, "after")).toBe(2);
    expect(neighbour(lines(), 1, "before")).toBeUndefined();
    expect(neighbour(lines(), 4, "after")).toBeUndefined();
  });
});

describe("where an answer leads", () => {
  it("goes through the checks of a line before the next line", () => {
    const open = lines({ key: "vent" });
    expect(leadsTo(open, 2, "torch/torch-lights")).toEqual({ line: 2, ask: "torch/cells-date" });
  });

  it("offers an optional line in passing, then goes back to what was passed over", () => {
    const passed = lines({ key: "torch/torch-lights" });
    expect(leadsTo(passed, 2, "torch/cells-date")).toEqual({ line: 3 });
    expect(leadsTo(passed, 4, "desiccant")).toEqual({ line: 1 });
  });

  it("ends once nothing that must be answered is left", () => {
    const all = lines({ key: "vent" }, { key: "torch/torch-lights" }, { key: "torch/cells-date" });
    expect(leadsTo(all, 4, "desiccant")).toBeUndefined();
  });
});

describe("order of marks", () => {
  it("compares instants, not their text, then entries", () => {
    const utc = { ...sampleMark(1), at: "2026-03-14T09:00:00+00:00" };
    const later = { ...sampleMark(1), at: "2026-03-14T08:30:00-01:00" };
    expect(compareMarks(utc, later)).toBeLessThan(0);
    expect(compareMarks({ ...utc, entry: "a" }, { ...utc, entry: "b" })).toBeLessThan(0);
    expect(compareMarks(utc, utc)).toBe(0);
  });
});
