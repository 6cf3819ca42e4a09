import { describe, expect, it } from "vitest";
import { daysIn, wholeSpan } from "./span-days.ts";

describe("an interval in whole weeks or months", () => {
  it("is never longer than it was worked out", () => {
    for (const days of [1, 3.9, 13.9, 14, 20, 45, 60, 91, 92, 125, 364, 366, 900])
      expect([days, daysIn(wholeSpan(days)) <= days]).toEqual([days, true]);
  });

  it("is in days to a fortnight, then in weeks to half a year, then in months, so that no step is a third of it", () => {
    expect([5.6, 20, 59, 88].map(wholeSpan)).toEqual([{ days: 5 }, { days: 14 }, { days: 56 }, { days: 84 }]);
    expect([182, 200, 800].map(wholeSpan)).toEqual([{ days: 182 }, { months: 6 }, { months: 26 }]);
    for (let days = 3; days < 1500; days *= 1.01) expect(daysIn(wholeSpan(days)) / days).toBeGreaterThan(2 / 3);
  });
});
