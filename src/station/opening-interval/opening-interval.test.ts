import type { Pattern } from "#kit";
import type { KitState } from "#readiness";
import { betaQuantile, gammaQuantile, repeatableStream } from "#numerics";
import { bestInterval } from "#reliability";
import { describe, expect, it } from "vitest";
import { Desk, refusalsOf } from "../sample-station.ts";
import { daysIn } from "./span-days.ts";
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
          id: "run",
          checks: [],
          needs: { people: 0, minutes: 0, tools: [] },
          optional: false,
          timer: { kind: "run", atLeast: 0 },
        },
        {
          id: "cool",
          checks: [],
          needs: { people: 0, minutes: 0, tools: [] },
          optional: false,
          timer: { kind: "run", atLeast: 0 },
        },
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

/** Clean kits opened every so many months since 2010. */
function everyMonths(kits: number, months: number): readonly KitState[] {
  return fleet(kits, 0, 1).map((kit) => {
    const turnarounds = Array.from({ length: Math.floor(204 / months) }, (_, i) => {
      const mark = { entry: `${i}`, at: new Date(Date.UTC(2010, i * months)).toISOString(), by: "ann", device: "d" };
      return { id: `${kit.id}-${i}`, opened: mark, answers: {}, closed: { ...mark, how: "sealed" } };
    });
    return { ...kit, turnarounds } as unknown as KitState;
  });
}

