import { describe, expect, test } from "vitest";
import { judgeClock } from "./clock.ts";

const now = "2027-06-01T12:00:00+02:00";

describe("judgeClock", () => {
  test.each(["2027-06-01T10:00:00Z", "2027-06-01T10:05:00Z", "2024-01-01T00:00:00Z"])("takes %s", (at) => {
    expect(judgeClock(at, now)).toEqual({ kind: "plausible" });
  });

  test("LOG-10 refuses a time more than five minutes ahead, and says by how much and what to do", () => {
    const verdict = judgeClock("2027-06-01T10:05:00.001Z", now);
    expect(verdict).toMatchObject({ kind: "ahead", because: expect.stringMatching(/5.min ahead.*automatic/s) });
  });

  test("LOG-10 says of a clock six minutes ahead that it is so, whatever its line took to arrive", () => {
    const [at, late] = ["2027-06-01T10:06:00Z", "2027-06-01T10:05:58.800Z"];
    expect(judgeClock(at, now)).toMatchObject({ because: expect.stringContaining("6\u00a0min ahead") });
    expect(judgeClock(late, now)).toMatchObject({ because: expect.stringContaining("5\u00a0min 59\u00a0s ahead") });
  });

  test("names a clock a year off in days", () => {
    const verdict = judgeClock("2028-06-01T10:00:00Z", now);
    expect(verdict).toMatchObject({ kind: "ahead", because: expect.stringContaining("366 days ahead") });
  });

  test("names hours between two hours and two days", () => {
    const verdict = judgeClock("2027-06-01T16:00:00Z", now);
    expect(verdict).toMatchObject({ kind: "ahead", because: expect.stringContaining("6\u00a0h ahead") });
  });

  test("takes nothing dated ahead of now for having come first: a line of the future orders nothing", () => {
    const future = { at: "2031-06-01T10:00:00Z", what: "a line that its writer already had" };
    expect(judgeClock("2027-06-01T10:00:00Z", now, [future])).toEqual({ kind: "plausible" });
    const joined = { at: "2027-05-01T08:00:00Z", what: "this device joined the station" };
    expect(judgeClock("2027-04-01T08:00:00Z", now, [future, joined])).toMatchObject({ kind: "too-early" });
  });

  test("LOG-11 refuses a time more than a day before what came first, and names that", () => {
    const joined = { at: "2027-05-01T08:00:00Z", what: "this device joined the station" };
    expect(judgeClock("2027-04-30T08:00:00Z", now, [joined])).toEqual({ kind: "plausible" });
    const known = { at: "2027-05-02T08:00:00Z", what: "a line that its writer already had" };
    const verdict = judgeClock("2027-04-30T08:00:00Z", now, [joined, known]);
    expect(verdict).toMatchObject({
      kind: "too-early",
      because: expect.stringContaining(`${known.what} (${known.at})`),
    });
    expect(judgeClock("2027-04-30T07:59:59Z", now, [joined])).toMatchObject({
      kind: "too-early",
      because: expect.stringContaining("joined the station"),
    });
  });
});
