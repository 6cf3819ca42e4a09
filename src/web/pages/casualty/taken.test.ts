import { describe, expect, it } from "vitest";
import { readClock, takenAt } from "./taken.ts";

const NOW = new Date(2027, 2, 14, 0, 20, 30).getTime();
const local = (day: number, hour: number, minute: number) => new Date(2027, 2, day, hour, minute).getTime();

describe("when a sounding was read", () => {
  it("is the line's own time where it is now", () => {
    expect(takenAt({ ago: 0 }, NOW)).toBeUndefined();
  });

  it("is so many minutes before it is written down, or the time that was told", () => {
    expect(takenAt({ ago: 5 }, NOW)).toBe(new Date(NOW - 300_000).toISOString());
    expect(takenAt({ at: local(14, 0, 10) }, NOW)).toBe(new Date(local(14, 0, 10)).toISOString());
  });
});

describe("a time typed", () => {
  it("is the last such time before now, also past midnight", () => {
    expect(readClock("0:10", NOW)).toBe(local(14, 0, 10));
    expect(readClock("23.55", NOW)).toBe(local(13, 23, 55));
    expect(readClock("2355", NOW)).toBe(local(13, 23, 55));
  });

  it.each(["", "24:10", "12:60", "noon", "1"])("is none in %j", (text) => {
    expect(readClock(text, NOW)).toBeUndefined();
  });
});
