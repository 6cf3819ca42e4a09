import { describe, expect, it } from "vitest";
import { onSceneQuestion } from "./on-scene.ts";

function trendAfter(...centimetres: readonly number[]) {
  const readings = centimetres.map((level, i) => ({ at: 300 * i, level: level / 100 }));
  const now = 300 * (readings.length - 1) + 10;
  const boat = { kind: "motor boat", length: 9 };
  const spaces = [{ name: "engine room", sort: "engine-room", part: "aft" }];
  const { reading, word } = onSceneQuestion.answer({ boat, spaces, readings, pumping: [], now }, {});
  return { word: word.kind, trend: reading?.trend };
}

describe("the trend told on scene", () => {
  it("is none while the last sounding is higher than her deck edge and has to be looked at", () => {
    expect(trendAfter(20, 24, 230)).toMatchObject({ word: "above-deck", trend: undefined });
    expect(trendAfter(20, 24, 28, 32, 230)).toMatchObject({ word: "above-deck", trend: undefined });
  });

  it("is told of soundings that do not fit where the last is not above her deck edge", () => {
    const { word, trend } = trendAfter(20, 24, 28, 90, 94, 98);
    expect(word).not.toBe("above-deck");
    expect(trend?.kind).toBe("rising");
  });
});
