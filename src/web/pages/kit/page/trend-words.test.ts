import { describe, expect, it } from "vitest";
import { SAMPLE } from "../../../kit-view/sample.ts";
import { limitsOf, sayTrend } from "./trend-words.ts";

const at = (month: number) => `2026-0${month}-14T09:00:00+00:00`;
const trend = (...values: number[]) => ({
  what: "prime" as const,
  points: values.map((value, index) => ({ at: at(index + 1), turnaround: `t${index}`, value })),
});

describe("a trend in words", () => {
  it("says the last reading, how many there are, and between what they have been", () => {
    expect(sayTrend(trend(24, 31, 55))).toBe(
      "Last 55 s, on 14 Mar 2026. 3 since 14 Jan 2026, from 24 s to 55 s. Too few runs to tell a trend.",
    );
  });

  it("says so where they were all alike, where there is one, and where there is none", () => {
    expect(sayTrend(trend(30, 30))).toBe(
      "Last 30 s, on 14 Feb 2026. 2 since 14 Jan 2026, always 30 s. Too few runs to tell a trend.",
    );
    expect(sayTrend(trend(30))).toBe("Last 30 s, on 14 Jan 2026. It is the only one.");
    expect(sayTrend(trend())).toBe("None measured yet.");
  });
});

describe("the lines a trend is held to", () => {
  it("come from the pattern's timers", () => {
    const [stage] = SAMPLE.stages;
    const [step] = stage!.steps;
    const timed = { ...step!, timer: { kind: "prime", atMost: 60 } as const };
    const pattern = { ...SAMPLE, stages: [{ ...stage!, steps: [timed] }] };
    expect(limitsOf("prime", pattern)).toEqual([{ value: 60, label: "At most 60 s" }]);
    expect(limitsOf("pulls", pattern)).toEqual([]);
  });

  it("come from the pattern's proof for delivery, and are none where it has no pump curve", () => {
    expect(limitsOf("delivery", SAMPLE)).toEqual([]);
    const hydraulics = {
      pump: { curve: [] },
      discharge: { length: 8, bore: 0.05, fittings: 1 },
      proof: { grounds: 0.6, notes: 0.85 },
    };
    expect(limitsOf("delivery", { ...SAMPLE, hydraulics }).map(({ label }) => label)).toEqual([
      "Noted below 85.0 %",
      "Grounded below 60.0 %",
    ]);
  });
});
