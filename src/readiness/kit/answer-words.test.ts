import { describe, expect, it } from "vitest";
import type { Check } from "#kit";
import { isCountSaid, saysItsCount } from "./answer-words.ts";

const nuts = (expect: string, exactly = 3): Check => ({
  id: "nuts",
  item: "exhaust",
  kind: "count",
  ask: "Count the nuts.",
  expect,
  finds: [],
  of: "tight nuts",
  exactly,
});

describe("a number that is counted", () => {
  it.each([
    ["Three tight nuts.", true],
    ["3 tight nuts.", true],
    ["Three, one on each stud.", true],
    ["Nuts tight, none missing.", false],
    ["Four tight nuts.", false],
  ])("is said once where %s stands beside it: %s", (words, is) => {
    expect(saysItsCount(nuts(words))).toBe(is);
  });

  it("stands beside an answer where its words do not say it", () => {
    const three = { answer: "seen", value: { kind: "count", count: 3 } } as const;
    const two = { answer: "wrong", value: { kind: "count", count: 2 } } as const;
    expect(isCountSaid(nuts("Three tight nuts."), three)).toBe(true);
    expect(isCountSaid(nuts("Nuts tight."), three)).toBe(false);
    expect(isCountSaid(nuts("Three tight nuts."), two)).toBe(false);
    expect(isCountSaid(undefined, three)).toBe(false);
  });
});
