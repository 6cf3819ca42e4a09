import type { OnSceneAnswer } from "#questions";
import type { CasualtyState } from "#readiness";
import { describe, expect, it } from "vitest";
import { fanRows, soundingsDrawn } from "./soundings-drawn.ts";

const T0 = "2027-03-14T10:00:00Z";
const at = (minute: number) => Date.parse(T0) + 60_000 * minute;
const stamp = (minute: number) => new Date(at(minute)).toISOString();
const CASUALTY = {
  opened: { at: T0 },
  soundings: [
    { at: stamp(1), space: "s1", level: 0.3 },
    { at: stamp(2), space: "s2", level: 0.1 },
  ],
  pumps: [
    {
      runs: [
        { from: stamp(1), to: stamp(3), space: "s1", flow: 1 },
        { from: stamp(4), space: "s1", flow: 1 },
        { from: stamp(4), space: "s2", flow: 1 },
      ],
    },
  ],
} as unknown as CasualtyState;
const spread = { p05: 0, p25: 0.1, p50: 0.2, p75: 0.3, p95: 0.4 };
const ANSWER = {
  hull: { depth: 0.35 },
  reading: { fan: [0, 1, 2, 3, 4].map((k) => ({ at: 60 * (5 + k), ...spread })) },
} as OnSceneAnswer;

describe("soundings as they are drawn", () => {
  const drawn = soundingsDrawn(CASUALTY, "s1", ANSWER, at(6));

  it("are those of one space, on the wall clock", () => {
    expect(drawn.readings).toEqual([{ at: at(1), level: 0.3 }]);
    expect(drawn.fan[0]).toMatchObject({ at: at(5), p50: 0.2 });
  });

  it("are forecast no higher than her deck edge", () => {
    expect(drawn.fan[0]!.p95).toBe(0.35);
  });

  it("show a pump that still runs as running until now", () => {
    expect(drawn.runs).toEqual([
      { from: at(1), to: at(3) },
      { from: at(4), to: at(6) },
    ]);
  });

  it("stand without an answer, and never have a sounding after now", () => {
    const bare = soundingsDrawn(CASUALTY, "s1", undefined, at(0));
    expect(bare.fan).toEqual([]);
    expect(bare.now).toBe(at(1));
  });

  it("end on a closed sheet with what was last written, with no now and no forecast", () => {
    const closed = {
      ...CASUALTY,
      closed: { at: stamp(600) },
      patches: [{ at: stamp(5), space: "s1", open: 0.5 }],
      pumps: [{ runs: [{ from: stamp(1), to: stamp(600), space: "s1", flow: 1 }] }],
    } as unknown as CasualtyState;
    expect(soundingsDrawn(closed, "s1", ANSWER, at(600))).toEqual({
      readings: [{ at: at(1), level: 0.3 }],
      fan: [],
      runs: [{ from: at(1), to: at(5) }],
    });
  });

  it("are thinned out for a table", () => {
    expect(fanRows(drawn.fan).map((row) => row.at)).toEqual([at(5), at(9)]);
  });
});
