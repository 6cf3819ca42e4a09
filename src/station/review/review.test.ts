import type { Pattern } from "#kit";
import type { Entry } from "#log";
import { applyCasualtyEntry, type CasualtyState, type KitState } from "#readiness";
import { describe, expect, it } from "vitest";
import { chanceLower, drillForecasts, levelsAt, levelsForecast, pumpReviews, startForecasts } from "./index.ts";
import type { StartLog } from "../start-chance/index.ts";

const T0 = Date.parse("2027-03-01T10:00:00Z");
const at = (minute: number) => new Date(T0 + minute * 60_000).toISOString();
const line = (minute: number, kind: string, body: object): Entry =>
  ({
    id: `${kind}-${minute}`,
    subject: "casualty:c1",
    place: "station",
    kind,
    at: at(minute),
    by: "ben",
    device: "d1",
    body,
  }) as unknown as Entry;

const PUMP = { pump: "k1", kit: "k1", name: "Pump 1", space: "s1", flow: 0.006 };
const OPENED = line(0, "casualty-opened", {
  name: "Corrie",
  boat: { kind: "fishing boat", length: 12 },
  space: { id: "s1", name: "Engine room", sort: "engine-room", part: "aft" },
});
const sounded = (minute: number, level: number) => line(minute, "sounding-taken", { space: "s1", level, text: "x" });

function foldOf(entries: readonly Entry[]): CasualtyState {
  return entries.reduce<CasualtyState | undefined>(applyCasualtyEntry, undefined)!;
}

describe("a pump gone through afterwards", () => {
  const entries = [
    OPENED,
    line(10, "pump-set", { ...PUMP, running: false }),
    line(12, "pump-seen", { pump: "k1", sign: "wont-start" }),
    line(16, "pump-set", { ...PUMP, running: true }),
    line(17, "pump-start-told", { pump: "k1", pulls: 7, primeSeconds: 48 }),
    line(40, "pump-refuelled", { pump: "k1" }),
    line(76, "casualty-closed", { outcome: "afloat", delivered: [{ pump: "k1", p05: 0.5, p50: 0.7, p95: 0.9 }] }),
  ];

  it("is told by the minutes to water, pulls, prime, refuels, the time it ran and what the soundings saw", () => {
    expect(pumpReviews(foldOf(entries), entries)).toEqual([
      {
        pump: "k1",
        name: "Pump 1",
        kit: "k1",
        minutesFromCall: 16,
        minutesAboard: 6,
        refused: true,
        pulls: 7,
        primeSeconds: 48,
        refuels: 1,
        minutesRan: 60,
        seen: { p05: 0.5, p50: 0.7, p95: 0.9 },
      },
    ]);
  });

  it("says nothing of what nobody wrote down", () => {
    const few = [OPENED, line(10, "pump-set", { ...PUMP, running: false })];
    expect(pumpReviews(foldOf(few), few)).toEqual([
      { pump: "k1", name: "Pump 1", kit: "k1", refused: false, refuels: 0 },
    ]);
  });
});

describe("forecasts of levels that can be judged", () => {
  it("are those with a later sounding of the space, two minutes on or more, and nothing changed in between", () => {
    const entries = [
      OPENED,
      sounded(2, 0.6),
      sounded(3, 0.61),
      sounded(9, 0.65),
      line(10, "hole-patched", { space: "s1", open: 0.4 }),
      sounded(15, 0.6),
      sounded(21, 0.5),
    ];
    const judged = levelsForecast(entries, entries).map(({ level, next }) => [level, next.level]);
    expect(judged).toEqual([
      [0.61, 0.65],
      [0.6, 0.5],
    ]);
  });

  it("read the chance off the fan: straight between percentiles and times, open beyond them", () => {
    const fan = [0, 600].map((seconds) => ({
      at: seconds,
      p05: 0.3,
      p25: 0.4,
      p50: 0.5,
      p75: 0.6,
      p95: 0.7 + seconds / 6000,
    }));
    expect(chanceLower(fan, 300, 0.5)).toBeCloseTo(0.5, 12);
    expect(chanceLower(fan, 300, 0.45)).toBeCloseTo(0.375, 12);
    expect(chanceLower(fan, 300, 0.675)).toBeCloseTo(0.85, 12);
    expect(chanceLower(fan, 300, 0.1)).toBe(0.02);
    expect(chanceLower(fan, 300, 2)).toBe(0.98);
    expect(chanceLower(fan, 900, 0.5)).toBeUndefined();
    expect(chanceLower([], 0, 0.5)).toBeUndefined();
    expect(levelsAt(fan, 900)).toBeUndefined();
    expect(levelsAt(fan, 300)!.map(({ chance }) => chance)).toEqual([0.05, 0.25, 0.5, 0.75, 0.95]);
    expect(levelsAt(fan, 300)![2]!.value).toBeCloseTo(0.5, 12);
  });
});

