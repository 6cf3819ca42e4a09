import { describe, expect, it } from "vitest";
import type { Pattern, Step } from "#kit";
import type { KitState } from "#readiness";
import { listLines } from "#web/act/lines.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import { SAMPLE, sampleTurnaround, type SampleAnswer } from "#web/kit-view/sample.ts";
import { asOne, doneTogether, leadsPast } from "./done-group.ts";

const [vent] = SAMPLE.stages[0]!.steps;
const plain = (line: number, more: Partial<Step> = {}): Step => ({ ...vent!, id: `s${line}`, line, ...more });
const STEPS = [
  plain(1, { withNext: true, cautions: ["heavy-lift"] }),
  plain(2, { withNext: true, cautions: ["pinch-points", "heavy-lift"] }),
  plain(3, { needs: { people: 2, minutes: 2, tools: ["jug"] } }),
  plain(4),
];
const pattern: Pattern = { ...SAMPLE, stages: [{ id: "rig", name: "Rig", steps: STEPS }] };

function at(...given: SampleAnswer[]) {
  const turnaround = sampleTurnaround(...given);
  const kit = { id: "k1", contents: {}, findings: [], turnarounds: [], turnaround } as unknown as KitState;
  return { open: { pattern, turnaround, kit } as unknown as OpenKit, lines: listLines(pattern, turnaround) };
}

function group(from: number, ...given: SampleAnswer[]): readonly number[] {
  const { open, lines } = at(...given);
  return doneTogether(open, lines, lines[from - 1]!).map(({ step }) => step.line);
}

describe("lines done in one go", () => {
  it("run from the line shown to the end of what the pattern links", () => {
    expect(group(1)).toEqual([1, 2, 3]);
    expect(group(2)).toEqual([2, 3]);
    expect(group(4)).toEqual([4]);
  });

  it("end before a line that is answered already, so that no answer is written over", () => {
    expect(group(1, { key: "s2" })).toEqual([1]);
    expect(group(1, { key: "s3" })).toEqual([1, 2]);
    expect(group(1, { key: "s1" })).toEqual([1]);
  });

  it("warn of everything before the first of them begins, and say all that is wanted at hand", () => {
    const { open, lines } = at();
    const { step } = asOne(doneTogether(open, lines, lines[0]!));
    expect(step.cautions).toEqual(["heavy-lift", "pinch-points"]);
    expect(step.needs).toMatchObject({ people: 2, tools: ["jug"] });
  });

  it("lead on past the last of them, never back into themselves", () => {
    const { open, lines } = at();
    expect(leadsPast(lines, doneTogether(open, lines, lines[0]!))).toEqual({ line: 4 });
    const last = at({ key: "s4" });
    expect(leadsPast(last.lines, doneTogether(last.open, last.lines, last.lines[0]!))).toBeUndefined();
  });
});
