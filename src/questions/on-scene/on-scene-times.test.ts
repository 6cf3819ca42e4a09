import { describe, expect, it } from "vitest";
import type { Word } from "./on-scene-fields.ts";
import { timesOf, type Timed } from "./on-scene-times.ts";

const TIME = { p05: 2220, p25: 2220, p50: 2220, p75: 2220, p95: 2220 };
const LOSING: Word = { kind: "losing", because: "", certainty: 0.98, soundings: 4 };

/** Of 256 ways looked at, so many come to a loss. */
function soundingWith(ways: number): Timed {
  const times = Array.from({ length: ways }, () => 2220);
  const loss = { chance: ways / 256, within: 14_400, time: TIME };
  return {
    forecast: { dry: { chance: 0, within: 14_400 }, loss, losses: { times, of: 256 } },
    misfit: { flagged: false },
    quantities: { levelNow: { p50: 0.4 } },
  };
}

describe("the time of a loss", () => {
  it("is told of ten ways or more", () => {
    expect(timesOf(LOSING, soundingWith(10)).loss).toMatchObject({ chance: 10 / 256, time: TIME });
  });

  it("is left out where a handful comes to one: they have no spread", () => {
    expect(timesOf(LOSING, soundingWith(1)).loss).toEqual({ chance: 1 / 256, within: 14_400 });
  });
});
