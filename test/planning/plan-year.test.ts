import { InputError } from "#base";
import { planYear, type YearStation } from "#planning";
import { ask, exampleOf } from "#questions";
import { loadSolver } from "#solver";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { judgeYear } from "../judges/year-plan/judge.ts";
import { stations } from "../judges/year-plan/random-station.ts";

const AT_ONCE = { seconds: 0 };
const PROOF = { id: "proof", lastGoodDay: "2027-01-20", renewedFor: 90, effect: "grounds" as const };
const KIT = { id: "P-1", place: "harbour", daysOut: 2, minutes: 120, clocks: [PROOF] };
const STATION: YearStation = {
  start: "2027-01-04",
  weeks: 26,
  places: [{ id: "harbour", strength: 1 }],
  kits: [KIT, { ...KIT, id: "P-2" }],
  people: [{ id: "ann", hoursPerWeek: 2 }],
};

describe("a year that can be kept", () => {
  it("opens each kit as seldom as its clock lets it, never both in one week", () => {
    const plan = planYear(STATION, AT_ONCE);
    expect(plan.openings).toHaveLength(4);
    expect(new Set(plan.openings.map((one) => one.week)).size).toBe(4);
    expect(plan).toMatchObject({ short: [], gap: 0, naive: { openings: 4, worstHours: 4, shortWeeks: 2, wasted: 16 } });
    expect(plan.because).toBeUndefined();
  });

  it("names who may do it and is there, and nobody else", () => {
    const people = [
      { id: "ann", hoursPerWeek: 2, may: ["run"], absent: [{ from: "2027-01-11", to: "2027-01-11" }] },
      { id: "ben", hoursPerWeek: 40 },
    ];
    const plan = planYear(
      { ...STATION, kits: STATION.kits.map((kit) => ({ ...kit, needs: ["run"] })), people },
      AT_ONCE,
    );
    expect(new Set(plan.openings.flatMap((one) => one.by))).toEqual(new Set(["ann"]));
    expect(plan.openings.map((one) => one.week)).not.toContain(1);
  });

  it("goes round what was fixed", () => {
    const plan = planYear({ ...STATION, fixed: [{ kit: "P-1", week: 2 }] }, AT_ONCE);
    expect(plan.openings).toContainEqual({ kit: "P-1", week: 2, renews: ["proof"], by: ["ann"] });
    expect(judgeYear({ ...STATION, fixed: [{ kit: "P-1", week: 2 }] }, plan).complaints).toEqual([]);
  });

  it("moves an opening to a week rather than adding one there", () => {
    const before = planYear(STATION, AT_ONCE);
    const own = before.openings.filter(({ kit }) => kit === "P-1").map(({ week }) => week);
    const instead = { from: 0, to: own[1]! - 1 };
    const fixed = [{ kit: "P-1", week: own[0]! + 3, instead }];
    const after = planYear({ ...STATION, fixed }, AT_ONCE);
    expect(judgeYear({ ...STATION, fixed }, after).complaints).toEqual([]);
    expect(after.openings.filter(({ kit }) => kit === "P-1").map(({ week }) => week)[0]).toBe(own[0]! + 3);
    expect(after.openings.length).toBeLessThanOrEqual(before.openings.length);
    expect(after.because).toContain("proof of P-1 has lapsed");
  });
});

