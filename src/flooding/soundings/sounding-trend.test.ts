import { describe, expect, it } from "vitest";
import { likelyPrior, readSoundings, recentTrend, uprightSpace, type SoundingCase } from "../index.ts";

const NOISE = 0.015;

function steadily(pace: number, count: number, start = 0.5): { at: number; level: number }[] {
  return Array.from({ length: count }, (_, k) => ({ at: 300 * k, level: start + pace * 300 * k }));
}

describe("trend of the last soundings", () => {
  it("of levels on a straight line is its slope", () => {
    const { rise, kind } = recentTrend(steadily(2e-4, 5), NOISE)!;
    expect(rise.p50).toBeCloseTo(2e-4, 12);
    expect(kind).toBe("rising");
  });

  it("is unclear where the soundings' error may account for it", () => {
    expect(recentTrend(steadily(1e-5, 4), NOISE)!.kind).toBe("unclear");
    expect(recentTrend(steadily(-3e-4, 4), NOISE)!.kind).toBe("falling");
  });

  it("widens where the soundings scatter by more than their stated error", () => {
    const rough = steadily(2e-4, 5).map((one, k) => ({ ...one, level: one.level + (k === 2 ? 0.15 : 0) }));
    const [calm, wild] = [steadily(2e-4, 5), rough].map((readings) => {
      const { p05, p95 } = recentTrend(readings, NOISE)!.rise;
      return p95 - p05;
    });
    expect(wild!).toBeGreaterThan(2 * calm!);
  });

  it("leaves out what lies before a change, and is not drawn from fewer than three", () => {
    const turned = [
      ...steadily(-4e-4, 4, 0.9),
      ...steadily(3e-4, 4).map(({ at, level }) => ({ at: at + 1200, level })),
    ];
    expect(recentTrend(turned, NOISE, 1200)).toMatchObject({ kind: "rising", soundings: 4, from: 1200, to: 2100 });
    expect(recentTrend(turned, NOISE, 1800)).toBeUndefined();
    expect(recentTrend([], NOISE)).toBeUndefined();
  });

  it("never goes below the floor", () => {
    const { level } = recentTrend(steadily(-3e-4, 5, 0.4), NOISE)!;
    expect(level.p05).toBe(0);
  });
});

describe("a trend in the answer", () => {
  const readings = [0.5, 0.45, 0.4, 0.35, 0.45, 0.55, 0.64, 0.72].map((level, k) => ({ at: 300 * k, level }));
  const given: SoundingCase = {
    space: uprightSpace({ area: 12, outside: 1.4, outsideDoubt: 0.04 }),
    readings,
    pumping: [{ from: -600, flow: 0.006 }],
    prior: likelyPrior(0.5),
  };

  it("is given where nothing steady fits, from the soundings since the change", () => {
    const { misfit, trend } = readSoundings(given);
    expect(misfit.flagged).toBe(true);
    expect(trend).toMatchObject({ kind: "rising", to: 2100, ahead: 900 });
    expect(trend!.from).toBeGreaterThanOrEqual(900);
    expect(trend!.level.p05).toBeGreaterThan(0.65);
  });

  it("is not where they fit", () => {
    const { misfit, trend } = readSoundings({ ...given, readings: readings.slice(0, 4) });
    expect(misfit.flagged).toBe(false);
    expect(trend).toBeUndefined();
  });
});
