import { describe, expect, it } from "vitest";
import { sayLength, sayLevel, sayLevelAbout, type LengthStyle } from "./length.ts";

describe("a length in words", () => {
  it.each<[number, LengthStyle, string, string]>([
    [4.5, "height", "4.5 m", "15 ft"],
    [0.25, "height", "250 mm", "9.8 in"],
    [0, "height", "0 m", "0 ft"],
    [9, "hull", "9 m", "29.5 ft"],
    [12.34, "hull", "12.3 m", "40.5 ft"],
    [0.234, "hull", "0.23 m", "0.77 ft"],
  ])("%d m as %s", (si, style, metric, us) => {
    const said = (["metric", "us"] as const).map((units) => sayLength(si, units, style));
    expect(said).toEqual([metric, us].map((words) => words.replace(" ", "\u00a0")));
  });

  it("is two figures at most of a level that is estimated, and all there are of one that was read", () => {
    const about = [0.054, 0.544, 1.12].map((si) => sayLevelAbout(si, "metric"));
    expect(about).toEqual(["5\u00a0cm", "54\u00a0cm", "110\u00a0cm"]);
    expect([sayLevel(1.12, "metric"), sayLevel(0.54, "us")]).toEqual(["112\u00a0cm", "21\u00a0in"]);
  });
});
