import { describe, expect, it } from "vitest";
import { readStick } from "./stick.ts";

const every = (levels: readonly number[], seconds = 180) =>
  levels.map((cm, k) => ({ at: k * seconds, level: cm / 100 }));

const lastOf = (levels: readonly number[], changes: readonly number[] = []) =>
  readStick(every(levels), changes).at(-1)!;

describe("what a stick shows by itself", () => {
  it("tells a fall of five centimetres in three minutes from the third sounding on, not from the second", () => {
    const views = readStick(every([60, 55, 50, 45]), []);
    expect(views[1]!.falling).toBeLessThan(0.97);
    expect(views[2]!.falling).toBeGreaterThan(0.99);
  });

  it("takes a last sounding that no longer falls for something new, perhaps", () => {
    expect(lastOf([60, 55, 50, 45, 46]).falling).toBeLessThan(0.95);
    expect(lastOf([60, 55, 50, 45, 46, 51]).rising).toBeGreaterThan(0.8);
  });

  it("weighs a last sounding that may be something new as even odds of falling on, and no other", () => {
    const [even, sudden] = [lastOf([49, 44, 42, 39]), lastOf([49, 44, 42, 31])];
    expect(sudden.falling).toBeGreaterThan(0.97);
    expect(sudden.fallingOn).toBeLessThan(0.95);
    for (const { falling, fallingOn, odd } of [even, sudden]) {
      expect(fallingOn).toBeLessThanOrEqual(Math.min(falling, 1 - odd / 2) + 1e-9);
      expect(fallingOn).toBeGreaterThanOrEqual(falling - odd / 2 - 1e-9);
    }
  });

  it("is not carried off by one slosh or slip", () => {
    expect(lastOf([60, 55, 50, 75]).odd).toBeGreaterThan(0.9);
    expect(lastOf([60, 55, 50, 75, 40, 35]).falling).toBeGreaterThan(0.98);
  });

  it("names a slip by its sounding: 57, 62, 75 for 51, 46, 41 does not blame the 62", () => {
    expect(lastOf([57, 62, 75, 46, 41], [200]).suspect).toMatchObject({ reading: 2, kind: "slip" });
  });

  it("calls steady what moves less than it can tell, and no fall or rise", () => {
    const steady = lastOf([50, 51, 50, 50]);
    expect(steady.steady).toBeGreaterThan(0.9);
    expect(Math.max(steady.falling, steady.rising)).toBeLessThan(0.8);
  });

  it("forgets the rate, not the level, at a told change", () => {
    const [after] = readStick(every([40, 46, 52, 58, 58]), [600]);
    expect(after!.soundings).toBe(1);
    expect(after!.rising).toBeLessThan(0.6);
  });
});
