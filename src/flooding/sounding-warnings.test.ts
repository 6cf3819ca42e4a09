import { describe, expect, it } from "vitest";
import type { Forecast, Misfit } from "./index.ts";
import { warningsOf } from "./sounding-warnings.ts";

const READINGS = [0, 300, 600, 1500].map((at) => ({ at, level: 0.5 }));
const FITS: Misfit = { distance: 3, chance: 0.5, flagged: false, worst: { reading: 0, deviations: 0.4 } };

function forecastLost(soonest: number): Forecast {
  const time = { p05: soonest, p25: soonest, p50: soonest, p75: soonest, p95: soonest };
  return {
    fan: [],
    chances: { gaining: 0, holding: 0, losing: 1 },
    dry: { chance: 0, within: 14_400 },
    loss: { chance: 1, within: 14_400, time },
  };
}

function saidOf(soonest: number, misfit = FITS): string[] {
  const given = { readings: READINGS, pumping: [], prior: { noise: 0.015 } };
  return warningsOf(given, forecastLost(soonest), misfit).map(({ says }) => says);
}

describe("minutes in a warning", () => {
  it.each([
    [0, "1 minute"],
    [80, "1 minute"],
    [100, "2 minutes"],
    [520, "9 minutes"],
    [740, "10 minutes"],
    [1000, "15 minutes"],
    [3480, "60 minutes"],
    [4500, "80 minutes"],
    [11_700, "200 minutes"],
  ])("%s s is said as %s", (seconds, words) => {
    expect(saidOf(seconds)[0]).toContain(`in ${words} at the earliest`);
  });
});

describe("the sounding that is farthest off", () => {
  it.each([
    [0, "the first one is farthest off"],
    [3, "the one 25 min after the first is farthest off"],
  ])("number %s is told by its time", (reading, words) => {
    const [, says] = saidOf(600, { ...FITS, flagged: true, worst: { reading, deviations: 5 } });
    expect(says).toContain(words);
  });
});
