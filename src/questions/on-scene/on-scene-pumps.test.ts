import { uprightSpace } from "#flooding";
import { describe, expect, it } from "vitest";
import { onSceneIn } from "./on-scene-fields.ts";
import { pumpsOf, pumpWarnings } from "./on-scene-pumps.ts";
import { readScene } from "./on-scene-reading.ts";

const AREA = 9;
const OUTSIDE = 1.2;
const SPACE = uprightSpace({ area: AREA, outside: OUTSIDE, outsideDoubt: 0.03 });
const STATED = 0.006;

/** Soundings of a steady hole, and of a pump that from 600 s on moves a share of what is stated. */
function soundingsWith(share: number): { at: number; level: number }[] {
  const readings = [{ at: 0, level: 0.4 }];
  let level = 0.4;
  for (let at = 1; at <= 2100; at += 1) {
    const inflow = 0.004 * Math.sqrt(OUTSIDE - level);
    level += (inflow - (at > 600 ? share * STATED : 0)) / AREA;
    if (at % 300 === 0) readings.push({ at, level });
  }
  return readings;
}

function warningFor(more: object) {
  const input = onSceneIn.parse({
    boat: { kind: "motor boat", length: 10, beam: 3 },
    spaces: [{ name: "engine room", sort: "engine-room", part: "aft" }],
    readings: soundingsWith(0.3),
    pumping: [{ from: 600, flow: STATED }],
    now: 2160,
    ...more,
  });
  return pumpWarnings(input, pumpsOf(input, readScene(input, SPACE)))[0];
}

describe("a pump that moves a third of what is stated", () => {
  it("is told with how little it seems to move, and what to look at", () => {
    const warning = warningFor({});
    expect(warning).toMatchObject({ kind: "pump-weak", signal: "CAUTION" });
    expect(warning!.says).toMatch(
      /about (30|35|40) % of what was stated \((15|20) to (50|55|60|65|70|75) %\)\. Look at strainer, prime, kinks/,
    );
  });

  it.each([
    ["moves what it should", { readings: soundingsWith(0.9) }],
    ["was sounded once since it started", { readings: soundingsWith(0.3).slice(0, 4) }],
    ["stands now", { pumping: [{ from: 600, to: 2130, flow: STATED }] }],
  ])("is not told where it %s", (_, more) => {
    expect(warningFor(more)).toBeUndefined();
  });
});

describe("what is said of a pump in doubt", () => {
  const input = onSceneIn.parse({
    boat: { kind: "motor boat", length: 10 },
    spaces: [{ name: "engine room", sort: "engine-room", part: "aft" }],
    readings: soundingsWith(0.1),
    pumping: [{ from: 600, flow: STATED }],
    now: 2160,
  });
  const sounding = readScene(input, SPACE);

  it.each([
    [0.55, 0.7, "dead"],
    [0.45, 0.7, "weak"],
    [0.6, 0.62, "none"],
    [0, 0.66, "weak"],
  ])("with %s of next to nothing and %s of little it is %s: the likelier of the two", (dead, weak, doubt) => {
    const pumps = sounding.pumps.map((belief) => ({ ...belief, dead, weak }));
    expect(pumpsOf(input, { ...sounding, pumps })[0]!.doubt).toBe(doubt);
  });
});

describe("what is said of a pump that is likelier dead than weak", () => {
  const input = onSceneIn.parse({
    boat: { kind: "motor boat", length: 10 },
    spaces: [{ name: "engine room", sort: "engine-room", part: "aft" }],
    readings: soundingsWith(0.1),
    pumping: [{ from: 600, flow: STATED }],
    now: 2160,
  });
  const sounding = readScene(input, SPACE);
  const saidWith = (p95: number) =>
    pumpsOf(input, {
      ...sounding,
      pumps: sounding.pumps.map((belief) => ({ ...belief, dead: 0.55, weak: 0.7, p95 })),
    })[0]!.because;

  it("is that the level goes on as if it did not run where it can hardly move half of what was stated", () => {
    expect(saidWith(0.4)).toMatch(/^The level goes on as if it did not run\./);
  });

  it("is how much it may move after all where it well may", () => {
    expect(saidWith(0.82)).toMatch(/^By the soundings it moves little or nothing; up to 80 % of what was stated/);
  });
});

