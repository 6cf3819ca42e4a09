import { FAULT } from "#station";
import { describe, expect, test } from "vitest";
import { alarmsOf } from "./alarms.ts";
import { ClockWatch, refusedForClock } from "./clock-watch.ts";
import type { OutboxLine } from "./held/device-store.ts";

const HOUR = 3_600_000;

function fault(code: string) {
  return { code, field: "at", got: "", allowed: "", remedy: "" };
}

describe("the clocks as a device knows them", () => {
  test("where the station doubts its own, that is told and not this device's; lines refused go again once", () => {
    let times = 0;
    const watch = new ClockWatch(() => (times += 1));
    watch.hear(HOUR);
    expect(alarmsOf([], watch.known)).toEqual([{ kind: "clock", aheadMs: HOUR }]);
    const off = { kind: "behind", byMs: HOUR } as const;
    watch.hearStation(off);
    watch.hearStation({ ...off, byMs: HOUR + 1000 });
    expect(times).toBe(1);
    expect(alarmsOf([], watch.known)).toEqual([{ kind: "station-clock", off: { kind: "behind", byMs: HOUR + 1000 } }]);
    watch.hearStation(undefined);
    expect(alarmsOf([], watch.known)).toEqual([{ kind: "clock", aheadMs: HOUR }]);
    watch.hearStation(off);
    expect(times).toBe(2);
  });

  test("only lines refused for their time go again", () => {
    const entry = {} as OutboxLine["entry"];
    const forClock: OutboxLine = { entry, state: "refused", faults: [fault(FAULT.clock)] };
    const forOther: OutboxLine = { entry, state: "refused", faults: [fault("SN-101")] };
    expect(refusedForClock([forOther, { entry, state: "unsent" }, forClock])).toEqual([forClock]);
  });
});
