import { describe, expect, it } from "vitest";
import { placeTrend, wordsBeside } from "./trend-scales.ts";

const FRAME = { left: 50, right: 350, top: 10, bottom: 200 };
const READER = { language: "en-GB" };
const points = [
  { at: "2025-01-10T10:00:00Z", value: 20 },
  { at: "2026-01-10T10:00:00Z", value: 40 },
];

describe("a trend placed in its frame", () => {
  it("keeps every point and limit inside the frame, in order of time", () => {
    const placed = placeTrend(points, [{ value: 60, label: "at most 60 s" }], FRAME, READER);
    for (const { x, y } of placed.points) {
      expect(x).toBeGreaterThanOrEqual(FRAME.left);
      expect(x).toBeLessThanOrEqual(FRAME.right);
      expect(y).toBeGreaterThanOrEqual(FRAME.top);
      expect(y).toBeLessThanOrEqual(FRAME.bottom);
    }
    expect(placed.points[0]!.x).toBeLessThan(placed.points[1]!.x);
    expect(placed.limits[0]!.y).toBeGreaterThan(FRAME.top);
    expect(placed.limits[0]!.y).toBeLessThan(placed.points[1]!.y);
  });

  it("starts the readings at nought, so that a rise looks as large as it is", () => {
    const placed = placeTrend(points, [], FRAME, READER);
    expect(placed.up[0]).toEqual({ place: FRAME.bottom, label: "0" });
    const rise = (at: number) => FRAME.bottom - placed.points[at]!.y;
    expect(rise(1) / rise(0)).toBeCloseTo(2, 9);
  });

  it("puts a single reading in the middle", () => {
    const placed = placeTrend(points.slice(0, 1), [], FRAME, READER);
    expect(placed.points[0]!.x).toBeCloseTo(200, 6);
  });

  it("names a year at its first day", () => {
    const labels = placeTrend(points, [], FRAME, READER).across.map(({ label }) => label);
    expect(labels).toContain("2026");
  });

  it("names months in the reader's language", () => {
    const inFrench = placeTrend(points, [], { ...FRAME, right: 1000 }, { language: "fr" }).across;
    expect(inFrench.map(({ label }) => label)).toContain("avr.");
  });

  it("says the year of the first tick, and leaves out words that would run into it", () => {
    const narrow = placeTrend(points, [], { ...FRAME, right: 400 }, READER).across.map(({ label }) => label);
    expect(narrow[0]).toMatch(/2025$/);
    const wide = placeTrend(points, [], { ...FRAME, right: 1000 }, READER).across;
    const shown = wide.filter(({ label }) => label !== "");
    const gaps = shown.slice(1).map(({ place }, index) => place - shown[index]!.place);
    expect(Math.min(...gaps)).toBeGreaterThan(40);
  });

  it("looks closely at readings that all lie far above nought", () => {
    const ratios = points.map(({ at }, index) => ({ at, value: 0.98 - 0.08 * index }));
    const placed = placeTrend(ratios, [{ value: 0.75, label: "Grounded below 75 %" }], FRAME, {
      ...READER,
      sayValue: (value) => `${value}`,
    });
    expect(Number(placed.up[0]!.label)).toBeGreaterThan(0.4);
    expect(placed.points[1]!.y - placed.points[0]!.y).toBeGreaterThan(20);
  });

  it("looks closely only where the readings differ by more than a tenth, and says where the axis begins", () => {
    const near = points.map(({ at }, index) => ({ at, value: 412 + index }));
    expect(placeTrend(near, [], FRAME, READER)).toMatchObject({ up: { 0: { label: "0" } } });
    expect(placeTrend(near, [], FRAME, READER).begins).toBeUndefined();
    const apart = points.map(({ at }, index) => ({ at, value: 400 + 80 * index }));
    const placed = placeTrend(apart, [], FRAME, READER);
    expect(placed.begins).toBe(placed.up[0]!.label);
    expect(placed.up[0]!.place).toBe(FRAME.bottom);
  });
});

const one = (value: number) => placeTrend([{ at: "2026-01-10T10:00:00Z", value }], [], FRAME, READER);

describe("an axis of one reading, or of equal ones", () => {
  it("begins at nought, with the reading well off its ends, however far from nought it is", () => {
    for (const value of [0.0004, 1, 31, 412, 90_000]) {
      const { up, points: placed } = one(value);
      expect(up[0]).toMatchObject({ place: FRAME.bottom, label: expect.stringMatching(/^0/) });
      expect(placed[0]!.y).toBeLessThan(FRAME.top + (FRAME.bottom - FRAME.top) / 3);
      expect(placed[0]!.y).toBeGreaterThan(FRAME.top);
    }
    const equal = placeTrend(
      points.map(({ at }) => ({ at, value: 412 })),
      [],
      FRAME,
      READER,
    );
    expect(equal.up[0]).toEqual({ place: FRAME.bottom, label: "0" });
  });

  it("has at least two figures, each said once", () => {
    for (const value of [0.0004, 1, 2, 31, 412]) {
      const labels = one(value).up.map(({ label }) => label);
      expect(labels.length).toBeGreaterThan(1);
      expect(new Set(labels).size).toBe(labels.length);
    }
  });

  it("has nought alone where nothing but nought was read", () => {
    expect(one(0).up).toEqual([{ place: FRAME.bottom, label: "0" }]);
    expect(one(0).points[0]!.y).toBe(FRAME.bottom);
  });

  it("counts in wholes what was counted in wholes", () => {
    expect(one(2).up.map(({ label }) => Number(label))).toEqual([0, 1, 2]);
  });

  it("names no day twice where all runs were on one", () => {
    const day = ["2026-01-10T08:00:00Z", "2026-01-10T15:00:00Z"].map((at) => ({ at, value: 20 }));
    const named = placeTrend(day, [], { ...FRAME, right: 900 }, READER).across.filter(({ label }) => label !== "");
    expect(named.length).toBeGreaterThan(1);
    const labels = named.map(({ label }) => label.replace(/ 20\d\d$/, ""));
    expect(new Set(labels).size).toBe(labels.length);
  });
});

describe("words beside a point", () => {
  it("stand below it where that is wanted, and above it where the axis would strike them through", () => {
    const room = { below: 24, above: 11 };
    expect(wordsBeside(100, true, room, FRAME)).toBe(124);
    expect(wordsBeside(100, false, room, FRAME)).toBe(89);
    expect(wordsBeside(172, true, room, FRAME)).toBe(161);
    expect(wordsBeside(199, true, room, FRAME)).toBe(188);
  });
});
