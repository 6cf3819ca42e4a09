import type { Entry } from "#log";
import { fetchWords } from "#words";
import { describe, expect, test } from "vitest";
import { correctTimes } from "./clock-correction.ts";
import { clockAhead, sayClockDifference, withOffset } from "./clock.ts";

const words = await fetchWords("en", "frame");

function line(id: string, at: string, more: Partial<Entry>): Entry {
  return {
    id,
    place: "place:north",
    subject: "kit:7f3k",
    kind: "timer-stopped",
    at,
    by: "ana",
    device: "tablet",
    body: {},
    ...more,
  };
}

describe("the wall clock as written on a line", () => {
  const noon = new Date("2026-03-14T12:00:00.000Z");

  test("carries the device's offset, east and west, to the minute", () => {
    expect(withOffset(noon, 780)).toBe("2026-03-15T01:00:00.000+13:00");
    expect(withOffset(noon, -210)).toBe("2026-03-14T08:30:00.000-03:30");
    expect(withOffset(noon, 0)).toBe("2026-03-14T12:00:00.000+00:00");
  });

  test("is the same instant, whatever the offset", () => {
    for (const offset of [-720, -210, 0, 345, 840]) expect(Date.parse(withOffset(noon, offset))).toBe(noon.getTime());
  });
});

describe("the difference between two clocks", () => {
  test("is taken in the middle between question and answer", () => {
    expect(clockAhead(10_000, 70_400, 70_600)).toBe(60_000);
  });

  test("is only spoken of from two minutes on, and says which way", () => {
    expect(sayClockDifference(undefined, words)).toBeUndefined();
    expect(sayClockDifference(119_000, words)).toBeUndefined();
    expect(sayClockDifference(190 * 60_000, words)).toBe(
      "This device's clock is 3\u00a0h 10\u00a0min ahead of the station's.",
    );
    expect(sayClockDifference(190 * 60_000, words, "was")).toBe(
      "This device's clock was 3\u00a0h 10\u00a0min ahead of the station's.",
    );
    expect(sayClockDifference(-366 * 86_400_000, words)).toBe("This device's clock is 366 days behind the station's.");
  });

  test("reads the same whichever half of its second the station was asked in", () => {
    const threeHours = 3 * 3_600_000;
    const asked = Array.from({ length: 10 }, (_, tenth) =>
      clockAhead(0, threeHours + tenth * 100, threeHours + tenth * 100),
    );
    const said = new Set(asked.map((aheadMs) => sayClockDifference(aheadMs, words)));
    expect([...said]).toEqual(["This device's clock is 3\u00a0h ahead of the station's."]);
  });
});

describe("lines written on a wrong clock", () => {
  const lines = [
    line("a", "2027-03-14T14:00:00.000+13:00", { body: { turnaround: "a-turn", step: "prime" } }),
    line("b", "2027-03-14T14:02:00.000+13:00", {
      after: ["a", "known"],
      body: { started: "2027-03-14T14:00:00.000+13:00", seconds: 120, entries: ["a", "known"], stands: "a" },
    }),
  ];
  const aYear = 365 * 86_400_000;
  let next = 0;
  const corrected = correctTimes(lines, aYear, () => `new-${(next += 1)}`);

  test("are moved by the difference and keep their offset and spacing", () => {
    expect(corrected.map(({ at }) => at)).toEqual(["2026-03-14T14:00:00.000+13:00", "2026-03-14T14:02:00.000+13:00"]);
    expect(corrected[1]!.body).toMatchObject({ started: "2026-03-14T14:00:00.000+13:00", seconds: 120 });
  });

  test("have new ids, and name each other by them", () => {
    expect(corrected.map(({ id }) => id)).toEqual(["new-1", "new-2"]);
    expect(corrected[1]).toMatchObject({
      after: ["new-1", "known"],
      body: { entries: ["new-1", "known"], stands: "new-1" },
    });
  });

  test("leave the originals as they were", () => {
    expect(lines[1]!.after).toEqual(["a", "known"]);
  });
});
