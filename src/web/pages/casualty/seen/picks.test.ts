import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { DEGREE, listPicks, readDegrees } from "./picks.ts";

const words = await fetchWords("en", "sheetSeen");
const said = (seen?: number) => listPicks(words, seen).map((one) => one.words);

describe("a list that people see", () => {
  it("is typed in whole degrees where no button says it", () => {
    expect(["25", " 25° ", "7", "80"].map(readDegrees)).toEqual([25, 25, 7, 80]);
    expect(["", "0", "81", "-25", "25.5", "abc"].map(readDegrees)).toEqual(Array.from({ length: 6 }, () => undefined));
  });

  it("stands among the buttons once it was typed, in its place, and no button stands twice", () => {
    expect(said(25 * DEGREE).slice(-3)).toEqual(["20° stbd", "25° stbd", "40° stbd"]);
    expect(said(-25 * DEGREE)[1]).toBe("25° port");
    expect(said(20 * DEGREE)).toEqual(said());
    expect(said()).toHaveLength(9);
  });
});
