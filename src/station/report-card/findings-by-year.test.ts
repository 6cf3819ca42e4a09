import type { Pattern } from "#kit";
import { repeatableStream } from "#numerics";
import type { KitState } from "#readiness";
import { describe, expect, it } from "vitest";
import { findingsByYear } from "./findings-by-year.ts";

const PATTERN = {
  id: "pump",
  modes: [{ id: "dead", effect: "grounds" }],
  checks: [{ id: "runs", kind: "prove", finds: ["dead"] }],
  stages: [{ id: "run", steps: [{ id: "start", checks: ["runs"] }] }],
} as unknown as Pattern;
const NOW = "2027-01-01T00:00:00Z";
const DAY = 86_400_000;

/** Kits that join one a year from 2017 on; findings a year on each by its date. */
function fleet(seed: number, rate: (year: number) => number): readonly KitState[] {
  const random = repeatableStream(seed);
  return Array.from({ length: 10 }, (_, k) => {
    const from = Date.UTC(2017 + k, 0);
    const days = Math.floor((Date.parse(NOW) - from) / DAY);
    const findings = Array.from({ length: days }, (__, d) => from + (d + random()) * DAY)
      .filter((time) => random() < rate(2017 + (time - Date.UTC(2017, 0)) / (365.25 * DAY)) / 365.25)
      .map((time, i) => ({ id: `${k}-${i}`, mode: "m", raised: { at: new Date(time).toISOString() } }));
    return {
      id: `k${k}`,
      pattern: "pump@1",
      enrolled: { at: new Date(from).toISOString() },
      findings,
      runs: [],
      turnarounds: [],
    } as unknown as KitState;
  });
}

const share = (rate: (year: number) => number, kind: string) => {
  const told = Array.from({ length: 60 }, (_, i) => findingsByYear(PATTERN, fleet(900 + i, rate), NOW).kind);
  return told.filter((one) => one === kind).length / 60;
};

describe("findings a year", () => {
  it("are counted by calendar year over the time that kits were on charge", () => {
    const { years, kitYears, found } = findingsByYear(
      PATTERN,
      fleet(1, () => 1),
      NOW,
    );
    expect(years.map(({ year }) => year)).toEqual([2017, 2018, 2019, 2020, 2021, 2022, 2023, 2024, 2025, 2026]);
    expect(years[0]!.kitYears).toBeCloseTo(1, 2);
    expect(years[9]!.kitYears).toBeCloseTo(10, 1);
    expect(kitYears).toBeCloseTo(55, 0);
    expect(years.reduce((sum, one) => sum + one.found, 0)).toBe(found);
  });

  it("are too few to tell below six, and nothing where there is no kit", () => {
    expect(
      findingsByYear(
        PATTERN,
        fleet(2, () => 0.02),
        NOW,
      ).kind,
    ).toBe("too-few");
    expect(findingsByYear(PATTERN, [], NOW)).toMatchObject({ kind: "too-few", found: 0, years: [], kitYears: 0 });
  });

  it("are no trend because kits join: a steady rate is told to be one in at least 94 of 100 fleets", () => {
    const told = Array.from(
      { length: 300 },
      (_, i) =>
        findingsByYear(
          PATTERN,
          fleet(10 + i, () => 0.5),
          NOW,
        ).kind,
    );
    expect(told.filter((kind) => kind === "rising" || kind === "falling").length / 300).toBeLessThan(0.06);
  });

  it("are told to rise or to fall where they really do", () => {
    expect(share((year) => 0.05 * (year - 2016) ** 2, "rising")).toBeGreaterThan(0.8);
    expect(share((year) => 8 / (year - 2016) ** 2, "falling")).toBeGreaterThan(0.8);
  });
});

/** Starts that failed, one a year in the first days of 2026 of four kits, each with so many findings raised from it. */
const failing = (findings: number) =>
  fleet(3, () => 0).map((kit, k) => {
    const day = `2026-01-0${(k % 9) + 1}`;
    const answers = { "start/runs": { check: "runs", answer: "wrong", mark: { at: `${day}T10:00:00Z` } } };
    const raised = Array.from({ length: findings }, (_, i) => ({
      id: `${k}-${i}`,
      mode: "dead",
      turnaround: `t${k}`,
      raised: { at: `${day}T10:0${i}:00Z` },
      ...(i === 0 && { check: "runs" }),
    }));
    const turnarounds = [{ id: `t${k}`, opened: { at: `${day}T09:00:00Z` }, answers }];
    return (k < 4 ? { ...kit, turnarounds, findings: raised } : kit) as unknown as KitState;
  });

describe("two findings of one start that failed", () => {
  it("are both told of, and count once in the trend and its rate", () => {
    const [one, two] = [1, 2].map((findings) => findingsByYear(PATTERN, failing(findings), NOW));
    expect([one!.found, two!.found]).toEqual([4, 8]);
    expect([one!.counted, two!.counted]).toEqual([4, 4]);
    expect(two!.kind).toBe("too-few");
    expect(two!.at).toEqual(one!.at);
    expect(two!.years.at(-1)).toMatchObject({ year: 2026, found: 8, counted: 4 });
  });
});
