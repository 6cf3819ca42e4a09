import { describe, expect, it } from "vitest";
import { sayDuration, type DurationStyle } from "./duration.ts";

const plain = (seconds: number, style?: DurationStyle) => sayDuration(seconds, style).replaceAll("\u00a0", " ");
const HOUR = 3600;
const DAY = 86_400;

describe("a length of time in words", () => {
  it.each<[DurationStyle, number, string]>([
    ["exact", 0, "0 s"],
    ["exact", 59.6, "1 min"],
    ["exact", 119, "1 min 59 s"],
    ["exact", 125, "2 min 5 s"],
    ["exact", HOUR, "1 h"],
    ["exact", 3725, "1 h 2 min 5 s"],
    ["face", -3, "0:00"],
    ["face", 65.9, "1:05"],
    ["face", 3725, "1:02:05"],
    ["minutes", 95.4 * 60, "95 min"],
    ["minutes", 125 * 60, "2 h 5 min"],
    ["minutes", 120 * 60, "2 h"],
    ["elapsed", 47.9 * 60, "47 min"],
    ["elapsed", 7199, "119 min"],
    ["elapsed", 7259, "2 h"],
    ["needed", 95.2 * 60, "96 min"],
    ["needed", 277 * 60, "4 h 37 min"],
    ["estimate", 1, "1 min"],
    ["estimate", 130, "2 min"],
    ["estimate", 2532, "40 min"],
    ["estimate", 65 * 60, "65 min"],
    ["estimate", 9000, "2 h 30 min"],
    ["wait", 5, "5 s"],
    ["wait", 110, "2 min"],
    ["wait", 900, "15 min"],
    ["wait", 12 * HOUR, "12 h"],
    ["apart", 190.9 * 60, "3 h 10 min"],
    ["apart", 180 * 60, "3 h"],
    ["apart", 47.9 * HOUR, "47 h 54 min"],
    ["apart", 71.9 * HOUR, "2 days"],
    ["clocks", 180 * 60 - 0.5, "3 h"],
    ["clocks", 180 * 60 + 0.5, "3 h"],
    ["clocks", 190.9 * 60, "3 h 11 min"],
    ["clocks", 71.9 * HOUR, "2 days"],
    ["long", DAY, "1 day"],
    ["long", 50 * DAY, "50 days"],
    ["long", 61 * DAY, "2 months"],
    ["long", 365.25 * DAY, "12 months"],
    ["long", 913 * DAY, "2.5 years"],
  ])("%s: %d s", (style, seconds, words) => {
    expect(plain(seconds, style)).toBe(words);
  });

  it("never breaks between a figure and its unit", () => {
    expect(sayDuration(125)).toBe("2\u00a0min 5\u00a0s");
  });
});