describe("a pump thought dead, with the hole patched since", () => {
  const RISE = [40, 41, 42, 43].map((cm, i) => ({ at: 180 * i, level: cm / 100 }));
  const after = (levels: readonly number[], more = {}) => {
    const since = levels.map((cm, i) => ({ at: 720 + 180 * i, level: cm / 100 }));
    const patches = [{ at: 630, open: 0.5 }];
    return warningFor({ readings: [...RISE, ...since], patches, now: 1270, ...more });
  };

  it("is told as weak once the level is seen to fall: no hole takes water out", () => {
    const warning = after([42, 40, 39, 37], { pumping: [{ from: 600, flow: 2 * STATED }] });
    expect(warning).toMatchObject({ kind: "pump-weak" });
    expect(warning!.says).toMatch(
      /^The level falls, so it moves water: by the soundings about \d+ % of what was stated/,
    );
  });

  it("stays in doubt as dead where the fall is no more than the stick's error, or by what was seen", () => {
    expect(after([43, 43, 42, 42])).toMatchObject({ kind: "pump-dead" });
    const pumpSeen = [{ at: 700, sign: "no-water" }];
    expect(after([42, 40, 39, 37], { pumpSeen })).toMatchObject({ kind: "pump-dead" });
  });

  it("stays in doubt as dead beside another that may be the one that takes the water out", () => {
    const pumping = [
      { from: 600, flow: 2 * STATED, pump: "one" },
      { from: 620, flow: 2 * STATED, pump: "two" },
    ];
    expect(after([42, 40, 39, 37], { pumping })).toMatchObject({ kind: "pump-dead" });
  });
});

describe("a pump that moves nothing", () => {
  it("is found by a rise that goes on as before, and stays in doubt through a patch", () => {
    const dead = warningFor({ readings: soundingsWith(0) });
    expect(dead).toMatchObject({ kind: "pump-dead", signal: "CAUTION", hazard: "Pump moves little or nothing" });
    const last = soundingsWith(0).at(-1)!;
    const readings = [...soundingsWith(0), { at: 2400, level: last.level + 0.02 }];
    expect(warningFor({ readings, patches: [{ at: 2110, open: 0.5 }], now: 2410 })).toMatchObject({
      kind: "pump-dead",
    });
  });

  it("is not told from one that just holds her where it ran before anybody sounded: nothing is there to compare", () => {
    const held = [0.4, 0.41, 0.4, 0.4, 0.41, 0.4].map((level, i) => ({ at: 180 * i, level }));
    const ran = { readings: held, pumping: [{ from: -600, flow: STATED }], now: 910 };
    expect(warningFor(ran)).toBeUndefined();
    expect(warningFor({ ...ran, pumpSeen: [{ at: 905, sign: "no-water" }] })).toMatchObject({ kind: "pump-dead" });
  });

  it("is found where it ran before anybody sounded, too, once it was stopped for a while and nothing changed", () => {
    const even = [0, 1, 2, 3, 4, 5, 6, 7].map((i) => ({ at: 180 * i, level: 0.4 + 0.02 * i }));
    const runs = [
      { from: -600, to: 500, flow: STATED, pump: "one" },
      { from: 800, flow: STATED, pump: "one" },
    ];
    expect(warningFor({ readings: even, pumping: runs, now: 1270 })).toMatchObject({ kind: "pump-dead" });
  });

  it("is taken at a glance for what was seen at its discharge", () => {
    const more = { readings: soundingsWith(0.9).slice(0, 3), now: 700 };
    const seen = warningFor({ ...more, pumpSeen: [{ at: 660, sign: "no-water" }] });
    expect(seen).toMatchObject({ kind: "pump-dead", says: expect.stringContaining("No water was seen") });
    expect(warningFor(more)).toBeUndefined();
  });
});
