import { describe, expect, it } from "vitest";
import type { Forecast, Misfit } from "../index.ts";
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
    losses: { times: [soonest], of: 1 },
  };
}

function saidOf(soonest: number, misfit = FITS): string[] {
  const given = { readings: READINGS, pumping: [], prior: { noise: 0.015 } };
  return warningsOf(given, forecastLost(soonest), misfit).map(({ says }) => says);
}

describe("minutes in a warning", () => {
  it.each([
    [0, "1\u00a0min"],
    [80, "1\u00a0min"],
    [100, "2\u00a0min"],
    [520, "9\u00a0min"],
    [740, "10\u00a0min"],
    [1000, "15\u00a0min"],
    [3480, "60\u00a0min"],
    [4500, "75\u00a0min"],
    [11_700, "3\u00a0h 20\u00a0min"],
  ])("%s s is said as %s", (seconds, words) => {
    expect(saidOf(seconds)[0]).toContain(`in ${words} at the earliest`);
  });
});

describe("the sounding that is farthest off", () => {
  it.each([
    [0, "50\u00a0cm, the first one, is farthest off"],
    [3, "50\u00a0cm, 25 min after the first, is farthest off"],
  ])("number %s is told by its time", (reading, words) => {
    const [, says] = saidOf(600, { ...FITS, flagged: true, worst: { reading, deviations: 5 } });
    expect(says).toContain(words);
  });
});

describe("that the fall has slowed", () => {
  const PUMPED = [{ from: 0, flow: 0.008 }];
  const says = (
    levels: readonly number[],
    pumping: readonly { from: number; to?: number; flow: number }[] = PUMPED,
    misfit = FITS,
  ) =>
    warningsOf(
      { readings: levels.map((level, i) => ({ at: 300 * i, level })), pumping, prior: { noise: 0.015 } },
      forecastLost(1e6),
      misfit,
    ).some(({ kind }) => kind === "fall-has-slowed");

  it("is said where it fell and falls less with the same pumps", () => {
    expect(says([0.8, 0.65, 0.5, 0.49])).toBe(true);
  });

  it("is said where it came all the way back up", () => {
    expect(says([0.8, 0.65, 0.5, 0.65, 0.8])).toBe(true);
  });

  it.each([
    ["the level only rose and rises more slowly", [0.3, 0.45, 0.6, 0.61]],
    ["one reading was low and the next is where the level was", [0.5, 0.41, 0.5, 0.5]],
    ["there are two soundings and the level rose", [0.3, 0.45]],
    ["it has never fallen", [0.5, 0.5, 0.5, 0.5]],
    ["one high reading stood before a steady fall", [1.4, 0.7, 0.6, 0.5, 0.4]],
  ])("is not said where %s", (_, levels) => {
    expect(says(levels)).toBe(false);
  });

  it("is not said by the one sounding that does not go with the others, and is by the next", () => {
    const odd = { ...FITS, flagged: true, worst: { reading: 4, deviations: 9 } };
    expect(says([0.8, 0.7, 0.6, 0.5, 1.4], PUMPED, odd)).toBe(false);
    expect(says([0.8, 0.7, 0.6, 0.5, 1.4, 1.4], PUMPED, odd)).toBe(true);
  });

  it("is not said where the pump, or one of two, has been stopped since", () => {
    expect(says([0.8, 0.65, 0.5, 0.49], [{ from: 0, to: 600, flow: 0.008 }])).toBe(false);
    const two = [
      { from: 0, flow: 0.004 },
      { from: 0, to: 600, flow: 0.004 },
    ];
    expect(says([0.8, 0.65, 0.5, 0.46], two)).toBe(false);
  });
});
