import { fetchWords, ENGLISH } from "#words";
import { describe, expect, it } from "vitest";
import { SAMPLE } from "#web/kit-view/sample.ts";
import { isTaken, limitsOf, sayCause, sayCauseBasis, saySince, sayTrend } from "./trend-words.ts";

const words = await fetchWords("en", "trends");

const at = (month: number) => `2026-0${month}-14T09:00:00+00:00`;
const trend = (...values: number[]) => ({
  what: "prime" as const,
  points: values.map((value, index) => ({ at: at(index + 1), turnaround: `t${index}`, value })),
});

describe("a trend in words", () => {
  it("says the last reading, how many there are, and between what they have been", () => {
    expect(sayTrend(trend(24, 31, 55), "metric", { trends: words, standing: ENGLISH.standing })).toBe(
      "Last 55 s, on 14 Mar 2026. 3 since 14 Jan 2026, from 24 s to 55 s. Too few runs to tell a trend.",
    );
  });

  it("says so where they were all alike, where there is one, and where there is none", () => {
    expect(sayTrend(trend(30, 30), "metric", { trends: words, standing: ENGLISH.standing })).toBe(
      "Last 30 s, on 14 Feb 2026. 2 since 14 Jan 2026, always 30 s. Too few runs to tell a trend.",
    );
    expect(sayTrend(trend(30), "metric", { trends: words, standing: ENGLISH.standing })).toBe(
      "Last 30 s, on 14 Jan 2026. It is the only one.",
    );
    expect(sayTrend(trend(), "metric", { trends: words, standing: ENGLISH.standing })).toBe("None measured yet.");
  });
});

describe("a trend that a kit may have", () => {
  const [stage] = SAMPLE.stages;
  const pulled = { ...stage!.steps[0]!, timer: { kind: "pulls", atMost: 6 } as const };
  const corded = { ...SAMPLE, stages: [{ ...stage!, steps: [pulled] }] };
  const plugged = { ...SAMPLE, stages: [] };
  const pulls = { what: "pulls", points: [] } as const;

  it("has no pulls where there is no cord, nor a prime where nothing is primed, unless some were told of", () => {
    expect([isTaken(pulls, corded), isTaken(pulls, plugged), isTaken(trend(), plugged)]).toEqual([true, false, false]);
    expect(isTaken(trend(30), plugged)).toBe(true);
    expect(isTaken({ what: "delivery", points: [] }, plugged)).toBe(true);
  });
});

describe("the lines a trend is held to", () => {
  it("come from the pattern's timers", () => {
    const [stage] = SAMPLE.stages;
    const [step] = stage!.steps;
    const timed = { ...step!, timer: { kind: "prime", atMost: 60 } as const };
    const pattern = { ...SAMPLE, stages: [{ ...stage!, steps: [timed] }] };
    expect(limitsOf("prime", pattern, "metric", words)).toEqual([{ value: 60, label: "At most 60 s" }]);
    expect(limitsOf("pulls", pattern, "metric", words)).toEqual([]);
  });

  it("come from the pattern's proof for delivery, and are none where it has no pump curve", () => {
    expect(limitsOf("delivery", SAMPLE, "metric", words)).toEqual([]);
    const hydraulics = {
      pump: { curve: [] },
      discharge: { length: 8, bore: 0.05, fittings: 1 },
      proof: { grounds: 0.6, notes: 0.85 },
    };
    expect(limitsOf("delivery", { ...SAMPLE, hydraulics }, "metric", words).map(({ label }) => label)).toEqual([
      "Noted below 85.0 %",
      "Grounded below 60.0 %",
    ]);
  });
});

describe("what may be behind a trend", () => {
  const signal = { what: "prime", since: at(5), before: 24, after: 36.4, likely: [], findings: 0 } as const;

  it("says since about when, and what it was before and is now", () => {
    expect(saySince(signal, "metric", words)).toBe("Since about 14 May 2026: 36 s rather than 24 s, in the middle.");
    expect(saySince({ ...signal, what: "pulls", before: 2, after: 3.5 }, "metric", words)).toBe(
      "Since about 14 May 2026: 3.5 pulls rather than 2.0 pulls, in the middle.",
    );
  });

  it("says how likely each cause is as times of ten, and what that rests on", () => {
    const cause = { item: SAMPLE.items[0]!, mode: SAMPLE.modes[0]!, chance: 0.44, checks: [] };
    expect(sayCause(cause, words)).toBe("Torch does not light: about 4 in 10");
    expect(sayCauseBasis(signal, words)).toMatch(/judgement; no finding/);
    expect(sayCauseBasis({ ...signal, findings: 3 }, words)).toMatch(/and 3 findings on kits of it/);
  });
});
