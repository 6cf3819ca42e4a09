import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { faultOf, readClock, sayTaken, sayWritten, takenAt } from "./taken.ts";

const words = await fetchWords("en", "soundings");

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

  it("says yesterday where it was", () => {
    expect(sayTaken({ at: local(14, 0, 10) }, NOW, words)).toBe("sounded at 00:10");
    expect(sayTaken({ at: local(13, 23, 50) }, NOW, words)).toBe("sounded yesterday 23:50");
    expect(sayTaken({ ago: 5 }, NOW, words)).toBe("sounded 5\u00a0min ago");
  });
});

describe("a sounding once it is written", () => {
  it("has the clock's time, which is as true minutes later", () => {
    expect(sayWritten({ ago: 0 }, NOW, words)).toBe("sounded at 00:20");
    expect(sayWritten({ ago: 5 }, NOW, words)).toBe("sounded at 00:15");
    expect(sayWritten({ ago: 30 }, NOW, words)).toBe("sounded yesterday 23:50");
    expect(sayWritten({ at: local(14, 0, 10) }, NOW, words)).toBe("sounded at 00:10");
  });
});

describe("a time typed", () => {
  const opened = local(13, 23, 30);

  it("is that time today, and yesterday only in the first hours after midnight", () => {
    expect(readClock("0:10", NOW, opened)).toEqual({ kind: "read", at: local(14, 0, 10) });
    expect(readClock("23.55", NOW, opened)).toEqual({ kind: "read", at: local(13, 23, 55) });
    expect(readClock("2355", NOW, opened)).toEqual({ kind: "read", at: local(13, 23, 55) });
    expect(readClock("0:20", NOW, opened)).toEqual({ kind: "read", at: local(14, 0, 20) });
  });

  it.each([
    ["0:23", NOW, 3],
    ["14:03", local(14, 14, 0), 3],
    ["11:00", NOW, 640],
    ["23:50", local(14, 8, 0), 950],
    ["23:50", local(14, 12, 0), 710],
  ])("ahead of now is refused, never taken for yesterday: %s", (text, now, minutes) => {
    expect(readClock(text, now, now - 60_000)).toEqual({ kind: "ahead", minutes });
  });

  it("more than an hour before the sheet was opened is asked about", () => {
    expect(readClock("22:31", NOW, opened)).toEqual({ kind: "read", at: local(13, 22, 31) });
    expect(readClock("22:29", NOW, opened)).toEqual({ kind: "early", at: local(13, 22, 29), minutes: 61 });
    expect(readClock("8:00", local(14, 14, 0), local(14, 13, 30))).toMatchObject({ kind: "early", minutes: 330 });
  });

  it.each(["", "24:10", "12:60", "noon", "1"])("is none in %j", (text) => {
    expect(readClock(text, NOW, opened)).toEqual({ kind: "none" });
  });

  it("says at its field what is wrong, once it is typed out", () => {
    expect(faultOf("0:23", { kind: "ahead", minutes: 3 }, NOW, words)).toBe(
      "This is in 3\u00a0min: it is 00:20 by this device. Type when it was read, at most now.",
    );
    expect(faultOf("0:21", { kind: "ahead", minutes: 1 }, NOW, words)).toContain("in 1\u00a0min:");
    expect(faultOf("11:00", { kind: "ahead", minutes: 640 }, NOW, words)).toContain("in 10\u00a0h 40\u00a0min:");
    expect(faultOf("1:", { kind: "none" }, NOW, words)).toBeUndefined();
    expect(faultOf("noon", { kind: "none" }, NOW, words)).toBe("Hours and minutes, such as 16:40.");
  });
});