/** The same kit with drills in which so many faults were planted, each its own drill, and so many of them found. */
function drilled(kit: KitState, found: number, planted: number): KitState {
  const drills = Array.from({ length: planted }, (_, i) => ({
    id: `d${i}`,
    plants: { hash: {} },
    revealed: { hash: { plant: "p", faults: [{ item: "pump", mode: "seized", how: "x" }] } },
    removed: {},
    answers: {},
    judged: {},
    ended: { how: "compared", at: "2026-06-01T10:00:00Z" },
  }));
  const findings = drills.slice(0, found).map(({ id }) => ({
    id: `f-${id}`,
    mode: "seized",
    item: "pump",
    drill: id,
    raised: { at: "2026-05-01T10:00:00Z" },
  }));
  return { ...kit, drills, findings: [...kit.findings, ...findings] } as unknown as KitState;
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

  it("tells how far apart openings really were, whatever the manual has", () => {
    const { apart } = proposed(fleet(5, 0, 2), 500)!.evidence;
    expect(apart?.count).toBe(80);
    for (const days of [apart!.median, ...apart!.quartiles]) expect(Math.abs(days - 365.5)).toBeLessThan(1);
  });

  it("takes the kit as out from seal to seal, nights of drying and all, once five openings were timed", () => {
    const kits = fleet(1, 0, 2);
    const timed = (count: number, hours: number) => {
      const closed = (at: string) => new Date(Date.parse(at) + hours * 3_600_000).toISOString();
      const turnarounds = kits[0]!.turnarounds.map((one, i) =>
        i < count ? { ...one, closed: { ...one.closed!, at: closed(one.opened.at) } } : one,
      );
      return proposed([{ ...kits[0]!, turnarounds }], 500)!.evidence;
    };
    expect(timed(6, 22)).toMatchObject({ out: 22 * 3600, timed: 6 });
    expect(timed(4, 22)).toMatchObject({ out: 11.5 * 3600, timed: 0 });
    expect(timed(6, 9), "in less than the ten hours that it hangs nobody did it").toMatchObject({ timed: 0 });
  });

  it("has a range that holds what is not known of the faults and of what an opening finds (both drawn 400 times)", () => {
    const [one, ...others] = fleet(20, 0.3, 4);
    const plain = proposed([one!, ...others], 100_000)!;
    const half = proposed([drilled(one!, 3, 6), ...others], 100_000)!;
    const { found, lay } = half.evidence;
    const random = repeatableStream(9);
    const drawn = Array.from({ length: 400 }, () => {
      const rate = gammaQuantile(random(), found + 0.5) / lay;
      const missed = betaQuantile(random(), 3.5, 3.5);
      const { out: testTime, failing, callsPerYear, hours } = half.evidence;
      const given = { life: { shape: 1, scale: 1 / rate }, testTime, repairTime: 0, harm: 0, missed };
      const costs = { test: hours, failureOnTheNight: 100_000, callsPerYear: callsPerYear.mean, perDayNotReady: 0 };
      return bestInterval({ ...given, demandFailure: failing.mean }, costs).best.interval / 86_400;
    }).toSorted((x, y) => x - y);
    expect(half.best.shortest / drawn[20]!).toBeCloseTo(1, 1);
    expect(half.best.longest / drawn[380]!).toBeCloseTo(1, 1);
    expect(half.best.longest / half.best.shortest).toBeGreaterThan(plain.best.longest / plain.best.shortest);
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

  it("proposes a shorter one where faults come often and a failure weighs much, in whole months or weeks", () => {
    const { verdict, best } = proposed(fleet(20, 0.5, 4), 100_000)!;
    expect(best.longest).toBeLessThan(365);
    expect(best.shortest).toBeLessThan(best.middle);
    expect(verdict.kind === "shorter" && daysIn(verdict.every)).toBeLessThan(best.middle + 1e-9);
    expect(verdict.kind === "shorter" && daysIn(verdict.every)).toBeGreaterThan(best.middle - 31);
  });

  it("moves with what a failure weighs, and falls in no steps wider than the weights are apart", () => {
    const kits = fleet(20, 0.5, 4);
    const weights = Array.from({ length: 8 }, (_, i) => 100_000 * 1.5 ** i);
    const told = weights.map((hours) => proposed(kits, hours)!.verdict);
    const days = told.map((verdict) => (verdict.kind === "shorter" ? daysIn(verdict.every) : 0));
    expect(new Set(days).size).toBe(days.length);
    const steps = days.slice(1).map((one, i) => days[i]! / one);
    expect(Math.max(...steps)).toBeLessThan(1.5);
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

  it("proposes nothing longer than half as long again as any kit was seen to lie closed", () => {
    const without = { ...PATTERN, policy: {} } as Pattern;
    const log = { kits: everyMonths(20, 2), casualties: [], patterns: new Map([["pump@1", without]]) };
    const asked = (months: number) =>
      openingProposal(without, log, { now: NOW, nightHours: 1, policy: { openings: { pump: { months } } } })!;
    const { verdict, best, bound, evidence } = asked(1);
    expect(best.middle).toBeGreaterThan(1000);
    expect(bound).toBeCloseTo(1.5 * evidence.apart!.longest, 9);
    expect(verdict.kind === "longer" && daysIn(verdict.every)).toBeLessThanOrEqual(bound);
    expect(verdict.kind === "longer" && daysIn(verdict.every)).toBeGreaterThan(bound - 7);
    const manual = openingProposal(PATTERN, log, { now: NOW, nightHours: 1, policy: {} })!;
    expect(manual.verdict, "the manual's year was never seen: its maker is shown nothing").toEqual({
      kind: "not-seen",
    });
    expect(asked(4).verdict, "four months were never seen").toEqual({ kind: "not-seen" });
  });

  it("lies at a longer interval the more an opening costs: parts, wear of each start, a day without the kit, harm", () => {
    const kits = fleet(20, 0.5, 4);
    const middle = (stated: object) => proposed(kits, 2000, { stated })!.best.middle;
    const plain = middle({});
    for (const stated of [{ parts: 5 }, { wearPerStart: 2 }, { perDayNotReady: 8 }])
      expect([stated, middle(stated) > plain * 1.05]).toEqual([stated, true]);
    expect(middle({ harmed: 500 })).toBeGreaterThan(plain);
    const { costs, evidence } = proposed(kits, 2000, { stated: { parts: 5, wearPerStart: 2 } })!;
    expect(evidence.starts).toBe(1);
    expect(costs.wear / costs.parts).toBeCloseTo(2 / 5, 9);
    expect(costs.tests / costs.parts).toBeCloseTo(evidence.hours / 5, 9);
  });

  it("lies at a shorter interval where drills show that openings overlook faults, and says on how many that rests", () => {
    const kits = fleet(20, 0.3, 4);
    const plain = proposed(kits, 100_000)!;
    expect(plain.evidence.drilled).toBeUndefined();
    const [all, half, few] = [
      [6, 6],
      [3, 6],
      [1, 3],
    ].map(([found, planted]) => proposed([drilled(kits[0]!, found!, planted!), ...kits.slice(1)], 100_000));
    expect(half!.evidence.drilled).toMatchObject({ found: 3, planted: 6, counts: true, finding: { mean: 0.5 } });
    expect(plain.best.middle / half!.best.middle).toBeGreaterThan(1.4);
    expect(all!.best.middle).toBeGreaterThan(half!.best.middle);
    expect(all!.best.middle).toBeLessThan(plain.best.middle);
    expect(few!.evidence.drilled).toMatchObject({ found: 1, planted: 3, counts: false });
    expect(few!.best.middle).toBeCloseTo(plain.best.middle, 9);
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
    const stated = { parts: 3, harmed: 2 };
    const line = desk.do(acceptOpenings(as("ann"), "pump", { months: 6 }, { ...proposal, stated }));
    expect(line.body).toMatchObject({ rests: { nightHours: 5000, costs: { parts: 3, harmed: 2, starts: 1 } } });
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
