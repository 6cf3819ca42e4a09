import { describe, expect, test } from "vitest";
import { sayCount } from "./words/say-count.ts";
import { fetchWords } from "#words";
import { saySendState } from "./frame/send-mark.tsx";

const words = await fetchWords("en", "frame");
import { sayDate, sayDay } from "./words/say-time.ts";

describe("what is not yet sent, in words", () => {
  const noon = new Date(2026, 2, 14, 12, 0);
  const waiting = { kind: "waiting", lines: 3, photos: 1, offline: true } as const;

  test("says since when, by the clock today and by the day before that", () => {
    const since = new Date(2026, 2, 14, 9, 2).toISOString();
    expect(saySendState({ ...waiting, since }, words, noon)).toBe("3 lines not sent since 09:02");
    const before = new Date(2026, 2, 12, 9, 2).toISOString();
    expect(saySendState({ ...waiting, since: before }, words, noon)).toBe("3 lines not sent since 12 Mar 2026");
  });

  test("speaks of photos once all lines are sent", () => {
    const since = new Date(2026, 2, 14, 9, 2).toISOString();
    expect(saySendState({ ...waiting, lines: 0, since }, words, noon)).toBe("1 photo not sent since 09:02");
  });

  test("says refused before anything else, and sent only when all is", () => {
    expect(saySendState({ kind: "refused", lines: 1 }, words)).toBe("1 line refused");
    expect(saySendState({ kind: "sent" }, words)).toBe("All sent");
  });
});

test("counts carry their plural", () => {
  expect([0, 1, 2].map((number) => sayCount(number, "photo"))).toEqual(["0 photos", "1 photo", "2 photos"]);
});

describe("days and clocks", () => {
  test("a day is the same whatever the reader's zone, and a month names no day", () => {
    expect(sayDay("2027-03-01")).toBe("1 Mar 2027");
    expect(sayDay("2027-03")).toBe("Mar 2027");
    expect(sayDate("2027-03-01")).toBe("1 March 2027");
  });
});
