import { fetchWords } from "#words";
import type { FlushDue } from "#readiness";
import { describe, expect, it } from "vitest";
import { isOverdue, sayFlushLeft, sayFlushWhy } from "./flush-words.ts";

const whyWords = { view: await fetchWords("en", "kitView"), standing: await fetchWords("en", "standing") };

const words = await fetchWords("en", "kitLine");

const FROM = new Date(2026, 0, 10, 14, 5).getTime();
const HOUR = 3_600_000;
const SALT = {
  what: "salt",
  flushWithin: 7_200,
  source: "The manual.",
  cautions: [],
  firstAid: ["Rinse it."],
  flushedBy: [],
} as const;
const DUE: FlushDue = { by: FROM + 2 * HOUR, from: FROM, isFromStop: true, first: SALT, all: [SALT] };

describe("the first flush in words", () => {
  it("says what is left, rounded down, and by when", () => {
    expect(sayFlushLeft(DUE, FROM + 39.5 * 60_000, words)).toBe("First flush: 80\u00a0min left, by 16:05.");
    expect(sayFlushLeft(DUE, FROM, words)).toBe("First flush: 2\u00a0h left, by 16:05.");
  });

  it("says once it is past that it is overdue, never that it is too late to matter", () => {
    expect(sayFlushLeft(DUE, FROM + 2 * HOUR + 1, words)).toBe(
      "First flush overdue by 1\u00a0min: it was due by 16:05. Flush now.",
    );
    expect([isOverdue(DUE, DUE.by), isOverdue(DUE, DUE.by + 1)]).toEqual([false, true]);
  });

  it("says the day too where that may be another one", () => {
    expect(sayFlushLeft(DUE, DUE.by + 20 * HOUR, words)).toBe(
      "First flush overdue by 20\u00a0h: it was due by 10 Jan 2026, 16:05. Flush now.",
    );
  });

  it("says why, from when, and where the time is from", () => {
    expect(sayFlushWhy(DUE, FROM + HOUR, whyWords)).toBe(
      "It met salt water. 2\u00a0h from when it last pumped, 14:05. The manual.",
    );
    expect(sayFlushWhy({ ...DUE, isFromStop: false }, FROM, whyWords)).toContain(
      "from its return, 14:05; it stopped pumping before",
    );
    expect(sayFlushWhy(DUE, FROM + 24 * HOUR, whyWords), "not today").toContain("10 Jan 2026, 14:05.");
  });
});
