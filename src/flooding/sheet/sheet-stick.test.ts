import { describe, expect, it } from "vitest";
import { uprightSpace } from "../soundings/sounding-space.ts";
import { readSheet } from "./sheet.ts";
import type { SheetCase } from "./belief.ts";

const SPACE = uprightSpace({ area: 8, outside: 1.2, outsideDoubt: 0.05 });

function steadyWith(off: readonly number[]): SheetCase {
  const readings = off.map((by, k) => ({ at: 240 * k, level: 0.5 + by }));
  return {
    space: SPACE,
    readings,
    runs: [],
    pumps: 0,
    patches: [],
    signs: [],
    isMeasured: false,
    now: 240 * (off.length - 1),
  };
}

function widthOf(given: SheetCase): number {
  const { p05, p95 } = readSheet(given).quantities.levelNow;
  return p95 - p05;
}

describe("what a sheet makes of a stick", () => {
  // Scatter of ±22 mm and of ±4 mm about one level: three standard errors of a mean of eight are 23 and 4 mm.
  const ROUGH = [0.02, -0.03, 0.02, -0.02, 0.03, -0.02, -0.01, 0.02];
  const CALM = ROUGH.map((off) => off / 5);

  it("soundings that scatter leave the level less known than soundings that do not", () => {
    expect(widthOf(steadyWith(ROUGH))).toBeGreaterThan(1.6 * widthOf(steadyWith(CALM)));
  });

  it("the level of a boat that stands still is held by what is said, however rough the stick", () => {
    for (const off of [ROUGH, CALM]) {
      const { p05, p95 } = readSheet(steadyWith(off)).quantities.levelNow;
      expect(p05).toBeLessThan(0.5);
      expect(p95).toBeGreaterThan(0.5);
    }
  });
});
