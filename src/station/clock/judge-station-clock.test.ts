import { describe, expect, it } from "vitest";
import { judgeStationClock, latestBelieved, type DeviceClock } from "./judge-station-clock.ts";

const NOW = "2027-03-14T10:00:00.000Z";
const HOUR = 3_600_000;

function clocks(...aheads: readonly number[]): readonly DeviceClock[] {
  return aheads.map((aheadMs, at) => ({ device: `d${at}`, person: `p${at}`, aheadMs }));
}

describe("the station's clock", () => {
  it("is not doubted where nothing speaks against it, or one device alone does", () => {
    expect(judgeStationClock(NOW, undefined, [])).toEqual({ kind: "not-doubted" });
    expect(judgeStationClock(NOW, "2027-03-14T10:04:00Z", clocks(HOUR))).toEqual({ kind: "not-doubted" });
    expect(judgeStationClock(NOW, NOW, clocks(0, 365 * 24 * HOUR))).toEqual({ kind: "not-doubted" });
    expect(judgeStationClock(NOW, NOW, clocks(HOUR, 5 * HOUR, 9 * HOUR))).toEqual({ kind: "not-doubted" });
  });

  it("is behind or ahead where devices of two people agree, and no number of devices of one person counts", () => {
    expect(judgeStationClock(NOW, NOW, clocks(HOUR, HOUR + 60_000))).toMatchObject({ kind: "behind", byMs: HOUR });
    expect(judgeStationClock(NOW, NOW, clocks(-HOUR, -HOUR))).toMatchObject({ kind: "ahead", byMs: HOUR });
    const own = clocks(HOUR, HOUR, HOUR).map((one) => ({ ...one, person: "same" }));
    expect(judgeStationClock(NOW, NOW, own)).toEqual({ kind: "not-doubted" });
    const shared = clocks(HOUR, HOUR).map((one) => ({ ...one, device: "same" }));
    expect(judgeStationClock(NOW, NOW, shared)).toEqual({ kind: "not-doubted" });
  });

  it("is behind where the log has a line of its future, unless the devices agree with it", () => {
    const newest = "2027-03-15T10:00:00Z";
    const found = judgeStationClock(NOW, newest, clocks(24 * HOUR));
    expect(found).toMatchObject({ kind: "behind", byMs: 24 * HOUR, shownBy: "log" });
    expect(judgeStationClock(NOW, newest, clocks(0, 1000))).toEqual({ kind: "not-doubted" });
  });

  it("judges lines by what the devices agree on, or by one device beyond the log, but not by one in another age", () => {
    const behind = judgeStationClock(NOW, NOW, clocks(HOUR, HOUR));
    expect(latestBelieved(NOW, behind, 9 * HOUR)).toBe("2027-03-14T11:00:00.000Z");
    const byLog = judgeStationClock(NOW, "2027-03-15T10:00:00Z", []);
    expect(latestBelieved(NOW, byLog, 48 * HOUR)).toBe("2027-03-16T10:00:00.000Z");
    expect(latestBelieved(NOW, byLog, 500 * 24 * HOUR)).toBe("2027-03-15T10:00:00.000Z");
    expect(latestBelieved(NOW, byLog)).toBe("2027-03-15T10:00:00.000Z");
    expect(latestBelieved(NOW, judgeStationClock(NOW, NOW, clocks(-HOUR, -HOUR)))).toBe("2027-03-14T09:00:00.000Z");
    expect(latestBelieved(NOW, { kind: "not-doubted" }, HOUR)).toBe(NOW);
  });
});
