import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { atOddsIn } from "./at-odds.ts";

const told = await fetchWords("en", "launchTold");

const T0 = Date.UTC(2027, 2, 14, 10);
const levels = (...waters: readonly number[]) => waters.map((water, i) => ({ at: T0 + 300_000 * i, water }));
const RISE = 0.03 / 120;

describe("what was told before launch and does not go together", () => {
  it("is nothing where nothing was told, or all of it fits", () => {
    for (const call of [
      {},
      { rising: RISE },
      { tellings: levels(0) },
      { tellings: levels(0.3), rising: RISE },
      { tellings: levels(0.3, 0.5), rising: RISE },
      { tellings: levels(0, 0.1), rising: RISE },
    ]) {
      expect(atOddsIn(call, "metric", told)).toEqual({});
    }
  });

  it("is a rise told where the levels fall, and a fall told where they rise: said at the rise", () => {
    expect(atOddsIn({ tellings: levels(0.5, 0.4, 0.3), rising: RISE }, "metric", told)).toEqual({
      rising:
        "The levels told fall, 50\u00a0cm to 30\u00a0cm; a rise of 3\u00a0cm in 2 min is told too. The levels are counted with, both stand. Ask again: same mark?",
    });
    expect(atOddsIn({ tellings: levels(0.3, 0.5), rising: -RISE }, "metric", told).rising).toMatch(
      /^The levels told rise, .*; a fall is told too\./,
    );
  });

  it("is a fall told, and no pump", () => {
    const words = "A level falls only while she is pumped or bailed. Ask with what, and for how long that lasts.";
    for (const tellings of [[], levels(0.5), levels(0.5, 0.3)]) {
      expect(atOddsIn({ tellings, rising: -RISE }, "metric", told)).toEqual({ rising: words });
    }
  });

  it("is dry told with a rise or a fall", () => {
    expect(atOddsIn({ tellings: levels(0), rising: RISE }, "metric", told).rising).toMatch(
      /^Dry is told, and a rise too\./,
    );
    expect(atOddsIn({ tellings: levels(0), rising: -RISE }, "metric", told).rising).toMatch(
      /and a level that falls too/,
    );
  });

  it("is dry told after a level: said at the water", () => {
    expect(atOddsIn({ tellings: levels(0.3, 0) }, "metric", told).water).toMatch(/^Dry now, and 30\u00a0cm before\./);
    expect(atOddsIn({ tellings: levels(0.3, 0) }, "us", told).water).toMatch(/^Dry now, and 11\.8\u00a0in before\./);
  });
});
