import { uprightSpace } from "#flooding";
import { describe, expect, it } from "vitest";
import { onSceneIn } from "./on-scene-fields.ts";
import { readWatches, thoughtBefore } from "./on-scene-reading.ts";

const SPACE = uprightSpace({ area: 10, outside: 1.1, outsideDoubt: 0.05, lossLevel: 2 });

/** Rising, patched at 1000 s, and sounded again once the patch held. */
function sheetAt(now: number) {
  return onSceneIn.parse({
    boat: { kind: "motor boat", length: 10 },
    spaces: [{ name: "engine room", sort: "engine-room", part: "aft" }],
    readings: [0.3, 0.38, 0.46, 0.5, 0.51].map((level, i) => ({ at: 300 * i, level })),
    pumping: [{ from: 60, flow: 0.002 }],
    patches: [{ at: 1000, open: 0.5 }],
    now,
  });
}

describe("watches before a change of the hole", () => {
  it("say the same whenever they are asked: the clock alone changes nothing of what is thought of them", () => {
    const [soon, late] = [sheetAt(1260), sheetAt(1260 + 7200)].map((sheet) => thoughtBefore(sheet, SPACE));
    expect(late).toEqual(soon);
  });

  it("leave what comes after the last sounding to the time since it", () => {
    const [soon, late] = [sheetAt(1260), sheetAt(1260 + 7200)].map((sheet) => readWatches(sheet, SPACE));
    expect(soon!.age).toBe(60);
    expect(late!.age).toBe(7260);
    const widthOf = ({ quantities: { holeArea } }: NonNullable<typeof soon>) => holeArea.p95 / holeArea.p05;
    expect(widthOf(late!)).toBeGreaterThan(widthOf(soon!));
  });
});
