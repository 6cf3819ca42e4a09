import type { OpeningProposal } from "#station";
import { describe, expect, it } from "vitest";
import { sayBest, sayEvidence, sayLong, sayStanding, sayVerdict } from "./interval-words.ts";

const YEAR = { months: 12 };

describe("how often to open, in words", () => {
  it("says what holds now and whose rule it is", () => {
    expect(sayStanding({ standing: YEAR, manual: YEAR })).toBe(
      "It is opened every year now, as the unit's manual has it.",
    );
    expect(sayStanding({ standing: { months: 8 }, manual: YEAR })).toBe(
      "It is opened every 8 months now; the unit's manual has 1 year.",
    );
  });

  it("says what it would take where the log does not tell, and that the manual stands first", () => {
    expect(sayVerdict({ kind: "cannot-tell", openings: 40 }, YEAR)).toMatch(/it would take about 40 more openings\.$/);
    expect(sayVerdict({ kind: "cannot-tell", openings: 4000 }, YEAR)).toMatch(
      /it would take more than 4000 more openings/,
    );
    expect(sayVerdict({ kind: "manual-stands", cleanOpenings: 30 }, YEAR)).toMatch(/the manual stands first/);
    expect(sayVerdict({ kind: "shorter", every: { months: 7 } }, YEAR)).toBe(
      "Open it every 7 months rather than every year.",
    );
  });

  it("says a range, never a bare figure, and no more years than anybody can know of", () => {
    const best = { shortest: 200, middle: 400, longest: 90_000 };
    expect(sayBest({ best } as unknown as OpeningProposal)).toBe(
      "By these figures the best lies between 7 months and more than ten years, nine times in ten.",
    );
    expect([20, 200, 900].map(sayLong)).toEqual(["20 days", "7 months", "2.5 years"]);
  });

  it("says all that it rests on", () => {
    const evidence = {
      kits: 12,
      looks: 80,
      found: 1,
      lay: 80 * 365.25 * 86_400,
      rate: { mean: 0, p05: 1e-10, p50: 0, p95: 2e-9 },
      asked: 80,
      failing: 0.031,
      calls: 1,
      callsPerYear: 0.02,
      hours: 2.5,
      out: 41_400,
    };
    expect(sayEvidence(evidence)).toEqual([
      "80 openings of 12 kits after lying closed for 80.0 years in all: 1 fault that would have stopped the kit.",
      "So in ten years of lying closed 0.032 to 0.63 such faults come, nine times in ten, at a steady rate; kits are taken as alike.",
      "Asked to start, it fails about 3.1 times in 100 whatever its age, just opened or not.",
      "Put to work on casualties once: 0.02 calls a year on one kit.",
      "By the pattern an opening takes 2.5 hours of work, and the kit is out for 11.5 hours. Parts and wear are not counted.",
    ]);
    expect(sayEvidence({ ...evidence, asked: 0, failing: 0.5 })[2]).toMatch(/never counted/);
  });
});
