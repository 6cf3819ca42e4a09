import { readFileSync } from "node:fs";
import { join } from "node:path";
import { loadPattern, stepOfCheck, type Check, type Pattern } from "#kit";
import { ENGLISH } from "#words";
import { describe, expect, it } from "vitest";
import type { KitState } from "../state.ts";
import { changeOf, sayChange } from "./trend-change.ts";
import { measuredTrends } from "./trends.ts";

const measure = (id: string, trend?: string) => ({
  id,
  kind: "measure",
  dimension: "volume",
  unit: "mL",
  ...(trend && { trend }),
});
const PATTERN = {
  checks: [measure("dipped", "fuel-burnt"), measure("mopped", "water-found"), measure("oil")],
} as unknown as Pattern;

type MeasureCheck = Extract<Check, { kind: "measure" }>;

function shipped(file: string): Pattern {
  const folder = join(import.meta.dirname, "..", "..", "..", "patterns");
  return loadPattern(readFileSync(join(folder, file), "utf8"), file);
}

interface Opened {
  readonly mopped?: number;
  readonly oil?: number;
  readonly drill?: string;
}

function kit(...openings: readonly Opened[]): KitState {
  const turnarounds = openings.map(({ drill, ...read }, i) => {
    const mark = { at: `${2015 + i}-05-01T10:00:00Z` };
    const answers = Object.entries(read).map(([check, litres]) => {
      const value = { kind: "quantity", si: litres / 1e6, dimension: "volume", text: `${litres} mL` };
      return [`s/${check}`, { check, answer: litres > 30 ? "wrong" : "seen", value, mark }];
    });
    return { id: `t${i}`, answers: Object.fromEntries(answers), closed: { how: "sealed" }, ...(drill && { drill }) };
  });
  return { turnarounds } as unknown as KitState;
}

describe("trends by what a pattern measures", () => {
  it("take every reading, right or wrong, of the measurements that say what they tell of; drills are left out", () => {
    const [fuel, water] = measuredTrends(
      kit({ mopped: 5, oil: 90 }, { mopped: 40 }, { mopped: 9, drill: "d" }),
      PATTERN,
    );
    expect(fuel).toEqual({ what: "fuel", points: [] });
    expect(water?.points.map(({ value }) => Math.round(value * 1e6))).toEqual([5, 40]);
  });

  it("are none where the pattern measures neither", () => {
    const none = { checks: [measure("oil")] } as unknown as Pattern;
    expect(measuredTrends(kit({ oil: 90 }), none)).toEqual([]);
  });

  it("say since when water rises as other trends do", () => {
    const water = measuredTrends(kit(...[1, 2, 4, 6, 9, 12].map((mopped) => ({ mopped }))), PATTERN)[1]!;
    expect(changeOf(water).kind).toBe("rising");
    expect(sayChange(water, ENGLISH.standing)).toMatch(/^More by \d+\u00a0mL over 6 runs\.$/);
  });

  it("tell fuel burnt as the tank less what was drained of it full; more than it holds tells of no run", () => {
    const drained = { checks: [measure("mopped", "fuel-left")], engine: { tank: 100e-6 } } as unknown as Pattern;
    const [fuel] = measuredTrends(kit({ mopped: 90 }, { mopped: 120 }, { mopped: 70 }), drained);
    expect(fuel?.points.map(({ value }) => Math.round(value * 1e6))).toEqual([10, 30]);
    const untold = { checks: [measure("mopped", "fuel-left")] } as unknown as Pattern;
    expect(measuredTrends(kit({ mopped: 90 }), untold)).toEqual([{ what: "fuel", points: [] }]);
  });

  it.each([
    ["brinnet-450@2.yaml", "case-water", "the case is empty", "inside-case"],
    ["brinnet-450@2.yaml", "fuel-drained", "the tank is drained", "refuel"],
    ["ossel-200@2.yaml", "crate-water", "the crate is empty", "examine-line"],
    ["tarvock-900@1.yaml", "fuel-taken", "the tank is filled", "refuel"],
  ])("are read under %s by %s where the hand is: %s", (file, check, _, step) => {
    const pattern = shipped(file);
    expect(stepOfCheck(pattern, check)?.id).toBe(step);
    const { trend, behind = [] } = pattern.checks.find(({ id }) => id === check) as MeasureCheck;
    expect(trend).toBeDefined();
    expect(behind.length).toBeGreaterThan(0);
  });

  it("are read by the diesel kit at its refuelling, from a tank that was full", () => {
    const pattern = shipped("tarvock-900@1.yaml");
    const step = stepOfCheck(pattern, "fuel-taken");
    expect(step?.renews).toContain(pattern.engine?.fuelItem);
    expect(measuredTrends(kit(), pattern)).toEqual([{ what: "fuel", points: [] }]);
  });
});
