import { fetchWords } from "#words";
import { standingInWords, type Standing } from "#readiness";
import { describe, expect, it } from "vitest";
import { sayRestore, sayShortfall, sayStrength, sayUntil } from "./board-words.ts";
import { sampleStanding } from "../pages/board/sample-kits.ts";

const words = await fetchWords("en", "kitLine");

const standingWords = await fetchWords("en", "standing");
const told = (standing: Standing) => standingInWords(standing, standingWords);

describe("the board in words", () => {
  it("says strength as a count of what is wanted", () => {
    expect(sayStrength({ must: 5, holds: 4, withLimits: 0, short: 1 }, words)).toBe("4 ready of 5 wanted, 1 short");
    expect(sayStrength({ must: 2, holds: 3, withLimits: 1, short: 0 }, words)).toBe(
      "3 ready (1 with limits) of 2 wanted",
    );
    expect(sayStrength({ must: 0, holds: 3, withLimits: 0, short: 0 }, words)).toBe("3 ready, none wanted");
  });

  it("says the day that ends a standing, how far off, and what ends", () => {
    expect(sayUntil(told(sampleStanding("ready", "2026-12-02")), "2026-11-25", words)).toBe(
      "Until 2 December 2026 (7 days): Petrol in the tank out of date",
    );
    expect(sayUntil(told(sampleStanding("ready", "2026-11-25")), "2026-11-25", words)).toContain("(today)");
    expect(sayUntil(told(sampleStanding("grounded")), "2026-11-25", words)).toBeUndefined();
  });

  it("names the first things that would restore it, and how long all of them take", () => {
    const restore = { what: ["Renew the cells.", "Do a proof run.", "Seal it."], minutes: 95.2 };
    expect(sayRestore({ restore }, 2, words)).toBe(
      "Renew the cells. Do a proof run. And 1 more thing. About 96\u00a0min.",
    );
    expect(sayRestore({ restore: { what: [], minutes: 0 } }, 2, words)).toBeUndefined();
  });

  it("says when a place falls short: now, for a while, and to the end of the year looked at", () => {
    const short = { holds: 1, must: 2 };
    const say = (from: string, to: string) =>
      sayShortfall({ from, to, ...short }, { today: "2026-11-25", last: "2027-11-24", words });
    expect(say("2026-11-25", "2026-12-03")).toBe("now, until 3 December 2026: 1 ready of 2");
    expect(say("2026-11-25", "2027-11-24")).toBe("now: 1 ready of 2");
    expect(say("2027-01-01", "2027-02-01")).toBe("from 1 January 2027 to 1 February 2027: 1 ready of 2");
    expect(say("2027-01-01", "2027-11-24")).toBe("from 1 January 2027: 1 ready of 2");
  });
});
