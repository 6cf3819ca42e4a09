import { describe, expect, it } from "vitest";
import { likelyPrior, readSoundings, STALE_AFTER, uprightSpace, type SoundingCase } from "../index.ts";

const LAST = 1500;

function seen(now?: number): SoundingCase {
  const levels = [0.5, 0.58, 0.57, 0.55, 0.54, 0.52];
  return {
    space: uprightSpace({ area: 12, outside: 1.2, outsideDoubt: 0.04, lossLevel: 1.1 }),
    readings: levels.map((level, k) => ({ at: 300 * k, level })),
    pumping: [{ from: 300, flow: 0.0045 }],
    prior: likelyPrior(0.5),
    ...(now !== undefined && { now }),
  };
}

function widthOf({ p05, p95 }: { readonly p05: number; readonly p95: number }): number {
  return p95 - p05;
}

describe("the age of the last sounding", () => {
  it("is none where no time is given, or an earlier one", () => {
    expect(readSoundings(seen())).toMatchObject({ age: 0, stale: false });
    expect(readSoundings(seen(600))).toMatchObject({ age: 0, stale: false });
  });

  it("is told, and the answer called stale beyond half an hour", () => {
    expect(readSoundings(seen(LAST + STALE_AFTER))).toMatchObject({ age: STALE_AFTER, stale: false });
    expect(readSoundings(seen(LAST + STALE_AFTER + 60))).toMatchObject({ age: STALE_AFTER + 60, stale: true });
  });

  it("widens the level now, the level to come and the delivery, the more the older it is", () => {
    const answers = [0, 900, 3600, 7200].map((age) => readSoundings(seen(LAST + age)).quantities);
    for (const name of ["levelNow", "levelAtHorizon", "pumpDelivery"] as const) {
      const widths = answers.map((one) => widthOf(one[name]));
      expect(widths).toEqual(widths.toSorted((a, b) => a - b));
    }
    expect(widthOf(answers[2]!.levelNow)).toBeGreaterThan(3 * widthOf(answers[0]!.levelNow));
  });

  it("carries her on for six hours at most: after that nothing more is said, and it takes no longer", () => {
    const [six, hundred] = [6, 100].map((hours) => readSoundings(seen(LAST + hours * 3600)));
    expect(hundred!.age).toBe(100 * 3600);
    expect(hundred!.quantities.levelNow).toEqual(six!.quantities.levelNow);
  });

  it("leaves what was seen as it was: the answer at the last sounding is the one with no time given", () => {
    expect(readSoundings(seen(LAST))).toEqual(readSoundings(seen()));
  });
});
