import { describe, expect, it } from "vitest";
import type { Check } from "#kit";
import { ENGLISH } from "#words";
import { isCountSaid, sayGivenSeen, saysItsCount } from "./answer-words.ts";

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

describe("what is measured when new", () => {
  const letters = { ...nuts("Whole words, 60 mm high."), kind: "measure", once: true } as unknown as Check;

  it("is said not to be measured again where it was only looked at", () => {
    expect(sayGivenSeen(letters, undefined, ENGLISH.act)).toBe("Seen, not measured again: whole words, 60 mm high");
    const read = { kind: "quantity", si: 0.06, dimension: "length", text: "60 mm" } as const;
    expect(sayGivenSeen(letters, read, ENGLISH.act)).toBe("Seen: whole words, 60 mm high");
    expect(sayGivenSeen(nuts("Three tight nuts."), undefined, ENGLISH.act)).toBe("Seen: three tight nuts");
  });
});
