import { describe, expect, it } from "vitest";
import { placeSoundings, type SoundingsDrawn } from "./sounding-chart-scales.ts";

const FRAME = { left: 40, right: 340, top: 20, bottom: 220 };
const CM = { symbol: "cm", of: (si: number) => 100 * si };
const T0 = Date.UTC(2027, 2, 14, 10, 0);
const MINUTE = 60_000;
const fan = [0, 30, 60].map((minute) => ({
  at: T0 + (20 + minute) * MINUTE,
  p05: 0.2,
  p25: 0.3,
  p50: 0.4,
  p75: 0.5,
  p95: 0.6 + minute / 10,
}));
const DRAWN: SoundingsDrawn = {
  readings: [
    { at: T0, level: 0.5 },
    { at: T0 + 20 * MINUTE, level: 0.4 },
  ],
  fan,
  runs: [{ from: T0 + 5 * MINUTE, to: T0 + 20 * MINUTE }],
  now: T0 + 20 * MINUTE,
};
const clock = (at: number) => new Date(at).toISOString().slice(11, 16);

describe("soundings and forecast placed on a chart", () => {
  const places = placeSoundings(DRAWN, CM, FRAME, clock);

  it("puts later to the right, lower levels lower, and every sounding in the field", () => {
    const [first, second] = places.readings;
    expect(second!.x).toBeGreaterThan(first!.x);
    expect(second!.y).toBeGreaterThan(first!.y);
    for (const { x, y } of places.readings) {
      expect(x).toBeGreaterThanOrEqual(FRAME.left);
      expect(y).toBeGreaterThanOrEqual(FRAME.top);
    }
  });

  it("keeps one wild end of the fan from flattening all the rest", () => {
    expect(FRAME.bottom - places.readings[0]!.y).toBeGreaterThanOrEqual(100);
  });

  it("says how high a band goes that leaves the field, and nothing where all of it is in sight", () => {
    expect(places.beyond).toBe("660 cm");
    const low = fan.map((point) => ({ ...point, p95: 0.6 }));
    expect(placeSoundings({ ...DRAWN, fan: low }, CM, FRAME, clock).beyond).toBeUndefined();
  });

  it("writes whole clock times, no more than fit", () => {
    expect(places.across.map(({ label }) => label)).toEqual(["10:00", "10:30", "11:00"]);
  });

  it("ends with the last sounding where there is no now", () => {
    const { now: _, ...rest } = DRAWN;
    const closed = placeSoundings({ ...rest, fan: [] }, CM, FRAME, clock);
    expect(closed.now).toBeUndefined();
    expect(closed.readings[1]!.x).toBeCloseTo(FRAME.right, 6);
  });

  it("stands with one sounding and no forecast", () => {
    const bare = placeSoundings({ readings: [DRAWN.readings[0]!], fan: [], runs: [], now: T0 }, CM, FRAME, clock);
    expect(bare.readings[0]!.x).toBeGreaterThan(FRAME.left);
    expect(bare.across.length).toBeGreaterThan(1);
  });
});
