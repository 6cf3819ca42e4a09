import { uprightSpace } from "#flooding";
import { describe, expect, it } from "vitest";
import { onSceneIn } from "./on-scene-fields.ts";
import { pumpsOf, pumpWarnings } from "./on-scene-pumps.ts";
import { readScene } from "./on-scene-reading.ts";
import { standingSign } from "./on-scene-signs.ts";

const SPACE = uprightSpace({ area: 9, outside: 1.2, outsideDoubt: 0.03 });
const STATED = 0.00783;

function sceneOf(more: object) {
  return onSceneIn.parse({
    boat: { kind: "motor boat", length: 10, beam: 3 },
    spaces: [{ name: "engine room", sort: "engine-room", part: "aft" }],
    readings: [
      { at: 0, level: 0.35 },
      { at: 180, level: 0.37 },
    ],
    pumping: [{ from: 420, flow: STATED, pump: "br-10", name: "Pump 10" }],
    now: 430,
    ...more,
  });
}

function readOf(more: object) {
  const input = sceneOf(more);
  const reading = readScene(input, SPACE);
  const pumps = pumpsOf(input, reading);
  return { reading, pumps, warnings: pumpWarnings(input, pumps) };
}

const REFUSED = { at: 300, pump: "br-10", sign: "wont-start" } as const;

describe("a pump that would not start, and then gives water", () => {
  it("is no dead pump: neither in doubt nor warned of, and all is said as if it had started at once", () => {
    const { reading, pumps, warnings } = readOf({ pumpSeen: [REFUSED] });
    const never = readOf({});
    expect(pumps).toEqual(never.pumps);
    expect(warnings).toEqual(never.warnings);
    expect(reading).toEqual(never.reading);
  });

  it("stays so when it stops and is started again", () => {
    const pumping = [
      { from: 420, to: 500, flow: STATED, pump: "br-10" },
      { from: 560, flow: STATED, pump: "br-10" },
    ];
    expect(readOf({ pumpSeen: [REFUSED], pumping, now: 570 }).pumps[0]).toMatchObject({ doubt: "none" });
  });

  it("is no dead pump by water seen later either, where nobody told of the start", () => {
    const seen = [REFUSED, { at: 400, pump: "br-10", sign: "water" }];
    const pumping = [{ from: 100, flow: STATED, pump: "br-10" }];
    expect(readOf({ pumpSeen: seen, pumping }).pumps[0]).toMatchObject({ doubt: "none" });
  });
});

describe("what was seen of a pump at its discharge", () => {
  it("ends where it is started again: that water comes is what starts its run", () => {
    const seen = [{ at: 450, pump: "br-10", sign: "no-water" }];
    const before = [{ from: 420, to: 500, flow: STATED, pump: "br-10" }];
    const again = [...before, { from: 560, flow: STATED, pump: "br-10" }];
    expect(standingSign(sceneOf({ pumpSeen: seen, pumping: before, now: 570 }), "br-10")).toBe("no-water");
    expect(standingSign(sceneOf({ pumpSeen: seen, pumping: again, now: 570 }), "br-10")).toBeUndefined();
  });

  it("stays where it only runs at another setting", () => {
    const seen = [{ at: 450, pump: "br-10", sign: "no-water" }];
    const pumping = [
      { from: 420, to: 500, flow: STATED, pump: "br-10" },
      { from: 500, flow: 0.5 * STATED, pump: "br-10" },
    ];
    expect(standingSign(sceneOf({ pumpSeen: seen, pumping, now: 570 }), "br-10")).toBe("no-water");
  });

  it("is told by the pump's name, not by its id", () => {
    const { warnings } = readOf({ pumpSeen: [{ at: 425, pump: "br-10", sign: "no-water" }] });
    expect(warnings[0]!.says).toMatch(/^Pump 10: No water was seen/);
  });
});
