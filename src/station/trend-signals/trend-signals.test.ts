import { readFileSync } from "node:fs";
import { join } from "node:path";
import { loadPattern } from "#kit";
import { normalQuantile, repeatableStream } from "#numerics";
import type { Trend } from "#readiness";
import { describe, expect, it } from "vitest";
import { trendSignal } from "./index.ts";

const root = join(import.meta.dirname, "..", "..", "..", "patterns");
const brinnet = loadPattern(readFileSync(join(root, "brinnet-450@2.yaml"), "utf8"), "brinnet-450@2.yaml");
const NONE: ReadonlyMap<string, number> = new Map();
const at = (index: number) => new Date(Date.UTC(2020, 6 * index, 1)).toISOString();
const trend = (what: Trend["what"], ...values: readonly number[]): Trend => ({
  what,
  points: values.map((value, index) => ({ at: at(index), turnaround: `t${index}`, value })),
});
const STEP = [24, 25, 23, 24, 36, 37, 35, 38];

describe("a trend that gets worse", () => {
  it("says since when, and what it was before and is now", () => {
    const signal = trendSignal(trend("prime", ...STEP), brinnet, NONE)!;
    expect([signal.since, signal.before, signal.after]).toEqual([at(4), 24, 36.5]);
  });

  it("names the likeliest items and, for each, the checks that would tell", () => {
    for (const what of ["pulls", "prime", "delivery"] as const) {
      const values = what === "delivery" ? STEP.map((one) => 1 - one / 100) : STEP;
      const { likely } = trendSignal(trend(what, ...values), brinnet, NONE)!;
      expect(likely.length, what).toBeGreaterThan(0);
      for (const { mode, item, checks, chance } of likely) {
        expect(mode.item).toBe(item.id);
        for (const check of checks) expect(check.finds).toContain(mode.id);
        expect(checks.length, mode.id).toBeGreaterThan(0);
        expect(chance).toBeGreaterThan(0);
      }
      expect(likely.map(({ chance }) => chance)).toEqual(likely.map(({ chance }) => chance).toSorted((a, b) => b - a));
    }
  });

  it("of water or fuel names what the pattern says is behind the readings, and the checks that would tell", () => {
    const wet = trendSignal(trend("water", 0, 0, 0, 0, 4, 5, 6, 8), brinnet, NONE)!;
    expect(wet.likely.map(({ mode }) => mode.id)).toEqual(["lid-gasket-cut", "case-sealant-loose", "case-seam-open"]);
    for (const { checks } of wet.likely) expect(checks.length).toBeGreaterThan(0);
    const thirsty = trendSignal(trend("fuel", ...STEP), brinnet, new Map([["choke-sticks", 2]]))!;
    expect(thirsty.likely[0]).toMatchObject({ mode: { id: "choke-sticks" }, chance: 3 / 6 });
  });

  it("is moved by what was found on kits of the pattern", () => {
    const plain = trendSignal(trend("pulls", ...STEP), brinnet, NONE)!;
    const rare = plain.likely.at(-1)!.mode.id;
    const found = trendSignal(trend("pulls", ...STEP), brinnet, new Map([[rare, 50]]))!;
    expect(found.likely[0]!.mode.id).toBe(rare);
    expect([plain.findings, found.findings]).toEqual([0, 50]);
  });

  it("is none where readings get better, only scatter, or are too few", () => {
    expect(trendSignal(trend("prime", ...STEP.toReversed()), brinnet, NONE)).toBeUndefined();
    expect(trendSignal(trend("delivery", ...STEP), brinnet, NONE)).toBeUndefined();
    expect(trendSignal(trend("prime", 24, 36, 25, 35, 24, 36), brinnet, NONE)).toBeUndefined();
    expect(trendSignal(trend("prime", 24, 25, 36, 37), brinnet, NONE)).toBeUndefined();
  });

  it("names nobody where the pattern names no causes", () => {
    const { troubles: _none, ...bare } = brinnet;
    expect(trendSignal(trend("prime", ...STEP), bare, NONE)!.likely).toEqual([]);
  });
});

/** Prime seconds of one kit, two a year for ten years, read after each: how often a signal begins. */
function signalsBegun(random: () => number, shift: (i: number) => number): readonly number[] {
  const values = Array.from({ length: 20 }, (_, i) => 30 + 4 * normalQuantile(1e-9 + random() * (1 - 2e-9)) + shift(i));
  const told = values.map(
    (_, i) => trendSignal(trend("prime", ...values.slice(0, i + 1)), brinnet, NONE) !== undefined,
  );
  return told.flatMap((one, i) => (one && !told[i - 1] ? [i] : []));
}

describe("on synthetic histories of two runs a year", () => {
  it("a kit on which nothing changes is accused about once in 60 kit-years for each trend, as the page on methods says", () => {
    const random = repeatableStream(41);
    const begun = Array.from({ length: 600 }, () => signalsBegun(random, () => 0)).flat().length;
    const yearsBetween = (600 * 10) / begun;
    expect(yearsBetween, `${yearsBetween}`).toBeGreaterThan(50);
    expect(yearsBetween, `${yearsBetween}`).toBeLessThan(75);
  });

  it("a change of three sigma in the fifth year is told within four more runs about three times in four, as the page on methods says", () => {
    const random = repeatableStream(42);
    const found = Array.from({ length: 200 }, () => signalsBegun(random, (i) => (i < 10 ? 0 : 12)));
    const soon = found.filter((begun) => begun.some((i) => i >= 10 && i <= 14)).length / 200;
    expect(soon, `${soon}`).toBeGreaterThan(0.7);
    expect(soon, `${soon}`).toBeLessThan(0.85);
  });
});
