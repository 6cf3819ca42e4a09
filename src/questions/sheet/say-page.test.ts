import { describe, expect, it } from "vitest";
import { ask } from "../ask.ts";
import type { OnSceneAnswer } from "../on-scene/on-scene-fields.ts";
import { sayPage } from "./say-page.ts";

const BECAUSE = "3 soundings over 8 min: 50 cm to 66 cm.";
const LOSING = { kind: "losing", because: BECAUSE, certainty: 0.974, soundings: 3 } as const;

const leave = (kind: OnSceneAnswer["leave"]["kind"]) => ({ kind, because: [], seen: false });

describe("what the page said", () => {
  it("is the word with its certainty, and a call to leave where there was one", () => {
    expect(sayPage({ word: LOSING, leave: leave("no-sign") })).toBe("Losing: 97 in 100.");
    expect(sayPage({ word: LOSING, leave: leave("now") })).toBe("Losing: 97 in 100. Time to leave her.");
    expect(sayPage({ word: LOSING, leave: { ...leave("now"), seen: true } })).toBe(
      "Time to leave her. Losing: 97 in 100.",
    );
    expect(sayPage({ word: LOSING, leave: leave("be-ready") })).toMatch(/Be ready to leave her\.$/);
  });

  it("says of one sounding what the question itself answers to it", () => {
    const answer = ask("on-scene", {
      boat: { kind: "motor boat", length: 10 },
      spaces: [{ name: "cabin", sort: "cabin", part: "middle" }],
      readings: [{ at: 60, level: 0.3 }],
      pumping: [],
      now: 60,
    }) as OnSceneAnswer;
    expect(sayPage(answer)).toMatch(/^One sounding: sound again\./);
  });
});
