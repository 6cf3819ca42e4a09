import { ask, exampleOf, type OnSceneAnswer } from "#questions";
import { describe, expect, it } from "vitest";
import { headlineOf } from "./headline.ts";

const answer = ask("on-scene", exampleOf("on-scene")) as OnSceneAnswer;
const MINUTE = 60_000;
const last = new Date(2027, 2, 14, 16, 44).getTime();
const fresh = { last, age: 3 * MINUTE, isStale: false };
const stale = { last, age: 47 * MINUTE, isStale: true };
const usual = { answer, freshness: fresh, isFuelSmelt: false, refuel: undefined };

describe("the line at the top", () => {
  it("is what the soundings say while they are fresh", () => {
    expect(headlineOf(usual)).toMatchObject({ kind: "gaining", word: "GAINING" });
    expect(headlineOf({ ...usual, answer: undefined })).toBeUndefined();
  });

  it("says nothing of how she is once the last sounding is old, only how she was then", () => {
    const words = headlineOf({ ...usual, freshness: stale })!;
    expect(words).toMatchObject({ kind: "unknown", word: "NOT KNOWN", chance: "" });
    expect(words.detail).toBe("last sounding 47 min ago. Sound now");
    expect(words.aside).toMatch(/^When last sounded, at 16:44: GAINING, dry in about/);
  });

  it("needs no answer to say that nothing is known, or that fuel was smelt", () => {
    expect(headlineOf({ ...usual, answer: undefined, freshness: stale })).not.toHaveProperty("aside");
    expect(headlineOf({ ...usual, answer: undefined, isFuelSmelt: true })?.word).toBe("FUEL SMELT");
  });

  it("waits for no answer where nothing was sounded", () => {
    const words = headlineOf({ ...usual, answer: undefined, freshness: { age: 0, isStale: false } });
    expect(words?.word).toBe("NO SOUNDING YET");
  });

  it("puts fuel before everything, and asks for no sounding then", () => {
    const words = headlineOf({ ...usual, freshness: stale, isFuelSmelt: true })!;
    expect(words).toMatchObject({ kind: "fuel", word: "FUEL SMELT" });
    expect(JSON.stringify(words)).not.toMatch(/[Ss]ound/);
  });
});
