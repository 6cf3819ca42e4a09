import { describe, expect, it } from "vitest";
import { ask } from "../ask.ts";
import { trendIn } from "./trend-fields.ts";

interface Told {
  readonly kind: string;
  readonly because: string;
  readonly signal: boolean;
  readonly p?: number;
}

const rising = (count: number) => Array.from({ length: count }, (_, i) => ({ at: i + 1, value: i * i }));
const drift = (count: number, level?: number) =>
  ask("trend", { method: "mann-kendall", series: rising(count), ...(level === undefined ? {} : { level }) }) as Told;

const chart = (value: number, method: string) =>
  ask("trend", { method, target: 3, sigma: 0.8, series: [{ at: 1, value }] }) as Told;

describe("readings that a drift takes at the level asked for", () => {
  // DERIVED: the strongest order of n readings, or its mirror, comes by luck once in n!/2, at 0.999 from 7 on; the normal
  // approximation that the method goes by is more careful there: 0.0027 of 7, 0.0008 of 8.
  it.each([
    [undefined, 5],
    [0.9, 4],
    [0.99, 6],
    [0.999, 8],
    [0.5, 3],
  ])("at %s it takes %i", (level, least) => {
    for (let n = 1; n < least; n += 1) {
      const told = drift(n, level);
      expect(told).toMatchObject({ kind: "cannot-tell", signal: false });
      expect(told.because).toContain(`it takes at least ${least}, so ${least - n} more`);
    }
    expect(drift(least, level).kind).toBe("told");
  });

  it("the strongest rise of so many is a signal", () => {
    expect(drift(5)).toMatchObject({ kind: "told", signal: true });
  });
});

describe("the scatter of one reading", () => {
  it("is described as an ewma takes it: never left out there", () => {
    const given = { method: "ewma", target: 3, series: [{ at: 1, value: 3 }] };
    expect(() => ask("trend", given)).toThrow(/sigma/);
    expect(trendIn.shape.sigma.unwrap().description).toContain("an ewma needs it");
  });
});

describe("one reading on a chart", () => {
  it("far off is a signal, and that is the verdict; one near what it should be tells nothing", () => {
    for (const method of ["cusum", "ewma"]) {
      expect(chart(30, method)).toMatchObject({ kind: "told", signal: true });
      expect(chart(30, method).because).toMatch(/^1 reading[;,.]/);
      expect(chart(3, method)).toMatchObject({ kind: "cannot-tell", signal: false });
      expect(chart(3, method).because).toMatch(/^1 reading: /);
    }
  });
});

describe("times of a trend", () => {
  const values = [3, 3, 3, 9, 9, 9];
  const seen = (times: readonly (string | number)[], more: object = {}) =>
    ask("trend", {
      method: "cusum",
      target: 3,
      series: times.map((at, i) => ({ at, value: values[i]! })),
      ...more,
    });

  it("given as days come back as seconds counted from a day", () => {
    const days = ["2026-01-02", "2026-02-02", "2026-03-02", "2026-04-02"];
    expect(seen(days)).toMatchObject({
      unit: "s",
      countedFrom: "1970-01-01",
      firstSignal: Date.UTC(2026, 3, 2) / 1000,
    });
  });

  it("carry the unit they were given in", () => {
    expect(seen([1, 2, 3, 4], { unit: "runs" })).toMatchObject({ unit: "runs", firstSignal: 4 });
    expect(seen([1, 2, 3, 4])).toMatchObject({ unit: "units" });
    expect(seen(["1 d", "2 d", "3 d", "4 d"])).toMatchObject({ unit: "s", firstSignal: 4 * 86_400 });
  });

  it.each([
    [["1 d", 2, "3 d"], "QU-225"],
    [["2026-01-02", "2 d"], "QU-226"],
    [["2026-01-02", 20_500], "QU-226"],
  ])("%j are not all alike", (times, code) => {
    expect(() => seen(times)).toThrow(code);
  });
});
