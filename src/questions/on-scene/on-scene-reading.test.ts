import { uprightSpace } from "#flooding";
import { describe, expect, it } from "vitest";
import { onSceneIn } from "./on-scene-fields.ts";
import { lanesOf, readScene } from "./on-scene-reading.ts";

const SPACE = uprightSpace({ area: 10, outside: 1.1, outsideDoubt: 0.05, lossLevel: 2 });

/** Rising, patched at 1000 s, and sounded again once the patch held. */
function sheetAt(now: number, more: object = {}) {
  return onSceneIn.parse({
    boat: { kind: "motor boat", length: 10 },
    spaces: [{ name: "engine room", sort: "engine-room", part: "aft" }],
    readings: [0.3, 0.38, 0.46, 0.5, 0.51].map((level, i) => ({ at: 300 * i, level })),
    pumping: [{ from: 60, flow: 0.002 }],
    patches: [{ at: 1000, open: 0.5 }],
    now,
    ...more,
  });
}

describe("one belief for the whole sheet", () => {
  it("leaves what comes after the last sounding to the time since it", () => {
    const [soon, late] = [sheetAt(1260), sheetAt(1260 + 7200)].map((sheet) => readScene(sheet, SPACE));
    expect(soon!.age).toBe(60);
    expect(late!.age).toBe(7260);
    const widthOf = ({ quantities: { holeArea } }: NonNullable<typeof soon>) => holeArea.p95 / holeArea.p05;
    expect(widthOf(late!)).toBeGreaterThan(widthOf(soon!));
  });

  it("carries what is known of a pump across a patch: dry no sooner than it has been seen to move", () => {
    const rising = [0.6, 0.63, 0.66, 0.69].map((level, i) => ({ at: 180 * i, level }));
    const pumping = [{ from: 0, flow: 0.01 }];
    const read = readScene(sheetAt(600, { readings: rising, pumping, patches: [{ at: 560, open: 0.02 }] }), SPACE);
    const stated = (0.69 * 10) / 0.01;
    expect(read.forecast.dry.time!.p05).toBeGreaterThan(0.6 * stated);
  });
});

const run = (from: number, to?: number, pump?: string) => ({
  from,
  flow: 0.004,
  ...(to !== undefined && { to }),
  ...(pump !== undefined && { pump }),
});

describe("runs and pumps", () => {
  it("of one id are one pump, whatever its flow", () => {
    expect(lanesOf([run(0, 60, "a"), run(60, undefined, "a"), run(70, undefined, "b")])).toEqual({
      ids: ["a", "b"],
      numbers: [0, 0, 1],
    });
  });

  it("without an id are two pumps where they overlap, and one where they follow each other", () => {
    expect(lanesOf([run(0, 100), run(50), run(100)]).numbers).toEqual([0, 1, 0]);
  });
});
