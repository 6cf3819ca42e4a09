import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { sayApart, sayBest, sayCosts, sayEvidence, sayLong, sayStanding, sayVerdict } from "./interval-words.ts";

const words = await fetchWords("en", "patternInterval");

const YEAR = { months: 12 };

describe("how often to open, in words", () => {
  it("says what holds now and whose rule it is", () => {
    expect(sayStanding({ standing: YEAR, manual: YEAR }, words)).toBe(
      "It is to be opened every year, as the unit's manual has it.",
    );
    expect(sayStanding({ standing: { months: 8 }, manual: YEAR }, words)).toBe(
      "It is to be opened every 8 months; the unit's manual has 1 year.",
    );
  });

  it("says beside it how far apart openings really were", () => {
    const apart = { count: 31, median: 75, quartiles: [62, 95], longest: 120 } as const;
    expect(sayApart({ apart }, words)).toBe(
      `By the log it is really opened about every ${sayLong(75, words)}: half of the 31 times from one opening of a kit to its next lie between ${sayLong(62, words)} and ${sayLong(95, words)}.`,
    );
    expect(sayApart({}, words)).toBe(
      "No kit of it was opened twice yet: how often it is really opened cannot be told.",
    );
  });

  it("says what it would take where the log does not tell, and that the manual stands first", () => {
    expect(sayVerdict({ kind: "cannot-tell", openings: 40 }, YEAR, words)).toMatch(
      /it would take about 40 more openings\.$/,
    );
    expect(sayVerdict({ kind: "cannot-tell", openings: 4000 }, YEAR, words)).toMatch(
      /it would take more than 4000 more openings/,
    );
    expect(sayVerdict({ kind: "manual-stands", cleanOpenings: 30 }, YEAR, words)).toMatch(/the manual stands first/);
    expect(sayVerdict({ kind: "shorter", every: { months: 7 } }, YEAR, words)).toBe(
      "Open it every 7 months rather than every year.",
    );
    expect(sayVerdict({ kind: "shorter", every: { days: 42 } }, YEAR, words)).toBe(
      "Open it every 6 weeks rather than every year.",
    );
    expect(sayVerdict({ kind: "shorter", every: { days: 12 } }, { days: 7 }, words)).toBe(
      "Open it every 12 days rather than every 7 days.",
    );
  });

  it("says a range, never a bare figure, and no more years than anybody can know of", () => {
    const best = { shortest: 200, middle: 400, longest: 90_000 };
    expect(sayBest({ best, bound: 0, evidence: {} }, words)).toBe(
      "By these figures the best lies between 7 months and more than ten years, nine times in ten.",
    );
    expect([20, 200, 900].map((days) => sayLong(days, words))).toEqual(["20 days", "7 months", "2.5 years"]);
  });

  it("says at the range itself where it goes beyond what any kit was seen to lie closed, and what is not proposed", () => {
    const told = (longest: number) => {
      const apart = { count: 9, median: 60, quartiles: [50, 70] as const, longest: 80 };
      const best = { shortest: 50, middle: 60, longest };
      return sayBest({ best, bound: 120, evidence: { apart } }, words);
    };
    expect(told(80)).toMatch(/nine times in ten\.$/);
    expect(told(81)).toMatch(/No kit lay closed for longer than .* nothing seen bears that out\. Nothing longer than/);
    expect(sayVerdict({ kind: "not-seen" }, YEAR, words)).toMatch(/^Keep to every year: .* no kit of it has lain/);
  });

  it("says what a year is made of, and leaves out what nobody stated", () => {
    const costs = { tests: 4.25, parts: 1, wear: 0.5, notReady: 0, night: 6 };
    expect(sayCosts({ costs }, { parts: 1 }, words)).toBe(
      "At the likeliest best, one kit and year weigh as much as 4.3\u00a0hours opening it, 1.0\u00a0hours in parts, and 6.0\u00a0hours for nights on which it fails.",
    );
    expect(sayCosts({ costs }, {}, words)).not.toMatch(/parts|wear|without/);
  });

  it("says all that it rests on", () => {
    const evidence = {
      kits: 12,
      looks: 80,
      found: 1,
      lay: 80 * 365.25 * 86_400,
      rate: { mean: 0, p05: 1e-10, p50: 0, p95: 2e-9 },
      asked: 80,
      failing: { mean: 0.031, p05: 0.006, p50: 0.025, p95: 0.07 },
      calls: 1,
      callsPerYear: { mean: 0.02, p05: 0.0035, p50: 0.016, p95: 0.082 },
      hours: 2.5,
      out: 41_400,
      timed: 0,
      starts: 2,
    };
    expect(sayEvidence(evidence, { parts: 1 }, words)).toEqual([
      "80 openings of 12 kits after lying closed for 80.0 years in all: 1 fault that would have stopped the kit.",
      "So in ten years of lying closed 0.032 to 0.63 such faults come, nine times in ten, at a steady rate; kits are taken as alike.",
      "No drill planted such a fault: every opening is taken to find each of them.",
      "Asked to start 80 times, it fails 0.6 to 7 times in 100, nine times in ten, whatever its age, just opened or not.",
      "Put to work on casualties once: 0.0035 to 0.082 calls a year on one kit, nine times in ten; reckoned with 0.02.",
      "By the pattern an opening takes 2.5 hours of work, and the kit is out for 11.5 hours and for what it hangs to dry beyond that. It is started twice.",
      "Not counted, as nobody stated it: wear of starts, days without the kit, faults that an opening leaves behind.",
    ]);
    const finding = { mean: 0.7, p05: 0.42, p50: 0.7, p95: 0.91 };
    const drilled = (found: number, planted: number, counts: boolean) =>
      sayEvidence({ ...evidence, drilled: { found, planted, counts, finding } }, {}, words)[2];
    expect(drilled(5, 7, true)).toBe(
      "Of 7 such faults planted in drills the opening found 5, so 4.2 to 9.1 of 10, nine times in ten. What one overlooks the next may find; counted with 7.0 of 10.",
    );
    expect(drilled(1, 1, false)).toBe(
      "Of 1 such fault planted in drills the opening found 1: fewer than 5 tell too little, and every opening is taken to find each.",
    );
    expect(sayEvidence({ ...evidence, asked: 0 }, {}, words)[3]).toMatch(/never counted/);
    expect(sayEvidence({ ...evidence, timed: 80, out: 79_200 }, {}, words)[5]).toMatch(
      /^By the pattern an opening takes 2.5 hours of work; seal to seal the kit was out for 22.0 hours, on average of 80 openings\. /,
    );
  });
});
