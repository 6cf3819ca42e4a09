import { describe, expect, it } from "vitest";
import { readTimer } from "./clock.ts";

const START = "2026-03-14T09:00:00+02:00";
const after = (seconds: number) => Date.parse(START) + seconds * 1000;

describe("timers from the wall clock", () => {
  it("counts down to the limit and says when it is reached", () => {
    expect(readTimer(START, after(0), 120)).toEqual({ seconds: 0, left: 120, reached: false, over: 0 });
    expect(readTimer(START, after(119.2), 120)).toMatchObject({ left: 1, reached: false });
    expect(readTimer(START, after(120), 120)).toMatchObject({ left: 0, reached: true, over: 0 });
  });

  it("shows how far over when it is noticed late", () => {
    expect(readTimer(START, after(7 * 3600), 120)).toMatchObject({ reached: true, over: 7 * 3600 - 120 });
  });

  it("reads a clock set back as just started", () => {
    expect(readTimer(START, after(-500), 120)).toEqual({ seconds: 0, left: 120, reached: false, over: 0 });
  });
});