const kit = (id: string, ...worked: readonly boolean[]) =>
  ({
    id,
    pattern: "pump@1",
    turnarounds: [],
    findings: [],
    runs: worked.map((started, i) => ({ turnaround: `${id}${i}`, at: `${2020 + i}-06-01T10:00:00Z`, started })),
  }) as unknown as KitState;
const log = (...kits: readonly KitState[]): StartLog => ({ kits, casualties: [], patterns: new Map() });

describe("forecasts of starts", () => {
  it("rest on nothing that came later: the first is an even chance, whatever follows", () => {
    const [good] = startForecasts(log(kit("a", true, true, true, true)));
    const [bad] = startForecasts(log(kit("a", true, false, false, false)));
    expect(good!.chance).toBeCloseTo(0.5, 2);
    expect(bad!.chance).toBe(good!.chance);
  });

  it("grow with every start that came, and lean on others once they have failed and worked", () => {
    const chances = startForecasts(log(kit("a", true, true, true, true))).map(({ chance }) => chance);
    expect(chances).toEqual(chances.toSorted((one, other) => one - other));
    const fleet = ["b", "c", "d", "e"].map((id, i) => kit(id, i > 0, true, true, true));
    const first = {
      ...kit("n"),
      runs: [{ turnaround: "n0", at: "2024-06-01T10:00:00Z", started: true }],
    } as unknown as KitState;
    expect(startForecasts(log(...fleet, first)).at(-1)!.chance).toBeGreaterThan(0.7);
  });
});

const drilled = (id: string, ...found: readonly boolean[]) => {
  const drills = found.map((isFound, i) => ({
    id: `d${i}`,
    plants: { hash: {} },
    revealed: { hash: { plant: "p", faults: [{ item: "pump", mode: "seized", how: "x" }] } },
    removed: {},
    answers: {
      "s/turn": { check: "turn", answer: isFound ? "wrong" : "seen", mark: { at: `${2020 + i}-05-01T10:00:00Z` } },
    },
    judged: {},
    ended: { how: "compared", at: `${2020 + i}-06-01T10:00:00Z` },
  }));
  const findings = found.flatMap((isFound, i) =>
    isFound
      ? [
          {
            id: `f${i}`,
            mode: "seized",
            item: "pump",
            drill: `d${i}`,
            check: "turn",
            raised: { at: `${2020 + i}-05-01T10:00:00Z` },
          },
        ]
      : [],
  );
  return { ...kit(id), drills, findings } as unknown as KitState;
};

describe("forecasts of what checks find in drills", () => {
  const pattern = {
    id: "pump",
    version: 1,
    checks: [{ id: "turn", finds: ["seized"] }],
    modes: [{ id: "seized", item: "pump" }],
  } as unknown as Pattern;
  const of = (one: KitState) => drillForecasts({ kits: [one], patterns: new Map([["pump@1", pattern]]) });

  it("rest on the drills before alone: the first is an even chance, and what came moves the next", () => {
    const told = of(drilled("a", true, true, false));
    expect(told.map(({ came }) => came)).toEqual([true, true, false]);
    expect(told[0]!.chance).toBeCloseTo(0.5, 9);
    expect(told[1]!.chance).toBeCloseTo(0.75, 9);
    expect(told[2]!.chance).toBeCloseTo(2.5 / 3, 9);
  });
});