describe("who does it together", () => {
  const kits = [{ ...KIT, minutes: 270, needs: ["run", "seal"] }];
  const ann = { id: "ann", hoursPerWeek: 3, may: ["run"], sees: ["run"] };
  const cat = { id: "cat", hoursPerWeek: 4, sees: ["seal"] };
  const people = [ann, { id: "ben", hoursPerWeek: 6 }, cat, { id: "dan", hoursPerWeek: 4, sees: ["seal"] }];

  it("pairs who may not do it alone with who may see it done", () => {
    const pairs = { ...STATION, kits, people };
    const plan = planYear(pairs, AT_ONCE);
    expect(judgeYear(pairs, plan).complaints).toEqual([]);
    expect(plan.openings).toHaveLength(2);
    for (const { by, beside = [] } of plan.openings) {
      expect([...by, ...beside]).toContain("ann");
      expect([...by, ...beside].some((one) => one === "cat" || one === "dan")).toBe(true);
    }
  });

  const station = (hands: number) => ({ ...STATION, kits: [{ ...KIT, hands }], people });

  it("names as many as it needs at once, and how many are lacking", () => {
    const four = planYear(station(4), AT_ONCE).openings[0]!;
    expect(new Set([...four.by, ...(four.beside ?? [])]).size).toBe(4);
    expect(four).not.toHaveProperty("lacking");
    const six = planYear(station(6), AT_ONCE);
    expect(six.openings[0]).toMatchObject({ lacking: 2 });
    expect(judgeYear(station(6), six).complaints).toEqual([]);
  });

  it("waits for a week in which so many are there", () => {
    const absent = [{ from: "2027-01-04", to: "2027-01-17" }];
    const away = people.map((one) => (one.id === "dan" ? { ...one, absent } : one));
    const plan = planYear({ ...STATION, kits: [{ ...KIT, hands: 4 }], people: away }, AT_ONCE);
    expect(plan.openings.map(({ week }) => week)[0]).toBe(2);
  });
});

describe("a year that cannot be kept", () => {
  it("says that one more kit, or the part two weeks earlier, would cure it", () => {
    const clock = { ...PROOF, parts: [{ part: "G", count: 1 }] };
    const late = {
      ...STATION,
      kits: [{ ...KIT, daysOut: 0, clocks: [clock] }],
      parts: [{ id: "G", onHand: 0, arrivals: [{ week: 4, count: 9 }] }],
    };
    const plan = planYear(late, AT_ONCE);
    expect(plan.short).toEqual([2, 3].map((week) => ({ place: "harbour", week, by: 1 })));
    expect(plan.because).toContain("With G two weeks earlier, nothing falls short and nothing lapses.");
    expect(plan.because).toContain("With one more kit at harbour, 0 instead of 2.");
  });

  it("says that two more hours would cure it", () => {
    const plan = planYear({ ...STATION, people: [{ id: "ann", hoursPerWeek: 1 }] }, AT_ONCE);
    expect(plan.openings).toEqual([]);
    expect(plan.because).toContain("With two more hours a week of ann, nothing falls short and nothing lapses.");
  });

  it("says that a place has too few kits for its strength", () => {
    const plan = planYear({ ...STATION, places: [{ id: "harbour", strength: 3 }] }, AT_ONCE);
    expect(plan.because).toContain("harbour must hold 3 ready and has 2.");
  });

  it("says that nobody has all a kit needs", () => {
    const people = [
      { id: "ann", hoursPerWeek: 9, may: ["run"] },
      { id: "ben", hoursPerWeek: 9, may: ["fuel"] },
    ];
    const plan = planYear({ ...STATION, kits: [{ ...KIT, needs: ["run", "fuel"] }], people }, AT_ONCE);
    expect(plan.because).toContain("Nobody has all that P-1 needs, nor is seen by who may see it: run, fuel.");
    expect(plan.because).toContain("With fuel held by ann too, 2 instead of 24.");
  });

  it("says that nobody has hours, and how many would do", () => {
    const people = [
      { id: "ann", hoursPerWeek: 0 },
      { id: "ben", hoursPerWeek: 0 },
    ];
    const plan = planYear({ ...STATION, kits: [{ ...KIT, minutes: 270 }], people }, AT_ONCE);
    expect(plan.because).toContain("Nobody has hours in any of these weeks.");
    expect(plan.because).toContain("With 5 more hours a week of ann, 2 instead of 24.");
  });

  it("says that one opening takes more hours than those who may do it have in a week", () => {
    const people = [
      { id: "ann", hoursPerWeek: 3, may: ["run"] },
      { id: "ben", hoursPerWeek: 40 },
    ];
    const plan = planYear({ ...STATION, kits: [{ ...KIT, minutes: 276, needs: ["run"] }], people }, AT_ONCE);
    expect(plan.because).toContain("Who may open P-1 have 3 h in their best week; it takes 4.6 h.");
    expect(plan.because).toContain("With run held by ben too, 2 instead of 24.");
    expect(plan.because).toContain("With two more hours a week of ann, 2 instead of 24.");
  });
});

