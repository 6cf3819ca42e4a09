import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { listLines, openAsk, stateOf, wordState } from "./lines.ts";
import { SAMPLE, sampleTurnaround } from "../kit-view/sample.ts";

const words = await fetchWords("en", "act");

describe("lines of a turnaround", () => {
  it("lists every line once, in the pattern's order, with one ask per check", () => {
    const lines = listLines(SAMPLE);
    expect(lines.map((line) => line.step.line)).toEqual([1, 2, 3, 4]);
    expect(lines[0]!.asks.map((ask) => ask.key)).toEqual(["vent"]);
    expect(lines[1]!.asks.map((ask) => ask.key)).toEqual(["torch/torch-lights", "torch/cells-date"]);
  });

  it("calls a line part answered until all its checks are", () => {
    const part = listLines(SAMPLE, sampleTurnaround({ key: "torch/torch-lights" }))[1]!;
    expect(stateOf(part)).toBe("part");
    expect(openAsk(part)?.key).toBe("torch/cells-date");
    const whole = sampleTurnaround({ key: "torch/torch-lights" }, { key: "torch/cells-date" });
    expect(stateOf(listLines(SAMPLE, whole)[1]!)).toBe("seen");
  });

  it("calls an act done, and what was looked at found right", () => {
    const lines = listLines(
      SAMPLE,
      sampleTurnaround({ key: "vent" }, { key: "torch/torch-lights" }, { key: "torch/cells-date" }),
    );
    expect(lines.slice(0, 3).map((line) => wordState(line, words))).toEqual(["done", "found right", "not answered"]);
  });

  it("lets the worst answer decide", () => {
    const mixed = sampleTurnaround(
      { key: "torch/torch-lights", answer: "not-possible" },
      { key: "torch/cells-date", answer: "wrong" },
    );
    expect(stateOf(listLines(SAMPLE, mixed)[1]!)).toBe("wrong");
    expect(stateOf(listLines(SAMPLE, mixed)[0]!)).toBe("unanswered");
  });
});
