import { describe, expect, it } from "vitest";
import { listLines } from "#web/act/lines.ts";
import { SAMPLE, sampleTurnaround } from "#web/kit-view/sample.ts";
import { nextFree } from "./free-line.ts";

const barring =
  (...steps: readonly string[]) =>
  ({ step }: { readonly step: { readonly id: string } }) =>
    steps.includes(step.id);

describe("where the work goes on past a line that is stopped", () => {
  const lines = listLines(SAMPLE, sampleTurnaround());

  it("is the next open line that nothing bars", () => {
    expect(nextFree(lines, 1, barring("vent", "torch"))).toBe(3);
  });

  it("is an earlier one where none is left behind it, and nowhere where all is barred", () => {
    expect(nextFree(lines, 4, barring("desiccant"))).toBe(1);
    expect(nextFree(lines, 1, () => true)).toBeUndefined();
  });
});
