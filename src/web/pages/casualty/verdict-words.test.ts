import { ask, exampleOf, type OnSceneAnswer } from "#questions";
import { describe, expect, it } from "vitest";
import { sayVerdict } from "./verdict-words.ts";

const example = exampleOf("on-scene") as object;

function answerTo(more: object): OnSceneAnswer {
  return ask("on-scene", { ...example, ...more }) as OnSceneAnswer;
}

describe("the one line on scene", () => {
  it("says gaining, when dry with its doubt, and when to refuel", () => {
    const words = sayVerdict(answerTo({}), Date.UTC(2027, 2, 14, 14, 35));
    expect(words.word).toBe("GAINING");
    expect(words.detail).toMatch(/^dry in about \d+\u00a0min \(\d+.* to \d+.*\), refuel at \d\d:35$/);
  });

  it("says only what should be where a pump came on after the last sounding", () => {
    const readings = [0.4, 0.47, 0.54].map((level, i) => ({ at: 300 * i, level }));
    const words = sayVerdict(answerTo({ readings, pumping: [{ from: 630, flow: "800 L/min" }], now: 640 }));
    expect(words).toMatchObject({ kind: "unknown", word: "SHOULD BE GAINING" });
    expect(words.detail).toMatch(/^not sounded since the pumping or the hole was changed, /);
    const seen = [...readings, { at: 750, level: 0.5 }, { at: 870, level: 0.44 }];
    const after = sayVerdict(answerTo({ readings: seen, pumping: [{ from: 630, flow: "800 L/min" }], now: 880 }));
    expect(after).toMatchObject({ kind: "gaining", word: "GAINING" });
  });

  it("does not soften a loss that a change leaves", () => {
    const readings = [0.5, 0.62, 0.74, 0.86].map((level, i) => ({ at: 180 * i, level }));
    const words = sayVerdict(answerTo({ readings, pumping: [{ from: 550, flow: "50 L/min" }], now: 560 }));
    expect(words).toMatchObject({ kind: "losing", word: "LOSING" });
  });

  it("says losing and how long is left at the least", () => {
    const readings = [0.5, 0.62, 0.74, 0.86].map((level, i) => ({ at: 180 * i, level }));
    const words = sayVerdict(answerTo({ readings, pumping: [], now: 560 }));
    expect(words.word).toBe("LOSING");
    expect(words.detail).toMatch(/^off in \d+\u00a0min (unless|by this estimate)/);
  });

  it("names the patch where half the hole is enough, and promises nothing where it is not", () => {
    const answer = answerTo({
      readings: [0.5, 0.62, 0.74, 0.86].map((level, i) => ({ at: 180 * i, level })),
      pumping: [],
      now: 560,
    });
    const withPatch = (holding: number): OnSceneAnswer => ({
      ...answer,
      reading: {
        ...answer.reading!,
        advice: answer.reading!.advice.map((one) => ({ ...one, holding: one.action === "patch-half" ? holding : 0.1 })),
      },
    });
    expect(sayVerdict(withPatch(0.8)).detail).toContain("unless the hole is halved");
    expect(sayVerdict(withPatch(0.2)).detail).toContain("one pump more is not enough");
  });

  it("says to ease the pump where she is dry or nearly", () => {
    const readings = [0.3, 0.2, 0.1, 0.02].map((level, i) => ({ at: 300 * i, level }));
    const words = sayVerdict(answerTo({ readings, pumping: [{ from: 0, flow: "200 L/min" }], now: 905 }));
    expect(words.detail).toContain("throttle back or stop");
  });

  it("gives no time and no chance where the soundings do not fit", () => {
    const answer = answerTo({});
    const words = sayVerdict({ ...answer, reading: { ...answer.reading!, misfit: true } });
    expect(words).toMatchObject({ kind: "unknown", word: "MAY BE GAINING", chance: "" });
    expect(words.detail).toContain("do not fit");
    expect(words).not.toHaveProperty("aside");
    expect(words.detail).not.toMatch(/\d/);
  });

  it("gives the trend where they do not fit, as a trend only", () => {
    const rise = { p05: 0.0001, p50: 0.0002, p95: 0.0003 };
    const trend = { kind: "rising", soundings: 4, from: 0, to: 600, rise, ahead: 900, level: rise } as const;
    const answer = answerTo({});
    const words = sayVerdict({ ...answer, reading: { ...answer.reading!, misfit: true, trend } });
    expect(words).toMatchObject({ word: "MAY BE LOSING", aside: "Trend only: rising, by the last 4 soundings." });
  });

  it("says to look at a sounding above her deck edge", () => {
    const words = sayVerdict(answerTo({ readings: [{ at: 0, level: 3 }], pumping: [] }));
    expect(words).toMatchObject({ kind: "unknown", word: "CHECK THE SOUNDING", chance: "" });
  });

  it("says what to do where nothing has been sounded", () => {
    expect(sayVerdict(answerTo({ readings: [] }))).toMatchObject({ kind: "unknown", word: "NO SOUNDING YET" });
  });
});
