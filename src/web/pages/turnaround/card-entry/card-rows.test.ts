import { describe, expect, it } from "vitest";
import { cardRows, isFilled, isTicked } from "./card-rows.ts";
import { SAMPLE, sampleMark, sampleTurnaround, type SampleAnswer } from "#web/kit-view/sample.ts";

const rows = (...given: SampleAnswer[]) => cardRows(SAMPLE, sampleTurnaround(...given), {});

describe("boxes of a card", () => {
  it("numbers them as printed, one for each check", () => {
    expect(rows().map((row) => [row.label, row.kind])).toEqual([
      ["1", "answer"],
      ["2a", "answer"],
      ["2b", "answer"],
      ["3", "answer"],
      ["4", "fitting"],
      ["4", "answer"],
    ]);
  });

  it("knows what is filled already", () => {
    const contents = {
      desiccant: { item: "desiccant", fitted: "2026-03-14", quantity: 1, turnaround: "t1", mark: sampleMark(1) },
    };
    const filled = cardRows(SAMPLE, sampleTurnaround({ key: "vent" }), contents).filter(isFilled);
    expect(filled.map((row) => row.key)).toEqual(["vent", "desiccant fits desiccant"]);
  });

  it("lets a stroke fill only what carries no reading", () => {
    expect(
      rows()
        .filter(isTicked)
        .map((row) => row.key),
    ).toEqual(["vent", "torch/torch-lights", "spare", "desiccant fits desiccant", "desiccant"]);
  });

  it("gives a step with a clock a box for it", () => {
    const [first, ...rest] = SAMPLE.stages;
    const step = { ...first!.steps[0]!, timer: { kind: "wait", atLeast: 120 } as const };
    const pattern = { ...SAMPLE, stages: [{ ...first!, steps: [step] }, ...rest] };
    expect(cardRows(pattern, sampleTurnaround(), {})[0]).toMatchObject({ label: "1", kind: "timer", done: false });
  });
});
