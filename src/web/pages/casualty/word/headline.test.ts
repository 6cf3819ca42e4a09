import { fetchWords } from "#words";
import { ask, exampleOf, type OnSceneAnswer } from "#questions";
import { describe, expect, it } from "vitest";
import { headlineOf, type HeadlineGiven } from "./headline.ts";

const messages = await fetchWords("en", "sheetWord");
const answer = ask("on-scene", exampleOf("on-scene")) as OnSceneAnswer;
const MINUTE = 60_000;
const last = new Date(2027, 2, 14, 16, 44).getTime();
const fresh = { last, age: 3 * MINUTE, isStale: false };
const stale = { last, age: 47 * MINUTE, isStale: true };
const old = ask("on-scene", { ...(exampleOf("on-scene") as object), now: 900 + 47 * 60 }) as OnSceneAnswer;
const usual: HeadlineGiven = {
  answer,
  error: undefined,
  freshness: fresh,
  isFuelSmelt: false,
  units: "metric",
};
const lone = ask("on-scene", {
  ...(exampleOf("on-scene") as object),
  readings: [{ at: 0, level: 0.6 }],
  pumping: [],
  now: 0,
}) as OnSceneAnswer;

describe("the line at the top", () => {
  it("is what the soundings say while they are fresh", () => {
    expect(headlineOf(usual, messages)).toMatchObject({ kind: "gaining", word: "GAINING" });
    expect(headlineOf({ ...usual, answer: undefined }, messages)).toBeUndefined();
  });

  it("says nothing of how she is once the last sounding is old, only how she was then", () => {
    const words = headlineOf({ ...usual, answer: old, freshness: stale }, messages)!;
    expect(words).toMatchObject({ kind: "unknown", word: "NOT KNOWN", chance: "" });
    expect(words.detail).toBe("last sounding 47\u00a0min ago. Sound now");
    expect(words.why?.join(" ")).toMatch(/^When last sounded, 47.min ago, with 49.cm in her: Gaining/);
  });

  it.each([
    ["she lies over by 40 degrees", { list: "40°" }],
    ["she does not come back from a roll", { righting: "stays" }],
    ["her own skipper says so", { leaving: true }],
  ])("is that it is time to leave her where %s, also while she gains, unsounded, or long after", (_, seen) => {
    const given = (part: object) =>
      ask("on-scene", { ...(exampleOf("on-scene") as object), ...part, ...seen }) as OnSceneAnswer;
    const [gains, unsounded] = [given({}), given({ readings: [], pumping: [], now: 0 })];
    expect(gains.word.kind).toBe("gaining");
    for (const [one, freshness] of [
      [gains, fresh],
      [gains, stale],
      [unsounded, { age: 0, isStale: false }],
    ] as const) {
      const words = headlineOf({ ...usual, answer: one, freshness }, messages)!;
      expect(words).toMatchObject({ kind: "leave", word: "TIME TO LEAVE HER", chance: "" });
      expect(`${words.word} ${words.detail}`.split(" ").length).toBeLessThanOrEqual(12);
    }
    expect(headlineOf({ ...usual, answer: gains, isFuelSmelt: true }, messages)?.word).toBe("FUEL SMELT");
  });

  it("needs no answer to say that nothing is known, or that fuel was smelt", () => {
    expect(headlineOf({ ...usual, answer: undefined, freshness: stale }, messages)).not.toHaveProperty("why");
    expect(headlineOf({ ...usual, answer: undefined, isFuelSmelt: true }, messages)?.word).toBe("FUEL SMELT");
  });

  it("never says computing where it cannot be computed, and shows an old answer for what it is", () => {
    const error = new Error("her length cannot be");
    expect(headlineOf({ ...usual, answer: undefined, error }, messages)).toMatchObject({
      kind: "unknown",
      word: "NOT COMPUTED",
    });
    expect(headlineOf({ ...usual, error }, messages)?.word).toBe("GAINING");
  });

  it("says of a lone sounding only that it is one, when to sound again, and how little is known", () => {
    const words = headlineOf({ ...usual, answer: lone, freshness: { ...fresh, age: 0 } }, messages)!;
    expect(words).toMatchObject({ kind: "unknown", word: "ONE SOUNDING", chance: "", detail: "sound again" });
    expect(words.why?.[0]).toMatch(/^One sounding shows neither rise nor fall: in an hour anything from \d+\scm to /);
    expect(JSON.stringify(words)).not.toMatch(/losing/i);
  });

  it("waits for no answer where nothing was sounded", () => {
    const words = headlineOf({ ...usual, answer: undefined, freshness: { age: 0, isStale: false } }, messages);
    expect(words?.word).toBe("NO SOUNDING YET");
  });

  it("puts fuel before everything, and asks for no sounding then", () => {
    const words = headlineOf({ ...usual, freshness: stale, isFuelSmelt: true }, messages)!;
    expect(words).toMatchObject({ kind: "fuel", word: "FUEL SMELT" });
    expect(JSON.stringify(words)).not.toMatch(/[Ss]ound/);
  });
});
