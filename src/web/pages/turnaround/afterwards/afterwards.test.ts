import { describe, expect, it } from "vitest";
import type { Pattern } from "#kit";
import { listLines } from "#web/act/lines.ts";
import { SAMPLE, sampleTurnaround, type SampleAnswer } from "#web/kit-view/sample.ts";
import { afterwardsAt } from "./afterwards.ts";

const TOLD = "Couple it and listen for the click.";
const [vent] = SAMPLE.stages[0]!.steps;
const [first, second] = SAMPLE.checks.map(({ id }) => id);
const step = { ...vent!, id: "part", line: 1, checks: [first!, second!], afterwards: TOLD };
const pattern: Pattern = { ...SAMPLE, stages: [{ id: "examine", name: "Examine", steps: [step] }] };

function line(...given: SampleAnswer[]) {
  return listLines(pattern, sampleTurnaround(...given))[0]!;
}

describe("what is done after the answers of a line", () => {
  it("waits while another check of the line is open", () => {
    const shown = line();
    expect(afterwardsAt(shown, [shown.asks[0]!])).toBeUndefined();
  });

  it("stands at the last check, whichever that is", () => {
    const shown = line({ key: `part/${second}` });
    expect(afterwardsAt(shown, [shown.asks[0]!])).toBe(TOLD);
    const other = line({ key: `part/${first}` });
    expect(afterwardsAt(other, [other.asks[1]!])).toBe(TOLD);
  });

  it("stands where one tap answers all that is open", () => {
    const shown = line();
    expect(afterwardsAt(shown, shown.asks)).toBe(TOLD);
  });
});
