import { sampleKit } from "#web/pages/board/sample-kits.ts";
import { describe, expect, it } from "vitest";
import { stoppedAgo } from "./stopped.ts";

const mark = { at: "2026-11-25T12:00:00Z", by: "ann", entry: "e1", device: "d" };

describe("when a kit that comes back last pumped", () => {
  it("is never offered before it was handed over: the station would not take it", () => {
    const kit = sampleKit("1", { custody: { ...mark, kind: "away", to: "her" } });
    const minutes = (after: number) => stoppedAgo(kit, Date.parse(mark.at) + after * 60_000);
    expect(minutes(10)).toEqual([]);
    expect(minutes(60)).toEqual([15, 30, 60]);
    expect(minutes(500)).toEqual([15, 30, 60, 120, 240]);
  });
});