describe("laws of planning at its best", () => {
  it("never falls shorter for two more hours, nor needs more openings where nothing falls short or lapses", async () => {
    const solver = await loadSolver();
    const means = { seconds: 10, solver };
    const years = stations({ weeks: [4, 8], kits: [1, 4], clocks: 2 });
    fc.assert(
      fc.property(years, (drawn) => {
        const station = { ...drawn, fixed: [] };
        const people = station.people.map((one) => ({ ...one, hoursPerWeek: one.hoursPerWeek + 2 }));
        const [few, many] = [planYear(station, means), planYear({ ...station, people }, means)];
        const sum = (plan: typeof few) => plan.short.reduce((total, one) => total + one.by, 0);
        expect(sum(many)).toBeLessThanOrEqual(sum(few));
        const isKept = few.because === undefined;
        if (isKept) expect(many.openings.length).toBeLessThanOrEqual(few.openings.length);
      }),
      { seed: 15, numRuns: 25, endOnFailure: true },
    );
  });

  it("gives the same plan for the same station at once", () => {
    fc.assert(
      fc.property(stations({ weeks: [4, 12], kits: [1, 5], clocks: 2 }), (drawn) => {
        const station = { ...drawn, fixed: [] };
        expect(planYear(station, AT_ONCE)).toEqual(planYear(station, AT_ONCE));
      }),
      { seed: 16, numRuns: 20 },
    );
  });
});

describe("what does not fit together", () => {
  it.each([
    ["PL-101", "start", { start: "2027-01-05" }],
    ["PL-102", "kits[0].place", { kits: [{ ...KIT, place: "slip" }] }],
    ["PL-103", "kits[0].needs[0]", { kits: [{ ...KIT, needs: ["fly"] }] }],
    [
      "PL-104",
      "kits[0].clocks[0].parts[0].part",
      { kits: [{ ...KIT, clocks: [{ ...PROOF, parts: [{ part: "X", count: 1 }] }] }] },
    ],
    ["PL-105", "fixed[0].kit", { fixed: [{ kit: "P-9", week: 1 }] }],
    ["PL-106", "fixed[0].week", { fixed: [{ kit: "P-1", week: 26 }] }],
    ["PL-106", "fixed[0].week", { fixed: [{ kit: "P-1", week: -1 }] }],
    ["PL-107", "kits[1].id", { kits: [KIT, KIT] }],
    [
      "PL-108",
      "people[0].absent[0].to",
      { people: [{ id: "ann", hoursPerWeek: 2, absent: [{ from: "2027-02-02", to: "2027-02-01" }] }] },
    ],
    [
      "PL-109",
      "fixed[0]",
      {
        fixed: [
          { kit: "P-1", week: 1 },
          { kit: "P-2", week: 1 },
        ],
      },
    ],
    [
      "PL-110",
      "fixed[1]",
      {
        fixed: [
          { kit: "P-1", week: 1 },
          { kit: "P-1", week: 1 },
        ],
      },
    ],
    ["QU-104", "people", { people: [] }],
    ["QU-104", "kits[0].daysOut", { kits: [{ ...KIT, daysOut: -1 }] }],
    ["QU-104", "parts[0].onHand", { parts: [{ id: "G", onHand: -1 }] }],
    ["QU-104", "weeks", { weeks: 3 }],
    [
      "BA-111",
      "kits[0].clocks[0].lastGoodDay",
      { kits: [{ ...KIT, clocks: [{ ...PROOF, lastGoodDay: "2027-02-30" }] }] },
    ],
  ])("is refused as %s at %s, with what is allowed and a remedy", (code, field, change) => {
    const [fault] = faultsOf({ ...STATION, ...change });
    expect(fault).toMatchObject({ code, field });
    expect(fault!.allowed.length * fault!.remedy.length).toBeGreaterThan(0);
  });

  it("answers its example without a solver too", () => {
    const plan = ask("plan-year", exampleOf("plan-year"));
    expect(plan).toMatchObject({ short: [], gap: 0 });
  });
});

function faultsOf(given: unknown) {
  try {
    ask("plan-year", given);
  } catch (thrown) {
    if (thrown instanceof InputError) return thrown.faults;
    throw thrown;
  }
  return [];
}
