import { cautionNamed, SIGNAL_WORDS } from "#base";
import type { CasualtyState } from "#readiness";
import { describe, expect, it } from "vitest";
import { hazardsAt, isFirstTime, SHORT, type Moment } from "./moments.ts";

const at = (minute: number) => new Date(Date.UTC(2027, 2, 14, 10, minute)).toISOString();
const SPACE = { id: "s1", name: "Engine room", sort: "engine-room", part: "aft" } as const;
const DRIVES = ["engine", "mains", "unknown"] as const;
const MOMENTS: readonly Moment[] = [
  { kind: "lift" },
  ...DRIVES.map((drive) => ({ kind: "start", drive }) as const),
  { kind: "sound", space: SPACE },
  { kind: "tow" },
];

describe("hazards at their moment", () => {
  it.each(MOMENTS)("%j: gravest first, each in a few words", (moment) => {
    const ids = hazardsAt(moment);
    const order = ids.map((id) => Object.keys(SIGNAL_WORDS).indexOf(cautionNamed(id).signal));
    expect(order).toEqual([...order].sort((one, other) => one - other));
    for (const id of ids) expect(SHORT[id]!.split(" ").length).toBeLessThanOrEqual(12);
  });

  it("has petrol before it is smelt, carbon monoxide, hose and starter at an engine, and mains at an electric kit", () => {
    expect(hazardsAt({ kind: "start", drive: "engine" })).toEqual([
      "smell-before-start",
      "carbon-monoxide",
      "pressurised-hose",
      "recoil-kick",
    ]);
    expect(hazardsAt({ kind: "start", drive: "mains" })).toContain("electric-shock");
    expect(hazardsAt({ kind: "start", drive: "mains" })).not.toContain("carbon-monoxide");
  });

  it("has batteries where they stand", () => {
    expect(hazardsAt({ kind: "sound", space: SPACE })).toEqual(["no-one-below-alone", "batteries-under-water"]);
    expect(hazardsAt({ kind: "sound", space: { ...SPACE, sort: "hold" } })).toEqual(["no-one-below-alone"]);
  });

  it("comes for the first time until the thing itself was done once", () => {
    const first = { soundings: [], pumps: [{ kit: "k1", runs: [] }] } as unknown as CasualtyState;
    const later = {
      soundings: [{ space: "s1", at: at(5) }],
      pumps: [{ kit: "k1", runs: [{}] }],
      tow: { at: at(4), under: true },
    } as unknown as CasualtyState;
    const own = { soundings: [], pumps: [{ runs: [] }] } as unknown as CasualtyState;
    expect(MOMENTS.filter((moment) => !isFirstTime(first, moment))).toEqual([{ kind: "lift" }]);
    expect(MOMENTS.filter((moment) => isFirstTime(later, moment))).toEqual([]);
    expect(isFirstTime(own, { kind: "lift" })).toBe(true);
    expect(isFirstTime({ ...later, tow: { at: at(6), under: true } } as CasualtyState, { kind: "tow" })).toBe(true);
    expect(isFirstTime(later, { kind: "sound", space: { ...SPACE, id: "s2" } })).toBe(true);
  });
});
