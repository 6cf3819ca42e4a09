import { fetchWords } from "#words";
import { ask, exampleOf, type OnSceneAnswer } from "#questions";
import { describe, expect, it } from "vitest";
import { notSounded, sayVerdict } from "./verdict-words.ts";

const messages = await fetchWords("en", "sheetWord");

const example = exampleOf("on-scene") as object;

function answerTo(more: object): OnSceneAnswer {
  return ask("on-scene", { ...example, ...more }) as OnSceneAnswer;
}

describe("the one line on scene", () => {
  it("says gaining and when dry; its doubt and what it rests on by a tap", () => {
    const words = sayVerdict(answerTo({}), "metric", messages);
    expect(words.word).toBe("GAINING");
    expect(words.detail).toMatch(/^down to the strainer in about \d+\u00a0min$/);
    expect(words.why?.join(" ")).toMatch(
      /\d soundings over \d+.min.* Down to the strainer in \d+.* to \d+.*, nine times in ten, with about \d+.cm left under it\./,
    );
    expect(sayVerdict(answerTo({}), "us", messages).why?.join(" ")).toMatch(/with about \d+(\.\d)?.in left under it\./);
  });

  it("has at most twelve words with one number, whatever it says", () => {
    const answer = answerTo({});
    const time = { p05: 60 * 135, p25: 60 * 135, p50: 60 * 135, p75: 60 * 135, p95: 60 * 135 };
    const advice = answer.reading!.advice.map((one) => ({ ...one, holding: 0.1 }));
    const losing = {
      ...answer.reading!,
      dry: undefined,
      loss: { ...answer.reading!.loss!, chance: 0.9, time },
      advice,
    };
    const kinds = [
      "gaining",
      "holding",
      "losing",
      "should-be-gaining",
      "should-be-holding",
      "should-be-losing",
    ] as const;
    const others = ["too-soon", "one-sounding", "does-not-fit", "not-known", "above-deck", "fuel"] as const;
    const helps = ["patch-half", "second-pump", "more-throttle", "shorter-lift"] as const;
    const readings = [
      answer.reading!,
      { ...losing },
      ...helps.map((action) => ({ ...losing, advice: [{ ...advice[0]!, action, holding: 0.9 }] })),
      { ...losing, loss: undefined },
      { ...answer.reading!, dry: { ...answer.reading!.dry!, chance: 1, time: { ...time, p50: 30 } } },
      { ...answer.reading!, dry: { ...answer.reading!.dry!, chance: 1, time } },
    ];
    const all = [...kinds, ...others].flatMap((kind) =>
      readings.map((reading) =>
        sayVerdict({ ...answer, word: { ...answer.word, kind }, reading } as OnSceneAnswer, "metric", messages),
      ),
    );
    for (const { word, detail } of [...all, notSounded(messages)]) {
      const line = `${word} ${detail}`;
      const words = line.split(/[\s\u00a0]+/);
      expect({ line, long: words.length > 12 }).toEqual({ line, long: false });
      expect(detail.match(/\d+\u00a0h \d+\u00a0min|\d+/g)?.length ?? 0).toBeLessThanOrEqual(1);
    }
  });

  it("says only what should be where a pump came on after the last sounding", () => {
    const readings = [0.4, 0.47, 0.54].map((level, i) => ({ at: 300 * i, level }));
    const words = sayVerdict(
      answerTo({ readings, pumping: [{ from: 630, flow: "800 L/min" }], now: 640 }),
      "metric",
      messages,
    );
    expect(words).toMatchObject({ kind: "unknown", word: "SHOULD BE GAINING" });
    expect(words.detail).toBe("not seen yet: sound again");
    const seen = [...readings, { at: 750, level: 0.5 }, { at: 870, level: 0.44 }];
    const after = sayVerdict(
      answerTo({ readings: seen, pumping: [{ from: 630, flow: "800 L/min" }], now: 880 }),
      "metric",
      messages,
    );
    expect(after).toMatchObject({ kind: "gaining", word: "GAINING" });
  });

  it("does not take for seen what a change leaves to expect, a loss neither", () => {
    const readings = [0.5, 0.62, 0.74, 0.86].map((level, i) => ({ at: 180 * i, level }));
    const words = sayVerdict(
      answerTo({ readings, pumping: [{ from: 550, flow: "50 L/min" }], now: 560 }),
      "metric",
      messages,
    );
    expect(words).toMatchObject({ kind: "unknown", word: "SHOULD BE LOSING" });
    expect(words.detail).not.toMatch(/off in/);
  });

  it("says losing and how long is left at the least", () => {
    const readings = [0.5, 0.62, 0.74, 0.86].map((level, i) => ({ at: 180 * i, level }));
    const words = sayVerdict(answerTo({ readings, pumping: [], now: 560 }), "metric", messages);
    expect(words.word).toBe("LOSING");
    expect(words.detail).toMatch(/^off in \d+\u00a0min( unless|: one| by this estimate)/);
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
    expect(sayVerdict(withPatch(0.8), "metric", messages).detail).toContain("unless the hole is halved");
    expect(sayVerdict(withPatch(0.2), "metric", messages).detail).toContain("one pump more too little");
  });

  it("says to ease the pump where she is dry or nearly", () => {
    const readings = [0.3, 0.2, 0.1, 0.02].map((level, i) => ({ at: 300 * i, level }));
    const words = sayVerdict(
      answerTo({ readings, pumping: [{ from: 0, flow: "200 L/min" }], now: 905 }),
      "metric",
      messages,
    );
    expect(words.detail).toContain("down to the strainer or nearly");
    expect(words.detail).toContain("ease the pump");
  });

  it("gives no time and no chance where the soundings do not fit, and the trend as a trend only", () => {
    const rise = { p05: 0.0001, p50: 0.0002, p95: 0.0003 };
    const trend = { kind: "rising", soundings: 4, from: 0, to: 600, rise, ahead: 900, level: rise } as const;
    const answer = answerTo({});
    const word = { ...answer.word, kind: "does-not-fit", certainty: 0 } as const;
    const words = sayVerdict(
      { ...answer, word, reading: { ...answer.reading!, misfit: true, trend } },
      "metric",
      messages,
    );
    expect(words).toMatchObject({ kind: "unknown", word: "SOUNDINGS DO NOT FIT", chance: "" });
    expect(words.detail).not.toMatch(/\d/);
    expect(words.why).toContain("Trend only: rising, by the last 4 soundings.");
  });

  it("says to look at a sounding above her deck edge", () => {
    const words = sayVerdict(answerTo({ readings: [{ at: 0, level: 3 }], pumping: [] }), "metric", messages);
    expect(words).toMatchObject({ kind: "unknown", word: "CHECK THE SOUNDING", chance: "" });
  });

  it("says what to do where nothing has been sounded", () => {
    expect(sayVerdict(answerTo({ readings: [] }), "metric", messages)).toMatchObject({
      kind: "unknown",
      word: "NO SOUNDING YET",
    });
  });
});
