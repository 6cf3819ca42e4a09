import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { sayTrend, sayTrendAhead, type Trend } from "./trend-words.ts";

const words = await fetchWords("en", "sheetWord");

const RISING: Trend = {
  kind: "rising",
  soundings: 4,
  from: 0,
  to: 600,
  rise: { p05: 0.0001, p50: 0.0002, p95: 0.0003 },
  ahead: 900,
  level: { p05: 0.952, p50: 1.1, p95: 1.249 },
};

describe("a trend in words", () => {
  it("says which way, from how many, and that it is no more than a trend", () => {
    expect(sayTrend(RISING, words)).toBe("Trend only: rising, by the last 4 soundings.");
    expect(sayTrend({ ...RISING, kind: "unclear" }, words)).toContain("neither rising nor falling clearly");
  });

  it("leads to a level with its doubt, in the person's own unit", () => {
    expect(sayTrendAhead(RISING, "metric", words)).toMatch(
      /110\u00a0cm \(95 to 130\) 15\u00a0min after the last sounding/,
    );
    expect(sayTrendAhead(RISING, "us", words)).toMatch(/43\u00a0in \(37 to 49\)/);
    expect(sayTrendAhead({ ...RISING, kind: "unclear" }, "metric", words)).toBeUndefined();
  });
});
