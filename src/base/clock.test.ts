import { describe, expect, it } from "vitest";
import { readClock } from "./clock.ts";

describe("a time of day (ISO 8601-1, hours and minutes with a colon)", () => {
  it.each([
    ["14:05", 50_700],
    ["9:05", 32_700],
    ["00:00", 0],
    ["14:05:30", 50_730],
    ["24:10", 87_000],
    [" 23:59 ", 86_340],
  ])("%s is %d s after midnight", (text, seconds) => {
    expect(readClock(text)).toBe(seconds);
  });

  it.each(["14:5", "14:60", "48:00", "5 min", "14.05", "-1:00", "2:00 pm", ""])("%j is none", (text) => {
    expect(readClock(text)).toBeUndefined();
  });
});
