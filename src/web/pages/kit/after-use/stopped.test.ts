import { sampleKit } from "#web/pages/board/sample-kits.ts";
import { describe, expect, it } from "vitest";
import { isBeforeHandOver, stoppedAgo, stoppedAt, stoppedTyped } from "./stopped.ts";

const mark = { at: "2026-11-25T12:00:00Z", by: "ann", entry: "e1", device: "d" };

/** A time of November 2026 on the clock of this machine. */
function iso(day: number, hours: number, minutes: number): string {
  return new Date(2026, 10, day, hours, minutes).toISOString();
}

describe("when a kit that comes back last pumped", () => {
  const kit = sampleKit("1", { custody: { ...mark, kind: "away", to: "her" } });

  it("is offered as now, an hour, a few hours and a day ago, never before its hand-over", () => {
    const handed = Date.parse(mark.at);
    expect(stoppedAgo(kit, handed + 60_000)).toEqual([0]);
    expect(stoppedAgo(kit, handed + 5 * 3_600_000)).toEqual([0, 60, 240]);
    expect(stoppedAgo(kit, handed + 25 * 3_600_000)).toEqual([0, 60, 240, 1440]);
  });

  it("is the last time that the clock showed what was typed, and nothing where that is no time or before its hand-over", () => {
    const now = new Date(2026, 10, 25, 16, 0).getTime();
    const at = { ...mark, at: iso(24, 12, 0) };
    const out = sampleKit("1", { custody: { ...at, kind: "away", to: "her" } });
    expect(stoppedTyped("15:40", out, now)).toBe(`at ${iso(25, 15, 40)}`);
    expect(stoppedTyped("2210", out, now)).toBe(`at ${iso(24, 22, 10)}`);
    expect(stoppedTyped("soon", out, now)).toBeUndefined();
    expect(stoppedAt(stoppedTyped("15:40", out, now), out, now)).toBe(iso(25, 15, 40));
  });

  it("may lie before its hand-over was written down, which is said, but not before it was last sealed here", () => {
    const now = new Date(2026, 10, 25, 16, 0).getTime();
    const seals = [{ ...mark, at: iso(25, 9, 0), number: "1", what: "fitted" as const }];
    const custody = { ...mark, entry: "e2", at: iso(25, 15, 50), kind: "away", to: "her" } as const;
    const late = sampleKit("1", { custody, seals });
    const typed = stoppedTyped("15:40", late, now)!;
    expect(typed).toBe(`at ${iso(25, 15, 40)}`);
    expect(isBeforeHandOver(typed, late)).toBe(true);
    expect(isBeforeHandOver(stoppedTyped("15:55", late, now)!, late)).toBe(false);
    expect(stoppedTyped("08:59", late, now), "before its seal").toBeUndefined();
  });
});
