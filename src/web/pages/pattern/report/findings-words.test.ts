import type { FindingsByYear } from "#station";
import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { sayFindings, sayFindingsBasis } from "./findings-words.ts";

const words = await fetchWords("en", "patternFindings");

const LAW = { shape: 1.5, scale: 2, rateNow: 0.5, rateLow: 0.3, rateHigh: 0.9, p: 0.02 };
const TOLD: FindingsByYear = {
  years: [],
  found: 12,
  counted: 12,
  kitYears: 30,
  at: [],
  kind: "rising",
  law: LAW,
  laplace: { z: 2.2, p: 0.028 },
};

describe("findings a year, in words", () => {
  it("say which way they go, by how much luck alone would do that, and the range of the rate now", () => {
    expect(sayFindings(TOLD, words)).toBe(
      "By 12 findings they come oftener than they did: if they came steadily, luck alone would make it look so 28 times in 1000. Now 0.30 to 0.90 on one kit in a year, nine times in ten.",
    );
    expect(sayFindings({ ...TOLD, kind: "falling" }, words)).toMatch(/more seldom/);
    expect(sayFindings({ ...TOLD, kind: "none-clear" }, words)).toMatch(/^No clear trend/);
    expect(sayFindingsBasis(TOLD, words)).toMatch(/^12 findings .* 30\.0 years.*z 2\.20/);
  });

  it("say how many more it takes where there are too few", () => {
    const { law: _law, laplace: _laplace, ...few } = TOLD;
    expect(sayFindings({ ...few, kind: "too-few", found: 2, counted: 2 }, words)).toMatch(/about 4 more findings\.$/);
    expect(sayFindingsBasis({ ...few, found: 1, counted: 1 }, words)).toMatch(/^1 finding /);
  });

  it("say both where findings of one failed start count once", () => {
    const told = { ...TOLD, found: 14 };
    expect(sayFindings(told, words)).toMatch(/^By 12 findings, those of one failed start counted once, they come/);
    expect(sayFindingsBasis(told, words)).toMatch(/^14 findings .* Those of one failed start count once: 12\./);
  });
});
