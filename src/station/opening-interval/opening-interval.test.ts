import type { Pattern } from "#kit";
import type { KitState } from "#readiness";
import { repeatableStream } from "#numerics";
import { describe, expect, it } from "vitest";
import { Desk, refusalsOf } from "../sample-station.ts";
import { acceptOpenings, openingProposal, withdrawOpenings } from "./index.ts";

const PATTERN = {
  id: "pump",
  version: 1,
  policy: { turnaround: { months: 12 } },
  modes: [{ id: "seized", item: "pump", name: "seized", effect: "grounds" }],
  checks: [{ id: "turn", finds: ["seized"] }],
  stages: [
    {
      id: "examine",
      steps: [
        { id: "a", checks: ["turn"], needs: { people: 2, minutes: 60, tools: [] }, optional: false },
        {
          id: "dry",
          checks: [],
          needs: { people: 1, minutes: 30, tools: [] },
          optional: false,
          timer: { kind: "wait", atLeast: 36_000 },
        },
      ],
    },
  ],
} as unknown as Pattern;
const PATTERNS = new Map([["pump@1", PATTERN]]);
const NOW = "2027-01-01T00:00:00Z";

/** Kits opened every year since 2010; the chance that a fault had come by then is the same at each. */
function fleet(kits: number, chance: number, seed: number): readonly KitState[] {
  const random = repeatableStream(seed);
  return Array.from({ length: kits }, (_, k) => {
    const years = Array.from({ length: 17 }, (__, i) => 2010 + i);
    const turnarounds = years.map((year) => {
      const mark = { entry: `${k}-${year}`, at: `${year}-01-01T00:00:00Z`, by: "ann", device: "d" };
      return { id: `${k}-${year}`, opened: mark, answers: {}, closed: { ...mark, how: "sealed" } };
    });
    const findings = turnarounds
      .slice(1)
      .flatMap(({ id }) =>
        random() < chance ? [{ id, mode: "seized", item: "pump", turnaround: id, step: "a", check: "turn" }] : [],
      );
    const enrolled = { at: "2010-01-01T00:00:00Z" };
    return {
      id: `k${k}`,
      pattern: "pump@1",
      enrolled,
      turnarounds,
      findings,
      runs: [],
      contents: {},
    } as unknown as KitState;
  });
}

const proposed = (kits: readonly KitState[], nightHours: number, more: object = {}) =>
  openingProposal(PATTERN, { kits, casualties: [], patterns: PATTERNS }, { now: NOW, nightHours, policy: {}, ...more });

describe("how often to open, from the log", () => {
  it("says nothing where no kit ever lay closed between two openings", () => {
    const [one] = fleet(1, 0, 1);
    expect(proposed([{ ...one!, turnarounds: one!.turnarounds.slice(0, 1) }], 500)).toBeUndefined();
  });

  it("gathers what it rests on: openings, faults, the time closed, hands-on hours and hours out", () => {
    const { evidence } = proposed(fleet(5, 0.25, 2), 500)!;
    expect(evidence.looks).toBe(80);
    expect(evidence.found).toBeGreaterThan(8);
    expect(evidence.lay / (365.25 * 86_400)).toBeCloseTo(80, 0);
    expect([evidence.hours, evidence.out / 3600]).toEqual([2.5, 11.5]);
  });

  it("cannot tell from little, and says about how many openings it would take", () => {
    const verdict = proposed(fleet(1, 0, 3), 500)!.verdict;
    const few = proposed(
      [{ ...fleet(1, 0, 3)[0]!, turnarounds: fleet(1, 0, 3)[0]!.turnarounds.slice(0, 3) }],
      5000,
    )!.verdict;
    expect(few.kind).toBe("cannot-tell");
    expect(few.kind === "cannot-tell" && few.openings).toBeGreaterThan(2);
    expect(verdict.kind).not.toBe("shorter");
  });

  it("asks for no shorter one on one clean opening each of two kits, whatever a failure weighs", () => {
    const kits = fleet(2, 0, 3).map((kit) => ({
      ...kit,
      turnarounds: kit.turnarounds.slice(-2),
      enrolled: { at: "2025-06-01T00:00:00Z" },
    })) as unknown as KitState[];
    for (const hours of [100, 1000, 10_000, 100_000, 1_000_000])
      expect([hours, proposed(kits, hours)!.verdict.kind]).not.toEqual([hours, "shorter"]);
  });

  it("proposes a shorter one where faults come often and a failure weighs much, in whole months", () => {
    const { verdict, best } = proposed(fleet(20, 0.5, 4), 100_000)!;
    expect(best.longest).toBeLessThan(365);
    expect(best.shortest).toBeLessThan(best.middle);
    expect(verdict.kind === "shorter" && "months" in verdict.every && verdict.every.months).toBeLessThan(12);
  });

  it("never proposes longer than the manual: it stands, and so many clean openings would back half as long again", () => {
    const { verdict } = proposed(fleet(20, 0, 5), 30)!;
    expect(verdict.kind).toBe("manual-stands");
    const costly = proposed(fleet(20, 0.05, 5), 60)!.verdict;
    for (const one of [verdict, costly]) expect(one.kind === "manual-stands" && one.cleanOpenings).toBeGreaterThan(0);
  });

  it("goes back towards the manual where something shorter was accepted and longer would do", () => {
    const { verdict } = proposed(fleet(20, 0.01, 6), 30, { policy: { openings: { pump: { months: 2 } } } })!;
    expect(verdict.kind).toBe("longer");
    expect(verdict.kind === "longer" && "months" in verdict.every && verdict.every.months).toBeLessThanOrEqual(12);
  });

  it("lies at a shorter interval the more a failure on the night weighs", () => {
    const kits = fleet(10, 0.3, 7);
    const middles = [50, 500, 5000].map((hours) => proposed(kits, hours)!.best.middle);
    expect(middles).toEqual(middles.toSorted((one, other) => other - one));
  });
});

describe("accepting it", () => {
  it("is a keeper's line, within the manual, of a pattern that is here; the plan then goes by it", () => {
    const desk = new Desk();
    const as = (who: string) => ({
      ...desk.as(who),
      patterns: new Map([...desk.as(who).patterns, ["pump@1", PATTERN]]),
    });
    const proposal = { ...proposed(fleet(20, 0.5, 4), 100_000)!, nightHours: 5000 };
    desk.do(acceptOpenings(as("ann"), "pump", { months: 6 }, proposal));
    expect(desk.fold.read().policy.openings).toEqual({ pump: { months: 6 } });
    expect(refusalsOf(acceptOpenings(as("ann"), "pump", { months: 13 }))).toEqual(["SN-261"]);
    expect(refusalsOf(acceptOpenings(as("ann"), "none", { months: 3 }))).toEqual(["SN-263"]);
    expect(refusalsOf(acceptOpenings(as("ben"), "pump", { months: 3 }))).toHaveLength(1);
  });

  it("is withdrawn by another line, and only where there is one", () => {
    const desk = new Desk();
    const doing = (policy: object) => ({ ...desk.as("ann"), policy, patterns: PATTERNS });
    expect(refusalsOf(withdrawOpenings(doing({}), "pump"))).toEqual(["SN-262"]);
    desk.do(acceptOpenings(doing({}), "pump", { months: 6 }));
    desk.do(withdrawOpenings(doing(desk.fold.read().policy), "pump"));
    expect(desk.fold.read().policy).toEqual({});
  });
});
