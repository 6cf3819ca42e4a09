import { describe, expect, it } from "vitest";
import { fetchWords } from "#words";
import { sayMinutes, sayNote, sayShare } from "./fault-words.ts";

const words = await fetchWords("en", "fault");
const note = (name: string, does: readonly string[], isEnded: boolean) => sayNote({ name, does, isEnded }, words);

describe("words of fault finding", () => {
  it("tell a chance in words, never as a percentage, and never as sure", () => {
    for (let chance = 0; chance <= 1; chance += 0.01) {
      expect(sayShare(chance, words)).not.toMatch(/%|safe|certain|sure/);
    }
    expect(sayShare(1, words)).toBe("very likely this");
    expect(sayShare(0.2, words)).toBe("about 1 in 5");
  });

  it("tell minutes no finer than they are known", () => {
    expect(["under a minute", "about 1 minute", "about 6 minutes"]).toEqual(
      [0.7, 1.2, 6].map((minutes) => sayMinutes(minutes, words)),
    );
  });

  it("say what the chances rest on: judgement first, then how many findings", () => {
    expect(words.basis({ count: 0 })).toMatch(/judgement.*No finding/);
    expect(words.basis({ count: 3 })).toMatch(/judgement.*3 findings of the fleet are counted in/);
  });

  it("give the bench what was tried and what helped, in the order it was done", () => {
    expect(note("Will not start", ["Switch on.", "Fit the spare plug."], true)).toBe(
      "Will not start. Tried without help: Switch on. What helped: Fit the spare plug.",
    );
    expect(note("Will not start", ["Switch on."], false)).toBe("Will not start. Tried without help: Switch on.");
    expect(note("Will not start", [], false)).toBe("Will not start.");
    expect(
      note(
        "x",
        Array.from({ length: 60 }, () => "Do a long thing with it."),
        false,
      ).length,
    ).toBeLessThan(500);
  });
});
